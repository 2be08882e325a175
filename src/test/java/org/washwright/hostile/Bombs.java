package org.washwright.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;

/** Texts too large, too deep or too broken to be written down: they are made up when they are needed. */
final class Bombs {

    private static final String SAYS = "caution(\"hazard-a\", \"So.\");";

    /** A file that has to be refused soon. */
    record Bomb(String name, String file, byte[] bytes) {
        @Override
        public String toString() {
            return name;
        }
    }

    private Bombs() {}

    /** A rule with these conditions and consequences. */
    static String rule(String when, String then) {
        return "rule \"r\"\n@id(\"R\") @basis(\"common practice\")\nwhen\n" + when + "\nthen\n" + then + "\nend\n";
    }

    private static Bomb when(String name, String when) {
        return drl(name, rule(when, SAYS));
    }

    private static Bomb then(String name, String then) {
        return drl(name, rule("Soil()", then));
    }

    private static Bomb drl(String name, String text) {
        return new Bomb(name, "rules/bomb.drl", text.getBytes(UTF_8));
    }

    private static Bomb file(String name, String file, String text) {
        return new Bomb(name, file, text.getBytes(UTF_8));
    }

    private static String times(int n, String text) {
        return text.repeat(n);
    }

    /** What nests or chains until a parser's stack is full, or until it reads everything twice at every level. */
    static List<Bomb> deep() {
        List<Bomb> bombs = new ArrayList<>();
        for (int n : new int[] {16, 24, 100_000}) {
            bombs.add(when(n + " calls in calls", "Soil(" + times(n, "f(") + "1" + times(n, ")") + ")"));
            bombs.add(when(n + " indexes in indexes", "Soil(a" + times(n, "[b") + times(n, "]") + " == 1)"));
            bombs.add(when(n + " parentheses", "Soil(" + times(n, "(") + "kind == \"soil-a\"" + times(n, ")") + ")"));
            bombs.add(when(n + " nots", times(n, "not (") + "Soil()" + times(n, ")")));
            bombs.add(when(n + " open parentheses", "Soil(" + times(n, "(")));
            bombs.add(then(n + " parentheses around a number", "a(" + times(n, "(") + "1" + times(n, ")") + ");"));
            bombs.add(then(n + " blocks", times(n, "{") + times(n, "}")));
        }
        int n = 50_000;
        bombs.add(when("a condition of minus signs", "Soil(a == " + times(n, "- ") + "1)"));
        bombs.add(when("a condition of exclamation marks", "Soil(" + times(n, "!") + "a)"));
        bombs.add(when("a condition of type arguments", "Soil(a == new A" + times(n, "<A") + times(n, ">") + "())"));
        bombs.add(when("a condition of dots", "Soil(a" + times(n, ".b") + " == 1)"));
        bombs.add(when("a condition of sums", "Soil(a == 1" + times(n, " + 1") + ")"));
        bombs.add(when("a condition of alternatives", "Soil(a == 1" + times(n, " || a == 1") + ")"));
        bombs.add(when("a row of nots", times(n, "not ") + "Soil()"));
        bombs.add(when("a row of ors", "Soil()" + times(n, " or Soil()")));
        bombs.add(when("brackets behind a quote in a comment", "/* \" */ Soil(" + times(n, "(") + ")"));
        bombs.add(when("brackets behind a quote in quotes", "Soil(a == '\"' " + times(n, "(") + ")"));
        bombs.add(when("brackets behind a quote over two lines", "Soil(a == \"\n\" " + times(n, "(") + ")"));
        bombs.add(when("brackets behind an unknown escape", "Soil(a == \"\\q" + times(n, "(") + "\")"));
        bombs.add(then("a sum of texts", "a(\"a\"" + times(n, " + \"a\"") + ");"));
        bombs.add(then("dots", "a($a" + times(n, ".b") + ");"));
        bombs.add(then("calls on calls", "a()" + times(n, ".b()") + ";"));
        bombs.add(then("ifs in ifs", times(n, "if (a) ") + "a();"));
        bombs.add(then("elses", times(n, "if (a); else ") + "a();"));
        bombs.add(then("does", times(n, "do ") + "a();"));
        bombs.add(then("lambdas", "a(" + times(n, "x -> ") + "1);"));
        bombs.add(then("casts", "a(" + times(n, "(a) ") + "1);"));
        bombs.add(then("type arguments", "A" + times(n, "<A") + times(n, ">") + " a;"));
        bombs.add(then("assignments", "a" + times(n, " = a") + ";"));
        bombs.add(then("labels", times(n, "a: ") + "a();"));
        bombs.add(file("lists in lists of YAML", "catalogue/bomb.yaml", times(100_000, "[")));
        bombs.add(file("maps in maps of YAML", "catalogue/bomb.yaml", times(100_000, "{a: ")));
        bombs.add(file("lists by dashes of YAML", "catalogue/bomb.yaml", times(100_000, "- ")));
        bombs.add(file("lists in lists of a task", "task.json", times(100_000, "[")));
        bombs.add(file("maps in maps of a task", "task.json", times(100_000, "{\"a\":")));
        return bombs;
    }

