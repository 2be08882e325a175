package org.washwright.assist;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The verbs of consequences: their arguments in order, and what they say. Source: docs/rule-language.md, Consequences. */
enum Verb {
    RULE_OUT(
            "ruleOut",
            "ruleOut(target, \"main\", \"reason\")",
            "A process may not stand in a role of the line.",
            List.of(Argument.TARGET, Argument.ROLE, Argument.REASON)),
    SUPPORT(
            "support",
            "support(target, \"criterion\", 2, \"reason\")",
            "One to three points for a process on a criterion.",
            List.of(Argument.TARGET, Argument.CRITERION, Argument.POINTS, Argument.REASON)),
    OPPOSE(
            "oppose",
            "oppose(target, \"criterion\", 2, \"reason\")",
            "One to three points against a process on a criterion.",
            List.of(Argument.TARGET, Argument.CRITERION, Argument.POINTS, Argument.REASON)),
    REQUIRE(
            "require",
            "require(target, \"stage\", after(\"main\"), \"reason\")",
            "The line needs this stage, after, before or between others.",
            List.of(Argument.TARGET, Argument.STAGE, Argument.PLACE, Argument.REASON)),
    LIMIT(
            "limit",
            "limit(target, \"main\", \"parameter\", max(\"10.5\"), \"reason\")",
            "Bounds one parameter of one stage.",
            List.of(Argument.TARGET, Argument.STAGE_OF_LINE, Argument.PARAMETER, Argument.BOUND, Argument.REASON)),
    CAUTION(
            "caution",
            "caution(\"hazard\", \"reason\") or caution(\"hazard\", target, \"reason\")",
            "Shows the usual caution of a hazard.",
            List.of(Argument.HAZARD, Argument.TARGET, Argument.REASON)),
    CONCLUDE(
            "conclude",
            "conclude(\"conclusion\", $fact, \"reason\") or conclude(\"conclusion\", \"reason\")",
            "Draws a conclusion that other rules may match.",
            List.of(Argument.CONCLUSION, Argument.SUBJECT, Argument.REASON)),
    ASK(
            "ask",
            "ask(\"Material.hardness\", \"reason\")",
            "Something to find out before the answer is firm.",
            List.of(Argument.ATTRIBUTE, Argument.REASON)),
    VERIFY(
            "verify",
            "verify(\"test-method\", \"reason\")",
            "How cleanliness is to be proven.",
            List.of(Argument.METHOD, Argument.REASON));

    private final String word;
    private final String form;
    private final String meaning;
    private final List<Argument> arguments;

    Verb(String word, String form, String meaning, List<Argument> arguments) {
        this.word = word;
        this.form = form;
        this.meaning = meaning;
        this.arguments = arguments;
    }

    String word() {
        return word;
    }

    String form() {
        return form;
    }

    String meaning() {
        return meaning;
    }

    List<Argument> arguments() {
        return arguments;
    }

    /** True when the argument before the reason may be left out. */
    boolean isOptional(int index) {
        return index == 1 && (this == CAUTION || this == CONCLUDE);
    }

    static Optional<Verb> of(String word) {
        return Arrays.stream(values()).filter(v -> v.word.equals(word)).findFirst();
    }
}
