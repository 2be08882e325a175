package org.washwright.explain.proof;

/** The steps in which an answer is derived, in that order: a fault in an earlier one explains those in later ones. */
public enum Step {
    REQUEST("what was asked"),
    FACTS("facts and formulas"),
    RULES("rules that fired"),
    LINES("processes, lines and figures"),
    ORDER("points and order"),
    WORDS("what is said"),
    CITES("rules and sources cited"),
    BYTES("the file");

    private final String words;

    Step(String words) {
        this.words = words;
    }

    /** As readers see it. */
    public String words() {
        return words;
    }

    /** The step that a place of an answer belongs to. */
    static Step of(String pointer) {
        String top = pointer.substring(1).split("/", 2)[0];
        return switch (top) {
            case "format", "request", "requestHash" -> REQUEST;
            case "facts" -> FACTS;
            case "firings" -> RULES;
            case "ranking" -> ORDER;
            case "candidates" -> pointer.matches("/candidates/\\d+/(low|high|areas)(/.*)?") ? ORDER : LINES;
            case "ruledOut", "figures", "inputs" -> LINES;
            case "rules", "sources" -> CITES;
            default -> WORDS;
        };
    }
}
