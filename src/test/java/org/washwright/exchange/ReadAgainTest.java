package org.washwright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.drools.DrlReader;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.syntax.RuleTextReader;

/** Reading again what changed gives what reading everything gives; the oracle is a reader that remembers nothing. */
class ReadAgainTest {

    private static final int EDITS = 160;
    private static final int EDITS_OF_STARTER = 4;

    /** Pieces of every kind of file, some of them wrong where they land. */
    private static final List<String> PIECES = List.of(
            "\n",
            "\"",
            "{",
            "}",
            "- ",
            "  ",
            ")",
            "soil-a",
            "soil-b",
            "nothing-known",
            "S-01",
            "== ",
            "rule \"x\"\n",
            "end\n",
            "@basis(\"standard\")",
            ",",
            "yes",
            "°C",
            "60 °C",
            ": ",
            "#",
            "\u0000",
            "$p",
            "id",
            "|");

    @Test
    void after_any_edits_the_same_is_found_as_by_a_reader_without_memory() {
        edits(small(), EDITS, 20261128L);
    }

    @Test
    void so_it_is_with_the_starter_rulebook() {
        edits(new TreeMap<>(Starter.files().files()), EDITS_OF_STARTER, 7L);
    }

    private static void edits(Map<String, byte[]> start, int edits, long seed) {
        Random random = new Random(seed);
        ReadFiles memory = new ReadFiles();
        List<Map<String, byte[]>> states = new ArrayList<>(List.of(start));
        int sound = 0;
        int broken = 0;
        for (int i = 0; i < edits; i++) {
            // Some edits start from a state of long ago, as one who undoes does.
            Map<String, byte[]> files = new TreeMap<>(
                    states.get(random.nextInt(3) == 0 ? random.nextInt(states.size()) : states.size() - 1));
            if (random.nextInt(2) == 0) {
                edit(files, random);
            } else {
                files = new TreeMap<>(start);
                harmless(files, random);
            }
            states.add(files);
            boolean fine = same(new EditionFiles(files), memory, "edit " + i + " of seed " + seed);
            sound += fine ? 1 : 0;
            broken += fine ? 0 : 1;
        }
        assertTrue(sound > 0 && broken > 0, sound + " sound and " + broken + " broken editions are no fair mixture");
    }

    private static boolean same(EditionFiles files, ReadFiles memory, String where) {
        EditionReader.Result whole = new EditionReader(new DrlReader()).read(files);
        EditionReader.Result again = new EditionReader(new DrlReader(), memory).read(files);
        EditionReader.Inspection seen = new EditionReader(new DrlReader(), memory).inspect(files);
        assertEquals(told(whole.diagnostics()), told(again.diagnostics()), where);
        assertEquals(told(whole.diagnostics()), told(seen.diagnostics()), where);
        assertEquals(whole.edition(), again.edition(), where);
        assertEquals(whole.checks(), again.checks(), where);
        whole.edition().ifPresent(e -> assertEquals(e.rules(), seen.readable().rules(), where));
        return whole.edition().isPresent();
    }

    private static List<String> told(Diagnostics diagnostics) {
        return diagnostics.all().stream().map(d -> d.asData().toString()).toList();
    }

