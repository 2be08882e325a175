package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;

/** Words of the rule language as a reader says them. */
@TemplateExtension
public final class Words {

    private Words() {}

    /** What a finding does, as a heading of its sentence. */
    public static String verbInWords(String verb) {
        return switch (verb) {
            case "conclude" -> "so";
            case "ruleOut" -> "rules out";
            case "support" -> "for";
            case "oppose" -> "against";
            case "require" -> "needs";
            case "limit" -> "limits";
            case "caution" -> "take care";
            case "ask" -> "find out";
            case "verify" -> "prove";
            default -> verb;
        };
    }
}
