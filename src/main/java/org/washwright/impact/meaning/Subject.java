package org.washwright.impact.meaning;

import com.fasterxml.jackson.annotation.JsonValue;

/** What of an edition differs. */
public enum Subject {
    RULE("rule", "rules", true),
    TERM("term", "terms", true),
    KIND("kind of term", "kinds of term", true),
    ATTRIBUTE("attribute", "attributes", true),
    TREE("question tree", "question trees", true),
    GRADING("grading", "parts of the grading", true),
    ASSUMPTION("assumption", "assumptions", true),
    SOURCE("source", "sources", false),
    HEADER("title page", "title pages", false),
    CASE("reference case", "reference cases", false),
    CASE_FILE("file of cases", "files of cases", false);

    private final String word;
    private final String many;
    private final boolean answers;

    Subject(String word, String many, boolean answers) {
        this.word = word;
        this.many = many;
        this.answers = answers;
    }

    /** What one is called. */
    @JsonValue
    public String word() {
        return word;
    }

    /** So many of them, in words. */
    public String count(long n) {
        return n + " " + (n == 1 ? word : many);
    }

    /** Whether answers hang on whether one is there. */
    public boolean shapesAnswers() {
        return answers;
    }
}
