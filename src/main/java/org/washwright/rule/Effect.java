package org.washwright.rule;

import java.util.Optional;
import org.washwright.quantity.Dimension;

/** What a rule says when it fires. */
public sealed interface Effect {

    /** Why, in one sentence. */
    Reason reason();

    /** A conclusion of the catalogue, about the fact of a pattern or about the task. */
    record Conclude(String conclusion, Optional<Integer> subject, Reason reason) implements Effect {}

    /** A process may not stand in a role. */
    record RuleOut(Target target, Role role, Reason reason) implements Effect {}

    /** One to three points for or against, on a criterion. */
    record Score(boolean support, Target target, String criterion, int points, Reason reason) implements Effect {}

    /** The line needs a stage. */
    record Require(Target target, String stage, Optional<StageRef> after, Optional<StageRef> before, Reason reason)
            implements Effect {}

    /** One parameter of one stage is bounded. */
    record Limit(
            Target target,
            StageRef stage,
            String parameter,
            Dimension dimension,
            boolean max,
            Bound bound,
            Reason reason)
            implements Effect {}

    /** A hazard's caution is shown. */
    record Caution(String hazard, Optional<Target> target, Reason reason) implements Effect {}

    /** Something has to be found out. */
    record Ask(String type, String attribute, Reason reason) implements Effect {}

    /** How cleanliness is proven. */
    record Verify(String method, Reason reason) implements Effect {}

    /** Which processes a finding is about. */
    sealed interface Target {

        /** All processes at or below a node of the process tree. */
        record Node(String id) implements Target {}

        /** The process that a pattern matched. */
        record Matched(int pattern) implements Target {}
    }

    /** A stage of a line. */
    sealed interface StageRef {

        /** Name of the main cleaning stage in rules. */
        String MAIN = "main";

        /** The main stage or a stage by id. */
        record Named(String id) implements StageRef {}

        /** The stage that a pattern of a line rule matched. */
        record Matched(int pattern) implements StageRef {}
    }

    /** A bound's value. */
    sealed interface Bound {

        /** A number in SI. */
        record Literal(double si) implements Bound {}

        /** The value of a matched fact's field. */
        record FieldOf(int pattern, Field field) implements Bound {}
    }

    /** Where in a line a process may not stand. */
    enum Role {
        MAIN("main", "as main cleaning"),
        ALONE("alone", "as the only cleaning"),
        FIRST("first", "as first cleaning"),
        LAST("last", "as last cleaning"),
        ANYWHERE("anywhere", "anywhere in the line");

        private final String word;
        private final String phrase;

        Role(String word, String phrase) {
            this.word = word;
            this.phrase = phrase;
        }

        /** As readers see it. */
        public String phrase() {
            return phrase;
        }

        /** As written in rules. */
        public String word() {
            return word;
        }
    }

    /** The verb as written in rules. */
    default String verb() {
        if (this instanceof Conclude) {
            return "conclude";
        }
        if (this instanceof RuleOut) {
            return "ruleOut";
        }
        if (this instanceof Score s) {
            return s.support() ? "support" : "oppose";
        }
        if (this instanceof Require) {
            return "require";
        }
        if (this instanceof Limit) {
            return "limit";
        }
        if (this instanceof Caution) {
            return "caution";
        }
        return this instanceof Ask ? "ask" : "verify";
    }
}
