package org.washwright.document.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** What a text says after a change is held against SnakeYAML's own loader and plain Java collections. */
class YamlEditsTest {

    private static final String FILE = "terms.yaml";

    /** As the files of the starter rulebook are written: a comment, blocks, braces, both kinds of quotes. */
    private static final String TERMS = """
            # Words of a small edition.
            kind: soil
            terms:
              - id: oil   # thin
                name: cutting oil
                synonyms: [neat oil, 'straight oil']

              # The pastes.
              - {id: wax, name: wax, definition: "Put on: against rust"}
              - id: chips
                name: chips
                properties:
                  oily: no
                  density: {value: 880 kg/m3, source: "TRADE, typical"}
            """;

    private static String after(Change change) {
        return YamlEdits.apply(FILE, TERMS, change);
    }

    @Test
    void a_value_changes_alone_and_keeps_its_quotes() {
        assertEquals(
                TERMS.replace("name: cutting oil", "name: neat cutting oil"),
                after(new Change.Put("/terms/0/name", Data.one("neat cutting oil"))));
        assertEquals(
                TERMS.replace("\"Put on: against rust\"", "\"Keeps rust off\""),
                after(new Change.Put("/terms/1/definition", Data.one("Keeps rust off"))));
        assertEquals(
                TERMS.replace("'straight oil'", "'honing oil, thin'"),
                after(new Change.Put("/terms/0/synonyms/1", Data.one("honing oil, thin"))));
    }

    @Test
    void the_same_value_gives_the_same_bytes() {
        Data all = YamlEdits.read(FILE, TERMS);
        for (String pointer : List.of("/kind", "/terms/0/id", "/terms/1/definition", "/terms/2/properties/oily")) {
            assertEquals(TERMS, after(new Change.Put(pointer, all.at(pointer).orElseThrow())), pointer);
        }
    }

    @Test
    void a_new_entry_is_written_as_its_neighbours_are() {
        Map<String, Data> term = new LinkedHashMap<>();
        term.put("id", Data.one("soot"));
        term.put("name", Data.one("soot"));
        term.put("properties", new Data.Named(Map.of("oily", Data.one("no"))));
        assertEquals(
                TERMS + "  - id: soot\n    name: soot\n    properties:\n      oily: no\n",
                after(new Change.Insert("/terms", 3, new Data.Named(term))) + "");
        assertEquals(
                TERMS.replace("against rust\"}", "against rust\", synonyms: [paste]}"),
                after(new Change.Put("/terms/1/synonyms", Data.texts(List.of("paste")))));
        assertEquals(
                TERMS.replace("      oily: no\n", "      oily: no\n      \"a: b\": c\n"),
                after(new Change.Enter("/terms/2/properties", 1, "a: b", Data.one("c"))));
    }

    @Test
    void an_entry_goes_with_its_lines_and_no_comment_of_another() {
        assertEquals(
                TERMS.replace("  - {id: wax, name: wax, definition: \"Put on: against rust\"}\n", ""),
                after(new Change.Remove("/terms/1")));
        assertEquals(
                TERMS.replace("    properties:\n      oily: no\n", "    properties:\n"),
                after(new Change.Remove("/terms/2/properties/oily")));
        assertEquals(
                TERMS.replace("[neat oil, 'straight oil']", "['straight oil']"),
                after(new Change.Remove("/terms/0/synonyms/0")));
    }