    /** What is long, or grows. */
    static List<Bomb> large() {
        List<Bomb> bombs = new ArrayList<>();
        bombs.add(when("a number of ten million digits", "Soil(amount > " + times(10_000_000, "9") + ")"));
        bombs.add(when("a number of 900,000 digits", "Soil(amount > " + times(900_000, "9") + ")"));
        bombs.add(when("a quantity of 900,000 digits", "Soil(amount > \"" + times(900_000, "9") + " g/m2\")"));
        bombs.add(then("a reason of 900,000 letters", "caution(\"hazard-a\", \"" + times(900_000, "x") + "\");"));
        bombs.add(drl("a name of 900,000 letters", "rule \"" + times(900_000, "x") + "\" when"));
        bombs.add(when("50,000 constraints", "Soil(kind == \"soil-a\"" + times(50_000, ", kind == \"soil-a\"") + ")"));
        bombs.add(when("90,000 patterns", times(90_000, "Soil()\n")));
        bombs.add(when("500 patterns", times(500, "Soil()\n")));
        bombs.add(then("30,000 consequences", times(30_000, SAYS)));
        bombs.add(when("a list of 50,000 terms", "Soil(kind in (\"soil-a\"" + times(50_000, ", \"soil-a\"") + "))"));
        bombs.add(drl("50,000 annotations", "rule \"r\" " + times(50_000, "@note(\"x\") ") + "when"));
        bombs.add(drl("nothing but the word rule", times(190_000, "rule ")));
        bombs.add(drl("nothing but the word end", times(200_000, "end ")));
        bombs.add(drl("rules that never end", times(60_000, "rule \"r\" when ")));
        StringBuilder rules = new StringBuilder();
        for (int i = 0; i < 7000; i++) {
            rules.append(
                    "rule \"r\" @id(\"R" + i + "\") @basis(\"common practice\") when Soil() then " + SAYS + " end\n");
        }
        bombs.add(drl("7,000 rules", rules.toString()));
        bombs.addAll(LargeDocuments.all());
        return bombs;
    }

    /** What is no proper text. */
    static List<Bomb> broken() {
        List<Bomb> bombs = new ArrayList<>();
        bombs.add(drl("a comment that never closes", "/* " + rule("Soil()", SAYS)));
        bombs.add(drl("comments that never close", times(200_000, "/* /")));
        bombs.add(drl("a quote that never closes", rule("Soil(kind == \"soil-a)", SAYS)));
        for (char c : new char[] {0, 1, 7, 8, 0x0B, 0x0C, 0x1A, 0x1B, 0x7F, 0x85, 0xAD, 0xFEFF}) {
            String hidden = String.format("U+%04X ", (int) c);
            bombs.add(drl(hidden + "in a comment", "// " + c + "\n" + rule("Soil()", SAYS)));
            bombs.add(when(hidden + "between words", "Soil(kind" + c + "== \"soil-a\")"));
            bombs.add(then(hidden + "in a reason", "caution(\"hazard-a\", \"S" + c + "o.\");"));
        }
        bombs.add(drl("line ends of old machines", rule("Soil()", SAYS).replace('\n', '\r')));
        bombs.add(drl("code behind a carriage return in a comment", "// x\rimport a.B;\n" + rule("Soil()", SAYS)));
        for (String file : List.of("rules/bomb.drl", "tables/bomb.csv", "catalogue/bomb.yaml", "task.yaml")) {
            bombs.add(new Bomb("half a character in " + file, file, new byte[] {'a', '\n', (byte) 0xC3, '('}));
            bombs.add(new Bomb("an overlong slash in " + file, file, new byte[] {'a', (byte) 0xC0, (byte) 0xAF}));
            bombs.add(new Bomb("a surrogate in " + file, file, new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80}));
            bombs.add(new Bomb(
                    "two bytes a character in " + file,
                    file,
                    rule("Soil()", SAYS).getBytes(java.nio.charset.StandardCharsets.UTF_16)));
            bombs.add(new Bomb("nothing but zeros in " + file, file, new byte[10_000]));
        }
        return bombs;
    }
}
