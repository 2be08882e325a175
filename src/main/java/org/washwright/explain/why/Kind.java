package org.washwright.explain.why;

import com.fasterxml.jackson.annotation.JsonValue;

/** What a thing in an explanation is. */
public enum Kind {
    /** A sentence, a status or an order that the answer states. */
    SAID("said"),
    /** A stage of a line. */
    STAGE("stage"),
    /** The allowed range of a setting. */
    WINDOW("window"),
    /** Points of an area or a criterion. */
    POINTS("points"),
    /** A figure of a line. */
    FIGURE("figure"),
    /** What a rule says of a process or of the task. */
    FINDING("what a rule says"),
    /** A rule that fired. */
    RULE("rule"),
    /** A rule that might fire. */
    OPEN_RULE("open rule"),
    /** Something that rules concluded. */
    CONCLUSION("conclusion"),
    /** A value that a formula gave. */
    COMPUTED("computed"),
    /** A value that the catalogue gives. */
    CATALOGUE("catalogue"),
    /** A value of a process that a formula gives by itself, such as the vapour pressure of water. */
    FORMULA("formula"),
    /** A value that was given. */
    GIVEN("given"),
    /** A value that follows from questions that were answered. */
    ASKED("asked"),
    /** Something that nobody said. */
    UNKNOWN("not known"),
    /** A list of the task, complete or open. */
    LIST("list"),
    /** Points as the rulebook's grading starts from, which nothing moved. */
    GRADING("grading"),
    /** Something taken for granted by the edition or for this request. */
    ASSUMPTION("assumption"),
    /** A source. */
    SOURCE("source");

    private final String word;

    Kind(String word) {
        this.word = word;
    }

    /** As readers see it. */
    @JsonValue
    public String word() {
        return word;
    }

    /** True for what rests on nothing further in the answer: what was given, taken for granted or published. */
    public boolean isGround() {
        return this == GIVEN
                || this == ASKED
                || this == UNKNOWN
                || this == LIST
                || this == ASSUMPTION
                || this == CATALOGUE
                || this == FORMULA
                || this == GRADING
                || this == SOURCE;
    }
}
