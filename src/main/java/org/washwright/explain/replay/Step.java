package org.washwright.explain.replay;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;

/**
 * One step from what was given to what is said.
 *
 * @param id stable name: what the step is about, or the rule and the facts it matched; never a number of a firing or points
 * @param kind what kind of step it is
 * @param level level of the rule in the graph of conclusions, from 0; -1 where no rule speaks
 * @param certain false for a firing that could not be decided
 * @param process process id where the step is about the line of one; else empty
 * @param firing number of the firing in the answer, from 1; 0 where no rule speaks
 * @param rule rule id; empty where no rule speaks
 * @param title what happens, in a practitioner's words
 * @param says the rest in words; may be empty
 * @param reads what it read; all of it was known before
 * @param adds what it adds
 */
public record Step(
        String id,
        Kind kind,
        int level,
        boolean certain,
        String process,
        int firing,
        String rule,
        String title,
        String says,
        List<Read> reads,
        List<Added> adds) {

    /** Level of a step in which no rule speaks. */
    static final int NO_LEVEL = -1;

    /** Keeps copies. */
    public Step {
        reads = List.copyOf(reads);
        adds = List.copyOf(adds);
    }

    /** Kinds of steps, in the order in which they come. */
    public enum Kind {
        /** What was said of the task. */
        GIVEN("given"),
        /** What the catalogue knows of the things named. */
        CATALOGUE("catalogue"),
        /** What a formula computes. */
        COMPUTED("computed"),
        /** A rule that fires, or may fire. */
        FIRING("firing"),
        /** The stages of a line are put in order. */
        LINE("line"),
        /** The windows of its stages are closed. */
        WINDOWS("windows"),
        /** The line is sized and costed. */
        FIGURES("figures"),
        /** It is given points. */
        POINTS("points"),
        /** It is recommended, conditional or ruled out. */
        STATUS("status"),
        /** The processes are put in order. */
        RANKING("ranking");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As JSON and pages write it. */
        @JsonValue
        public String word() {
            return word;
        }
    }

    /**
     * Something a step read.
     *
     * @param ref attribute or fact of the answer, or the id of an earlier step; a list of the task by its key
     * @param name what a reader calls it
     * @param value its value with unit; empty where its being there is all that counts
     * @param known false when a lack of knowledge here holds an undecided firing
     */
    public record Read(String ref, String name, String value, boolean known) {}

    /**
     * Something a step adds.
     *
     * @param kind {@code fact}, {@code value}, {@code conclusion}, {@code stage}, {@code window}, {@code figure},
     *     {@code points}, {@code status}, {@code place}, or the verb of a finding such as {@code ruleOut}
     * @param ref attribute or fact of the answer that is known from here on; empty where it is neither
     * @param name what a reader calls it
     * @param value value, detail or sentence
     */
    public record Added(String kind, String ref, String name, String value) {

        /** True when rules can read it from here on. */
        @JsonIgnore
        public boolean isKnowledge() {
            return !ref.isEmpty();
        }
    }

    /** References of facts and attributes that are known once this step is done. */
    @JsonIgnore
    public List<String> learned() {
        return adds.stream().filter(Added::isKnowledge).map(Added::ref).toList();
    }

    /** True when a rule draws a conclusion here that others can build on. */
    @JsonIgnore
    public boolean isConclusion() {
        return kind == Kind.FIRING && adds.stream().anyMatch(a -> a.kind().equals("conclusion"));
    }
}
