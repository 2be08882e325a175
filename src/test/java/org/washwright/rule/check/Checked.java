package org.washwright.rule.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;

/** Rules checked against the words of the small edition, by the checker alone. */
final class Checked {

    static final String SAY = "caution(\"hazard-a\", \"So.\")";
    private static final Edition EDITION = SmallEdition.with("");
    private static final Terms TERMS =
            new Terms(EDITION.catalogue(), EDITION.types(), EDITION.grading(), EDITION.sources());

    private Checked() {}

    /** The one rule with these conditions and consequences, which has to be sound. */
    static Rule rule(String when, String then) {
        Diagnostics diagnostics = new Diagnostics();
        List<Rule> rules = checked(text("R", when, then), diagnostics);
        assertFalse(diagnostics.hasErrors(), () -> diagnostics.all().toString());
        return rules.get(0);
    }

    /** Nothing may be left of the rule, and somewhere these words have to be said. */
    static void assertRefused(String when, String then, String words) {
        Diagnostics diagnostics = new Diagnostics();
        assertEquals(List.of(), checked(text("R", when, then), diagnostics));
        List<String> found =
                diagnostics.all().stream().map(Diagnostic::toString).toList();
        assertTrue(found.stream().anyMatch(f -> f.contains(words)), found::toString);
    }

    static String text(String id, String when, String then) {
        return "rule \"" + id + "\" @id(\"" + id + "\") @basis(\"common practice\") when " + when + " then " + then
                + "; end\n";
    }

    /** The rules that pass. */
    static List<Rule> checked(String drl) {
        return checked(drl, new Diagnostics());
    }

    static List<Rule> checked(String drl, Diagnostics diagnostics) {
        return new RuleChecker(TERMS, diagnostics).check(new DrlReader().read("r.drl", drl, diagnostics));
    }
}
