package org.washwright.impact.meaning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.impact.meaning.EditedRules.Made;

/**
 * What was edited is known to the test alone; whether it changes the meaning is told by the meaning hash, which the comparison
 * does not look at.
 */
class MeaningComparisonTest {

    private static final int RULES = 6;

    private static List<Made> made(Random random) {
        List<Made> out = new ArrayList<>();
        for (int i = 0; i < RULES; i++) {
            Made fresh = new Made(random, i);
            // Rules that do the same could be told apart by their ids alone.
            while (out.stream().anyMatch(fresh::doesTheSameAs)) {
                fresh = new Made(random, i);
            }
            out.add(fresh);
        }
        return out;
    }

    private static MeaningComparison compared(State before, State after) {
        MeaningComparison there = MeaningComparison.of(before, after);
        assertEquals(
                before.edition().meaningHash().equals(after.edition().meaningHash()),
                there.isSameMeaning(),
                () -> "hash and comparison agree: " + there.differences());
        MeaningComparison back = MeaningComparison.of(after, before);
        assertEquals(
                there.differences().stream().filter(d -> d.what() == What.ADDED).count(),
                back.differences().stream()
                        .filter(d -> d.what() == What.REMOVED)
                        .count());
        assertEquals(
                there.differences().stream().filter(Difference::answers).count(),
                back.differences().stream().filter(Difference::answers).count());
        return there;
    }

    /** What a kind of edit must be told as: whether answers may change, and what of the rule. */
    private enum Edit {
        MOVED(What.MOVED, false),
        RETITLED(What.REWORDED, false, "title"),
        NOTED(What.REWORDED, false, "note"),
        OTHER_REASON(What.REWORDED, false, "reason"),
        CONDITION_GAINED(What.CHANGED, true, "condition"),
        CONDITION_LOST(What.CHANGED, true, "condition"),
        PATTERN(What.CHANGED, true, "condition"),
        EFFECT_GAINED(What.CHANGED, true, "says"),
        EFFECT_SWAPPED(What.CHANGED, true, "says"),
        REMOVED(What.REMOVED, true),
        RENAMED(What.RENAMED, false, "id"),
        RENAMED_AND_RETITLED(What.RENAMED, false, "id", "title");

        private final What what;
        private final boolean answers;
        private final List<String> details;

        Edit(What what, boolean answers, String... details) {
            this.what = what;
            this.answers = answers;
            this.details = List.of(details);
        }

        List<Made> done(Made r, Random random) {
            return switch (this) {
                case MOVED -> List.of(r.with(r.id(), "rules/elsewhere.drl", r.title(), r.note(), r.reason()));
                case RETITLED -> List.of(r.with(r.id(), r.file(), "other title", r.note(), r.reason()));
                case NOTED -> List.of(r.with(r.id(), r.file(), r.title(), "A note.", r.reason()));
                case OTHER_REASON -> List.of(r.with(r.id(), r.file(), r.title(), r.note(), "Another reason."));
                case CONDITION_GAINED -> {
                    List<String> all = new ArrayList<>(r.conditions());
                    all.add(EditedRules.some(random, without(EditedRules.CONDITIONS, r.conditions()), 1)
                            .get(0));
                    yield List.of(r.with(r.heavy(), all, r.effects()));
                }
                case CONDITION_LOST -> List.of(r.with(r.heavy(), r.conditions().subList(1, 2), r.effects()));
                case PATTERN -> List.of(r.with(!r.heavy(), r.conditions(), r.effects()));
                case EFFECT_GAINED -> {
                    List<String> all = new ArrayList<>(r.effects());
                    all.add("verify(\"test-method-a\", ");
                    yield List.of(r.with(r.heavy(), r.conditions(), all));
                }
                case EFFECT_SWAPPED -> {
                    List<String> all = new ArrayList<>(r.effects());
                    all.set(
                            0,
                            EditedRules.some(random, without(EditedRules.EFFECTS, r.effects()), 1)
                                    .get(0));
                    yield List.of(r.with(r.heavy(), r.conditions(), all));
                }
                case REMOVED -> List.of();
                case RENAMED -> List.of(r.with("N-1", r.file(), r.title(), r.note(), r.reason()));
                case RENAMED_AND_RETITLED -> List.of(r.with("N-1", r.file(), "other title", r.note(), r.reason()));
            };
        }

