package org.washwright.report;

/** The sections of the report in their order; bookmarks, contents and headings are made of them. */
enum Section {
    TASK("The task as given"),
    CARE("Take care"),
    LINE("The line, stage by stage"),
    FIGURES("Figures to quote on"),
    BALANCES("What goes in and what comes out"),
    COST("Cost"),
    CONTROL("Keeping the baths in hand"),
    PROOF("Proving it clean"),
    ORDER("How the choice came about"),
    OPEN("What it hangs on and what to find out"),
    OUT("Processes ruled out"),
    RULES("Rules that speak for and about this line"),
    FOLLOWS("What follows from the task"),
    INPUTS("Assumptions and data behind the figures"),
    FORMULAS("How each figure was computed"),
    SOURCES("Sources"),
    SIGN("Prepared, checked, released");

    private final String title;

    Section(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    /** What links lead to. */
    String id() {
        return "s-" + name().toLowerCase(java.util.Locale.ROOT);
    }
}
