package org.washwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleText;
import org.washwright.rule.check.RuleChecker;

/** Rule text that is taken, written in canonical form and read again means the same. */
public final class RoundTripFuzz {

    private RoundTripFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        Optional<List<Rule>> rules = read(new String(data, StandardCharsets.UTF_8), new Diagnostics());
        if (rules.isEmpty()) {
            return;
        }
        String written = rules.get().stream().map(ExactText::of).collect(Collectors.joining("\n"));
        Diagnostics diagnostics = new Diagnostics();
        Optional<List<Rule>> again = read(written, diagnostics);
        Promise.holds(
                again.isPresent(), "what was taken is refused when written: " + diagnostics.all() + "\n" + written);
        Promise.holds(canonical(rules.get()).equals(canonical(again.get())), "it means something else:\n" + written);
        String readable = rules.get().stream().map(RuleText::readable).collect(Collectors.joining("\n"));
        Diagnostics ofReadable = new Diagnostics();
        Promise.holds(read(readable, ofReadable).isPresent(), "readers see what is refused: " + ofReadable.all());
    }

    private static Optional<List<Rule>> read(String text, Diagnostics diagnostics) {
        List<Rule> rules =
                new RuleChecker(Promise.TERMS, diagnostics).check(new DrlReader().read("r.drl", text, diagnostics));
        Promise.complete(diagnostics.all());
        return diagnostics.hasErrors() ? Optional.empty() : Optional.of(rules);
    }

    private static List<String> canonical(List<Rule> rules) {
        return rules.stream().map(RuleText::canonical).toList();
    }
}