    @Test
    void what_can_not_be_changed_is_refused_with_its_place() {
        RefusedEdit nowhere = assertThrows(RefusedEdit.class, () -> after(new Change.Remove("/terms/9")));
        assertEquals("edit-nowhere", nowhere.found().get(0).message().code());
        assertEquals("/terms", nowhere.found().get(0).place().pointer().substring(0, 6));
        RefusedEdit hidden =
                assertThrows(RefusedEdit.class, () -> after(new Change.Put("/terms/0/name", Data.one("oil\u202Ecod"))));
        assertEquals("hidden-character", hidden.found().get(0).message().code());
        assertEquals(5, hidden.found().get(0).place().line());
        RefusedEdit endless = assertThrows(
                RefusedEdit.class, () -> after(new Change.Put("/terms/0/name", Data.one("x".repeat(400_000)))));
        assertEquals("too-large", endless.found().get(0).message().code());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "kind: soil\nterms: &a [*a]\n",
                "kind: !!java.net.URL soil\n",
                "kind: a\nkind: b\n",
                "kind: [\n",
                "a: 1\n---\nb: 2\n",
                ""
            })
    void a_text_with_errors_is_not_changed_at_all(String text) {
        RefusedEdit refused = assertThrows(
                RefusedEdit.class, () -> YamlEdits.apply(FILE, text, new Change.Put("/kind", Data.one("x"))));
        assertTrue(refused.found().stream().allMatch(d -> d.place().file().equals(FILE)));
    }

    static Stream<String> hostile() {
        return Stream.of(
                "",
                " ",
                " lead and trail ",
                "a: b",
                "a:",
                "# no comment",
                "a # no comment",
                "- item",
                "-",
                "---",
                "...",
                "? key",
                "[a, b]",
                "{a: b}",
                "*alias",
                "&anchor",
                "!!tag x",
                "%YAML 1.1",
                "@at",
                "`tick`",
                "'single'",
                "it's",
                "\"double\"",
                "back\\slash \\n",
                "two\nlines",
                "end\n",
                "\n\n",
                "carriage\r\nreturn",
                "tab\tinside",
                "=1+1",
                "+1",
                "<<",
                "~",
                "null",
                "yes",
                "0123",
                "1e5",
                "-10 °C",
                "2026-01-01",
                "|",
                ">",
                "µm² — “quoted”",
                "😀 wide",
                "日本語",
                "line\u2028separator",
                "next\u0085line",
                "<script>alert(1)</script>",
                "x".repeat(5000));
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void a_hostile_value_survives_everywhere_or_is_refused_whole(String value) {
        for (String pointer : List.of("/kind", "/terms/0/name", "/terms/1/name", "/terms/0/synonyms/1", "/new")) {
            String changed;
            try {
                changed = after(new Change.Put(pointer, Data.one(value)));
            } catch (RefusedEdit refused) {
                assertTrue(
                        value.chars().anyMatch(c -> c == 0x2028 || c == 0x85 || c == '\r'),
                        "refused for no good reason: " + refused.getMessage());
                continue;
            }
            assertEquals(value, plain(changed, pointer), pointer);
            // Line by line the rest is as it was.
            List<String> before = TERMS.lines().toList();
            List<String> now = changed.lines().toList();
            assertTrue(before.stream().filter(line -> !now.contains(line)).count() <= 1, changed);
        }
    }

    private static String plain(String text, String pointer) {
        Object here = load(text);
        for (String step : Pointers.steps(pointer)) {
            here = here instanceof Map<?, ?> map ? map.get(step) : ((List<?>) here).get(Integer.parseInt(step));
        }
        return (String) here;
    }

    /** SnakeYAML's own loader, with every value left as text. */
    private static Object load(String text) {
        Resolver texts = new Resolver() {
            @Override
            public Tag resolve(org.yaml.snakeyaml.nodes.NodeId kind, String value, boolean implicit) {
                return kind == org.yaml.snakeyaml.nodes.NodeId.scalar ? Tag.STR : super.resolve(kind, value, implicit);
            }
        };
        LoaderOptions options = new LoaderOptions();
        return new Yaml(
                        new SafeConstructor(options),
                        new Representer(new DumperOptions()),
                        new DumperOptions(),
                        options,
                        texts)
                .load(text);
    }

    static Stream<Path> starterFiles() throws IOException {
        try (Stream<Path> walk = Files.walk(Path.of("rules/starter"))) {
            return walk.filter(p -> p.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("starterFiles")
    void random_changes_of_real_files_do_what_plain_collections_do_and_nothing_else(Path path) throws IOException {
        String text = Files.readString(path);
        Random random = new Random(path.toString().hashCode());
        for (int i = 0; i < 25; i++) {
            Object data = load(text);
            List<Object> steps = new ArrayList<>();
            Object parent = descend(data, random, steps);
            Change change = pick(parent, pointer(steps), random);
            String changed = YamlEdits.apply(path.toString(), text, change);
            mirror(parent, change);
            assertEquals(ordered(data), ordered(load(changed)), path + " " + change);
            assertTrue(isOneSpan(text, changed, change), path + " changed elsewhere by " + change);
        }
    }

    /** What is added or taken out is one piece; what stands around it are the same bytes. A move keeps every line. */
    private static boolean isOneSpan(String before, String now, Change change) {
        if (change instanceof Change.Move) {
            return before.chars().sum() == now.chars().sum();
        }
        int most = Math.min(before.length(), now.length());
        int head = 0;
        while (head < most && before.charAt(head) == now.charAt(head)) {
            head++;
        }
        int tail = 0;
        while (tail < most - head && before.charAt(before.length() - 1 - tail) == now.charAt(now.length() - 1 - tail)) {
            tail++;
        }
        int added = now.length() - head - tail;
        int gone = before.length() - head - tail;
        return change instanceof Change.Put || change instanceof Change.Rename
                ? added <= 30
                : change instanceof Change.Remove ? added <= " []".length() : gone == 0;
    }

    /** Maps in the order of the text. */
    private static String ordered(Object data) {
        return String.valueOf(data);
    }

    private static Object descend(Object from, Random random, List<Object> steps) {
        Object here = from;
        while (true) {
            List<Object> inner = new ArrayList<>();
            if (here instanceof Map<?, ?> map) {
                map.forEach((k, v) -> add(inner, k, v));
            } else {
                List<?> list = (List<?>) here;
                for (int i = 0; i < list.size(); i++) {
                    add(inner, i, list.get(i));
                }
            }
            if (inner.isEmpty() || random.nextInt(4) == 0) {
                return here;
            }
            Object step = inner.get(random.nextInt(inner.size()));
            steps.add(step);
            here = here instanceof Map<?, ?> map ? map.get(step) : ((List<?>) here).get((Integer) step);
        }
    }

    private static void add(List<Object> inner, Object step, Object value) {
        if (value instanceof Map<?, ?> m && !m.isEmpty() || value instanceof List<?> l && !l.isEmpty()) {
            inner.add(step);
        }
    }

    private static String pointer(List<Object> steps) {
        String out = "";
        for (Object step : steps) {
            out = Pointers.child(out, String.valueOf(step));
        }
        return out;
    }

    private static Change pick(Object parent, String pointer, Random random) {
        if (parent instanceof Map<?, ?> map) {
            List<Object> keys = new ArrayList<>(map.keySet());
            String member = Pointers.child(pointer, (String) keys.get(random.nextInt(keys.size())));
            return switch (random.nextInt(4)) {
                case 0 -> new Change.Enter(pointer, keys.size(), "neu", Data.one("a: b"));
                case 1 -> new Change.Rename(member, "other-name");
                case 2 -> new Change.Move(member, random.nextInt(keys.size()));
                default -> new Change.Put(member, Data.texts(List.of("one", "two, three")));
            };
        }
        int size = ((List<?>) parent).size();
        String member = Pointers.child(pointer, random.nextInt(size));
        return switch (random.nextInt(4)) {
            case 0 -> new Change.Insert(pointer, random.nextInt(size + 1), Data.one("#1"));
            case 1 -> new Change.Move(member, random.nextInt(size));
            case 2 -> new Change.Remove(member);
            default -> new Change.Put(member, new Data.Named(Map.of("id", Data.one("x"))));
        };
    }

    @SuppressWarnings("unchecked")
    private static void mirror(Object parent, Change change) {
        String last = Pointers.last(change.pointer());
        if (parent instanceof List<?>) {
            List<Object> list = (List<Object>) parent;
            if (change instanceof Change.Insert i) {
                list.add(i.at(), i.value().text());
            } else if (change instanceof Change.Move m) {
                list.add(m.to(), list.remove(Integer.parseInt(last)));
            } else if (change instanceof Change.Remove) {
                list.remove(Integer.parseInt(last));
            } else {
                list.set(Integer.parseInt(last), Map.of("id", "x"));
            }
            return;
        }
        Map<String, Object> map = (Map<String, Object>) parent;
        List<String> keys = new ArrayList<>(map.keySet());
        Map<String, Object> old = new LinkedHashMap<>(map);
        if (change instanceof Change.Enter e) {
            map.put("neu", e.value().text());
        } else if (change instanceof Change.Put) {
            map.put(last, List.of("one", "two, three"));
        } else {
            if (change instanceof Change.Move m) {
                keys.remove(last);
                keys.add(m.to(), last);
            }
            map.clear();
            keys.forEach(k ->
                    map.put(change instanceof Change.Rename && k.equals(last) ? "other-name" : k, old.get(k)));
        }
    }
}