    private static void edit(Map<String, byte[]> files, Random random) {
        List<String> names = List.copyOf(files.keySet());
        String name = names.get(random.nextInt(names.size()));
        String text = new String(files.get(name), StandardCharsets.UTF_8);
        int at = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), at + random.nextInt(12));
        String changed = switch (random.nextInt(8)) {
            case 0 -> text.substring(0, at) + text.substring(to);
            case 1 -> text + text;
            case 2 -> text.substring(0, at);
            case 3 -> text + "\n# a remark\n";
            default -> text.substring(0, at) + PIECES.get(random.nextInt(PIECES.size())) + text.substring(at);
        };
        if (random.nextInt(20) == 0) {
            files.remove(name);
        } else {
            files.put(name, changed.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Another reason, threshold or name, and a remark: the edition stays sound. */
    private static void harmless(Map<String, byte[]> files, Random random) {
        List<String> names =
                files.keySet().stream().filter(n -> !n.endsWith(".csv")).toList();
        String name = names.get(random.nextInt(names.size()));
        String text = new String(files.get(name), StandardCharsets.UTF_8);
        String remark = (name.endsWith(".drl") ? "// " : "# ") + random.nextInt(1000) + "\n";
        files.put(
                name,
                (remark
                                + text.replace("It is oily.", "Oily " + random.nextInt(9))
                                        .replace("1 kg", "2 kg"))
                        .getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, byte[]> small() {
        Map<String, String> texts = SmallEdition.withFewRules();
        texts.put("rules/more.drl", """
                rule "concludes" @id("S-10") @basis("handbook") @source("BOOK, p. 1")
                when Soil(kind.oily == true) then conclude("conclusion-a", "Oily."); end
                rule "waits" @id("S-11") @basis("common practice")
                when Conclusion(id == "conclusion-a") $p : Process(node == "water")
                then oppose($p, "works", 2, "It is oily."); end
                """);
        texts.put("tables/t.csv", """
                title,Which
                basis,common practice
                then,support

                id,Soil.kind,target,criterion,points,reason
                T-01,soil-a,water,works,2,Good.
                T-02,soil-b|soil-c,oil,works,1,Fair.
                """);
        texts.put("trees/t.yaml", """
                id: which-soil
                title: Which soil?
                proposes: Soil.kind
                basis: common practice
                start: one
                questions:
                  one: {ask: "Is it?", answers: [{id: a, say: A, propose: soil-a}, {id: b, say: B, propose: soil-b}]}
                """);
        texts.put("cases/c.yaml", """
                cases:
                  - id: c-1
                    title: Rusts
                    basis: common practice
                    task: {title: One, materials: [{substrate: substrate-a}]}
                    expect: {fires: [S-01]}
                """);
        return new TreeMap<>(SmallEdition.files(texts).files());
    }

    @Test
    void the_edition_that_is_edited_is_sound_at_first() {
        assertEquals(
                List.of(),
                told(new EditionReader(new DrlReader())
                        .read(new EditionFiles(small()))
                        .diagnostics()));
    }

    @Test
    void only_the_file_that_changed_is_parsed_again() {
        AtomicInteger parsed = new AtomicInteger();
        RuleTextReader counted = (file, text, diagnostics) -> {
            parsed.incrementAndGet();
            return new DrlReader().read(file, text, diagnostics);
        };
        ReadFiles memory = new ReadFiles();
        Map<String, byte[]> files = small();
        new EditionReader(counted, memory).inspect(new EditionFiles(files));
        assertEquals(2, parsed.getAndSet(0), "there are two files of rules");
        files.put(
                "rules/more.drl",
                (new String(files.get("rules/more.drl"), StandardCharsets.UTF_8) + "// so\n")
                        .getBytes(StandardCharsets.UTF_8));
        new EditionReader(counted, memory).inspect(new EditionFiles(files));
        assertEquals(1, parsed.getAndSet(0));
        new EditionReader(counted, memory).inspect(new EditionFiles(small()));
        assertEquals(0, parsed.get(), "all of this was read before");
    }

    @Test
    void a_broken_file_leaves_the_rules_of_others_readable() {
        Map<String, byte[]> files = small();
        files.put("rules/more.drl", "rule \"half".getBytes(StandardCharsets.UTF_8));
        EditionReader.Inspection seen = new EditionReader(new DrlReader()).inspect(new EditionFiles(files));
        assertTrue(seen.diagnostics().hasErrors());
        assertEquals(
                List.of("S-01", "S-02", "T-01", "T-02"),
                seen.readable().rules().stream().map(r -> r.id()).toList());
    }

    @Test
    void memory_has_an_end_by_number_and_by_weight() {
        Memory<String> memory = new Memory<>(10, 3);
        for (int i = 0; i < 20; i++) {
            String key = "k" + i;
            memory.get(key, 1, () -> key);
        }
        assertEquals(3, memory.size());
        memory.get("heavy", 9, () -> "heavy");
        assertEquals(2, memory.size(), "nine and one are ten");
        memory.get("too heavy", 11, () -> "too heavy");
        assertEquals(2, memory.size());
        assertEquals("heavy", memory.get("heavy", 9, () -> "made again"));
    }

    @Test
    void memory_lets_go_what_no_reading_asked_for_lately() {
        AtomicLong reading = new AtomicLong();
        Memory<String> memory = new Memory<>(1000, 1000, reading::get);
        for (int i = 0; i < 200; i++) {
            reading.incrementAndGet();
            String key = "k" + i;
            memory.get("always", 1, () -> "always");
            memory.get(key, 1, () -> key);
        }
        assertEquals(Memory.LATELY + 2, memory.size(), "those of the last readings, and what each of them asked for");
        assertEquals("always", memory.get("always", 1, () -> "made again"));
    }

    @Test
    void what_was_found_is_told_again_in_its_order_up_to_the_limit() {
        Diagnostics many = new Diagnostics();
        for (int i = 1; i <= Diagnostics.LIMIT + 20; i++) {
            many.add(Message.BAD_ID, new Place("f", i, 1, ""), "value " + i);
        }
        Diagnostics half = new Diagnostics();
        for (int i = 1; i <= 100; i++) {
            half.add(Message.BAD_ID, new Place("f", i, 1, ""), "value " + i);
        }
        Diagnostics rest = new Diagnostics();
        for (int i = 101; i <= Diagnostics.LIMIT + 20; i++) {
            rest.add(Message.BAD_ID, new Place("f", i, 1, ""), "value " + i);
        }
        half.addAll(rest);
        assertEquals(
                many.all().stream().map(Diagnostic::toString).toList(),
                half.all().stream().map(Diagnostic::toString).toList());
    }
}
