package org.washwright.rulebook;

/** The steps of a release in their order. */
public enum ReleaseStep {
    /** It may be released: state, authors and files. */
    CHECKED("who may release it is checked"),
    /** Its reference cases were run on it. */
    CASES_RUN("its reference cases are run"),
    /** All that is looked at before a release was looked at. */
    LOOKED_AT("all that stands at the gate is looked at"),
    /** Its rules are ready to answer. */
    COMPILED("its rules are made ready"),
    /** It has its number and never changes again. */
    NUMBERED("it takes its number"),
    /** It answers new tasks. */
    LIVE("it answers new tasks");

    private final String words;

    ReleaseStep(String words) {
        this.words = words;
    }

    /** As people say it. */
    public String words() {
        return words;
    }
}