        private static List<String> without(List<String> all, List<String> some) {
            return all.stream().filter(x -> !some.contains(x)).toList();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void one_edit_of_one_rule_is_named_as_what_it_is_and_nothing_else_is(int seed) {
        Random random = new Random(seed);
        List<Made> rules = made(random);
        State before = EditedRules.state(rules);
        for (Edit edit : Edit.values()) {
            int which = random.nextInt(rules.size());
            Made old = rules.get(which);
            List<Made> edited = new ArrayList<>(rules);
            edited.remove(which);
            edited.addAll(which, edit.done(old, random));
            MeaningComparison found = compared(before, EditedRules.state(edited));
            List<Difference> told = found.differences().stream()
                    .filter(d -> d.what() != What.MOVED || d.movesFile())
                    .toList();
            assertEquals(1, told.size(), () -> edit + " of " + old.id() + ": " + told);
            Difference d = told.get(0);
            assertEquals(edit.what, d.what(), () -> edit + ": " + d);
            assertEquals(edit.answers, d.answers(), () -> edit + ": " + d);
            assertEquals(edit.what == What.RENAMED ? "N-1" : old.id(), d.id());
            if (edit != Edit.REMOVED) {
                assertEquals(
                        edit.details,
                        d.details().stream().map(Detail::what).distinct().toList(),
                        edit.name());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {11, 12, 13, 14, 15, 16})
    void several_edits_at_once_are_each_named_at_their_rule(int seed) {
        Random random = new Random(seed);
        List<Made> rules = made(random);
        List<Made> edited = new ArrayList<>();
        Map<String, Edit> done = new TreeMap<>();
        List<Edit> edits = new ArrayList<>(List.of(Edit.values()));
        edits.remove(Edit.RENAMED_AND_RETITLED);
        Collections.shuffle(edits, random);
        for (int i = 0; i < rules.size(); i++) {
            Edit edit = edits.get(i);
            done.put(edit == Edit.RENAMED ? "N-1" : rules.get(i).id(), edit);
            edited.addAll(edit.done(rules.get(i), random));
        }
        MeaningComparison found = compared(EditedRules.state(rules), EditedRules.state(edited));
        done.forEach((id, edit) -> {
            Difference d = found.differences().stream()
                    .filter(x -> x.id().equals(id))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(edit + " of " + id + " is not told"));
            assertEquals(edit.what, d.what(), () -> edit + ": " + d);
            assertEquals(edit.answers, d.answers(), () -> edit + ": " + d);
        });
        assertEquals(done.size(), found.differences().size());
    }

    @Test
    void a_condition_and_an_effect_are_told_in_words_before_and_after() {
        Made rule = new Made(
                "R-1",
                "rules/a.drl",
                "hard",
                "",
                "It is so.",
                false,
                List.of("hardness >= \"20 HRC\""),
                List.of("support(\"oil\", \"works\", 1, "));
        Made harder = rule.with(true, List.of("hardness >= \"30 HRC\""), List.of("support(\"oil\", \"works\", 3, "));
        Difference d = compared(EditedRules.state(List.of(rule)), EditedRules.state(List.of(harder)))
                .differences()
                .get(0);
        assertEquals(
                List.of(
                        new Detail(
                                "condition",
                                "the hardness of the material is at least 20 HRC",
                                "the hardness of the material is at least 30 HRC",
                                true),
                        new Detail("condition", "", "part: mass of one part is at least 1000 g", true),
                        new Detail("says", "give oil 5 points for works", "give oil 20 points for works", true)),
                d.details());
    }

    /** What else an edition says: text before, text after, subject, id, and whether answers may change. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "catalogue/soil-terms.yaml | melts: 60 °C | melts: 70 °C | TERM | soil/soil-a | true",
                "catalogue/soil-terms.yaml | name: B, | name: Bee, | TERM | soil/soil-b | true",
                "catalogue/process-terms.yaml | windows: {temperature: 20..80 °C} | windows: {temperature: 20..81 °C} | TERM | process/water-a | true",
                "catalogue/process-terms.yaml | phrase: soak | phrase: soak well | TERM | process/water-b | false",
                "catalogue/hazard-terms.yaml | Mind A. | Mind A well. | TERM | hazard/hazard-a | false",
                "catalogue/stage-terms.yaml | position: 20, | position: 30, | TERM | stage/second | true",
                "catalogue/kinds.yaml | label: melting point | label: melts at | KIND | soil | false",
                "catalogue/kinds.yaml | oily: {label: oily, flag: yes} | oily: {label: oily, flag: yes}, more: {label: more, flag: yes} | KIND | soil | true",
                "catalogue/attributes.yaml | How hot? | How hot is it? | ATTRIBUTE | att-heat | false",
                "catalogue/attributes.yaml | quantity: temperature, unit: °C | quantity: length, unit: mm | ATTRIBUTE | att-heat | true",
                "assumptions.yaml | value: 8 h | value: 16 h | ASSUMPTION | hours-per-shift | true",
                "assumptions.yaml | label: hours | label: hours of a shift | ASSUMPTION | hours-per-shift | false",
                "grading.yaml | 2: 10 | 2: 11 | GRADING | steps | true",
                "grading.yaml | name: cheap | name: not dear | GRADING | cost/cheap | false",
                "grading.yaml | name: fine, weight: 1, start: 40 | name: fine, weight: 1, start: 41 | GRADING | quality/fine | true",
                "edition.yaml | title: A book | title: The book | SOURCE | BOOK | false",
                "edition.yaml | title: Small edition | title: Little edition | HEADER | small | false",
                "cases/c.yaml | title: Hard | title: Hard one | CASE | hard | false",
                "cases/c.yaml | 45 HRC | 46 HRC | CASE | hard | false",
                "cases/c.yaml | fires: [R-1] | doesNotFire: [R-1] | CASE | hard | false",
                "cases/c.yaml | cases: | # a remark\\ncases: | CASE_FILE | cases/c.yaml | false",
                "trees/t.yaml | say: It is, | say: It is so, | TREE | flag-tree | false",
                "trees/t.yaml | propose: yes | propose: unknown | TREE | flag-tree | true"
            })
    void anything_else_that_an_edition_says_is_compared_with_its_values(
            String file, String was, String is, Subject subject, String id, boolean answers) {
        Map<String, String> texts = texts();
        String text = texts.get(file);
        assertTrue(text.contains(was), () -> was + " stands in " + text);
        Map<String, String> edited = new TreeMap<>(texts);
        String one = is.replace("\\n", "\n");
        if (one.contains("}, more")) {
            one = one.replace("}, more", "}\n      more");
        }
        edited.put(file, text.replace(was, one));
        List<Difference> found =
                compared(States.read(texts), States.read(edited)).differences();
        assertEquals(1, found.size(), found::toString);
        assertEquals(subject, found.get(0).subject());
        assertEquals(id, found.get(0).id());
        assertEquals(answers, found.get(0).answers(), found::toString);
        assertTrue(found.get(0).meaning());
    }

    private static Map<String, String> texts() {
        Map<String, String> texts = SmallEdition.texts();
        texts.put(
                "rules/a.drl",
                new Made(
                                "R-1",
                                "rules/a.drl",
                                "hard",
                                "",
                                "So.",
                                false,
                                List.of("hardness >= \"40 HRC\""),
                                List.of("caution(\"hazard-a\", "))
                        .drl());
        texts.put(
                "cases/c.yaml",
                "cases:\n  - id: hard\n    title: Hard\n    task: {title: t, materials: [{hardness: 45 HRC}]}\n"
                        + "    expect: {fires: [R-1]}\n");
        texts.put("trees/t.yaml", """
                id: flag-tree
                title: A tree
                proposes: Material.porous
                basis: common practice
                start: one
                questions:
                  one:
                    ask: Is it?
                    answers:
                      - {id: sure, say: It is, propose: yes}
                      - {id: never, say: It is not, propose: no}
                """);
        return texts;
    }

    @Test
    void a_unit_an_order_or_a_comment_is_no_difference_of_meaning() {
        Map<String, String> texts = texts();
        Map<String, String> edited = new TreeMap<>(texts);
        edited.put("assumptions.yaml", texts.get("assumptions.yaml").replace("8 h", "480 min") + "# a remark\n");
        MeaningComparison found = compared(States.read(texts), States.read(edited));
        assertEquals(List.of(), found.differences());
        assertEquals(
                "Nothing differs in meaning; only layout, comments or settings of the checks do.", found.sentence());
        assertEquals(
                "Nothing differs: both are the same files.",
                compared(States.read(texts), States.read(texts)).sentence());
    }

    @Test
    void the_starter_rulebook_differs_from_itself_in_nothing_and_a_rule_taken_out_is_all_that_is_told() {
        State whole = States.read(Starter.files());
        assertEquals(List.of(), compared(whole, whole).differences());
        String rule = whole.edition().rules().get(3).id();
        State less = new State(
                whole.edition()
                        .with(whole.edition().rules().stream()
                                .filter(r -> !r.id().equals(rule))
                                .toList()),
                whole.cases(),
                whole.caseFiles());
        List<Difference> found = MeaningComparison.of(whole, less).differences();
        assertEquals(List.of(rule), found.stream().map(Difference::id).toList());
        assertEquals(What.REMOVED, found.get(0).what());
        assertFalse(found.get(0).details().isEmpty());
    }
}
