package org.washwright.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import org.washwright.hostile.Bombs.Bomb;

/** Tables, YAML and tasks that are long, or that grow when they are read. */
final class LargeDocuments {

    private static final String HEAD = "title,T\nbasis,common practice\nthen,caution\n\n";

    private LargeDocuments() {}

    static List<Bomb> all() {
        String key = "k".repeat(40_000);
        return List.of(
                table("a table of quotes", HEAD + "id,Soil.kind,hazard,reason\nT,a" + "\"".repeat(4_000_000)),
                table(
                        "a table of a million columns",
                        HEAD + "Soil.kind,".repeat(1_000_000) + "\n" + row().repeat(1000)),
                table("a table of 5,000 rows", HEAD + "id,Soil.kind,hazard,reason\n" + row().repeat(5000)),
                table(
                        "a cell of a million words",
                        HEAD + "id,Soil.kind,hazard,reason\nT," + "soil-a|".repeat(1_000_000)),
                table("a table of empty lines", "\n".repeat(4_000_000)),
                yaml("a number of ten million digits", term("properties: {melts: " + "9".repeat(10_000_000) + " °C}")),
                yaml("an exponent without end", term("properties: {melts: 1e999999999 °C}")),
                yaml(
                        "a name of ten million letters",
                        "kind: soil\nterms:\n  - {id: x, name: x, " + "y".repeat(10_000_000)),
                yaml("values under a long key", "kind: soil\n? " + key + "\n: [" + "x,\n ".repeat(400_000) + "x]\n"),
                yaml("millions of values", "kind: soil\nterms: [" + "[],\n ".repeat(2_000_000) + "]\n"),
                yaml("wrong words by the hundred thousand", wrongWords(100_000)),
                yaml("a chain of 20,000 groups", groups(20_000)),
                new Bomb(
                        "values under a long key of a task",
                        "task.json",
                        ("{\"title\": \"t\", \"" + key + "\": [" + "1,".repeat(400_000) + "1]}").getBytes(UTF_8)),
                new Bomb("long keys in long keys of a task", "task.json", nested().getBytes(UTF_8)),
                new Bomb("a task of too many bytes", "task.yaml", new byte[2_000_000]),
                new Bomb(
                        "a task of soils",
                        "task.yaml",
                        ("title: t\nsoils: [" + "soil-a,\n ".repeat(90_000) + "]\n").getBytes(UTF_8)),
                new Bomb(
                        "a task of wrong soils",
                        "task.yaml",
                        ("title: t\nmaterials: [{substrate: [" + "x,\n ".repeat(240_000) + "x]}]\n").getBytes(UTF_8)),
                new Bomb("a task of wrong keys", "task.yaml", keys(60_000).getBytes(UTF_8)));
    }

    private static Bomb table(String name, String text) {
        return new Bomb(name, "tables/bomb.csv", text.getBytes(UTF_8));
    }

    private static Bomb yaml(String name, String text) {
        return new Bomb(name, "catalogue/bomb.yaml", text.getBytes(UTF_8));
    }

    private static String row() {
        return "T,soil-a,hazard-a,So.\n";
    }

    private static String term(String rest) {
        return "kind: soil\nterms:\n  - {id: x, name: x, " + rest + "}\n";
    }

    private static String wrongWords(int n) {
        StringBuilder out = new StringBuilder("kind: soil\nterms:\n");
        for (int i = 0; i < n; i++) {
            out.append("  - {id: soil-of-the-kind-")
                    .append(i)
                    .append(", name: x, replacedBy: soil-kind-of-the-")
                    .append(i)
                    .append("}\n");
        }
        return out.toString();
    }

    private static String groups(int n) {
        StringBuilder out =
                new StringBuilder("kind: process\nterms:\n  - {id: p0, name: x, parent: any, group: yes}\n");
        for (int i = 1; i < n; i++) {
            out.append("  - {id: p")
                    .append(i)
                    .append(", name: x, parent: p")
                    .append(i - 1)
                    .append(", group: yes}\n");
        }
        return out.toString();
    }

    private static String nested() {
        StringBuilder out = new StringBuilder("{\"title\": \"t\"");
        for (int i = 0; i < 30; i++) {
            out.append(", \"").append("k".repeat(9000)).append("\": {\"a\": 1");
        }
        return out + ", \"b\": [" + "1,".repeat(200_000) + "1]" + "}".repeat(31);
    }

    private static String keys(int n) {
        StringBuilder out = new StringBuilder("title: t\n");
        for (int i = 0; i < n; i++) {
            out.append("k").append(i).append(": x\n");
        }
        return out.toString();
    }
}
