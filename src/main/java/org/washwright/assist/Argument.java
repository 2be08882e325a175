package org.washwright.assist;

/** What the arguments of verbs are. */
enum Argument {
    TARGET("target"),
    ROLE("role"),
    CRITERION("criterion"),
    POINTS("points"),
    STAGE("stage"),
    STAGE_OF_LINE("stage"),
    PLACE("place in the line"),
    PARAMETER("parameter"),
    BOUND("bound"),
    HAZARD("hazard"),
    CONCLUSION("conclusion"),
    SUBJECT("fact"),
    ATTRIBUTE("attribute"),
    METHOD("test method"),
    REASON("reason");

    private final String word;

    Argument(String word) {
        this.word = word;
    }

    /** In a word or two. */
    String word() {
        return word;
    }
}
