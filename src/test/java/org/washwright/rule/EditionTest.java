package org.washwright.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.washwright.generate.SmallEdition;
import org.washwright.task.Value;
import org.washwright.task.Vocabulary;

/** What a task may name by an edition's words, and where its question trees lead. */
class EditionTest {

    private static final String TREE = """
            id: which
            title: Which soil?
            proposes: Soil.kind
            basis: common practice
            start: look
            questions:
              look:
                ask: What do you see?
                answers:
                  - {id: wet, say: Wet, next: touch}
                  - {id: dry, say: Dry, propose: soil-b}
              touch:
                ask: What do you feel?
                answers:
                  - {id: oil, say: Oil, propose: [soil-a, soil-c]}
            """;

    private static final Edition EDITION = edition();

    private static Edition edition() {
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.put("trees/which.yaml", TREE);
        texts.put(
                "rules/r.drl",
                "rule \"t\" @id(\"T\") @basis(\"common practice\") when Soil() then caution(\"hazard-a\", \"So.\"); end\n"
                        + "rule \"l\" @id(\"L\") @basis(\"common practice\") when $s : Stage(main == true) then"
                        + " caution(\"hazard-a\", \"So.\"); end\n");
        texts.computeIfPresent(
                "catalogue/shape-terms.yaml",
                (k, t) -> t.replace(
                        "{id: shape-a, name: shape a}",
                        "{id: shape-a, name: Long one, synonyms: [rod]}\n  - {id: shape-z, name: old, replacedBy: shape-a}"));
        return SmallEdition.read(SmallEdition.files(texts));
    }

    @Test
    void answersThatReachTheEndGiveAProposalWithThePathInWords() {
        Vocabulary.Played played = play("wet", "oil");
        assertEquals(Optional.of(Value.oneOf(List.of("soil-a", "soil-c"))), played.proposal());
        assertEquals("Which soil?: What do you see? Wet; What do you feel? Oil", played.path());
        assertEquals("", played.question());
        assertEquals(Optional.of(Value.term("soil-b")), play("dry").proposal());
    }

    @Test
    void answersThatStopEarlyLeaveTheNextQuestion() {
        Vocabulary.Played played = play("wet");
        assertEquals(
                new Vocabulary.Played(
                        Optional.empty(), "Which soil?: What do you see? Wet", "What do you feel?", "", List.of("oil")),
                played);
    }

    @Test
    void anAnswerThatIsNoneIsNamedWithThosePossible() {
        Vocabulary.Played played = play("damp", "oil");
        assertEquals(
                new Vocabulary.Played(
                        Optional.empty(), "Which soil?: ", "What do you see?", "damp", List.of("wet", "dry")),
                played);
    }

    @Test
    void aTreeSaysWhatItProposes() {
        assertEquals("Soil.kind", EDITION.questions("which").orElseThrow().proposes());
        assertEquals(List.of("which"), List.copyOf(EDITION.treeIds()));
        assertTrue(EDITION.questions("other").isEmpty());
    }

    @Test
    void taskRulesAndLineRulesAreApart() {
        assertEquals(List.of("T"), EDITION.taskRules().stream().map(Rule::id).toList());
        assertEquals(List.of("L"), EDITION.lineRules().stream().map(Rule::id).toList());
        assertEquals("L", EDITION.rule("L").orElseThrow().id());
        assertTrue(EDITION.rule("X").isEmpty());
    }

    @Test
    void aTermIsNamedByIdNameOrSynonymAndAWithdrawnOneIsNoLongerOffered() {
        assertEquals(Optional.of("shape-a"), EDITION.term("shape", "ROD"));
        assertEquals(Optional.of("shape-a"), EDITION.term("shape", "shape-z"));
        assertEquals(
                List.of("shape-a", "shape-b", "shape-c", "shape-d", "shape-e", "shape-f"),
                List.copyOf(EDITION.terms("shape")));
        assertTrue(EDITION.words("shape").containsAll(List.of("shape-a", "Long one", "rod", "shape-z", "old")));
        assertEquals(
                new TreeSet<>(List.of("att-flag", "att-heat", "att-soil")),
                EDITION.declaredAttributes().keySet());
    }

    private static Vocabulary.Played play(String... answers) {
        return EDITION.questions("which").orElseThrow().play(List.of(answers));
    }
}
