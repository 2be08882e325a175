package org.washwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.engine.Fact;
import org.washwright.engine.Finding;
import org.washwright.engine.Firing;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/**
 * Gathers what should be looked at again although it was given: a rule that reads a value and asks for it all the same doubts
 * that it fits the rest.
 */
final class Doubts {

    private Doubts() {}

    /**
     * What is doubted, each reason once, in order of the firings.
     *
     * @param standing processes that stand, the best first: what a rule says of each of many processes counts for the best
     */
    static List<Answer.Sentence> of(List<Firing> firings, List<ProcessLine> standing) {
        Optional<String> first =
                standing.stream().map(l -> "process/" + l.process().id()).findFirst();
        Map<String, List<Integer>> said = new LinkedHashMap<>();
        for (Firing firing : firings) {
            Optional<String> process = process(firing);
            if (firing.certain() && (process.isEmpty() || process.equals(first))) {
                firing.findings().stream()
                        .filter(x -> doubts(firing, x))
                        .forEach(x -> said.computeIfAbsent(x.text(), k -> new ArrayList<>())
                                .add(firing.n()));
            }
        }
        return said.entrySet().stream()
                .map(e -> new Answer.Sentence(e.getKey(), List.copyOf(e.getValue())))
                .toList();
    }

    private static boolean doubts(Firing firing, Finding finding) {
        return finding.effect() instanceof Effect.Ask ask && isKnown(firing, ask);
    }

    private static Optional<String> process(Firing firing) {
        return firing.facts().stream()
                .flatMap(Optional::stream)
                .filter(f -> f.type().name().equals(FactTypes.PROCESS))
                .map(Fact::id)
                .findFirst();
    }

    /** True when the rule matched a fact by the very attribute that it asks for, and that is known. */
    private static boolean isKnown(Firing firing, Effect.Ask ask) {
        Rule rule = firing.rule();
        for (int i = 0; i < rule.patterns().size(); i++) {
            Optional<Fact> fact = firing.facts().get(i);
            if (reads(rule.patterns().get(i), ask)
                    && fact.flatMap(f -> f.type().field(ask.attribute()).map(f::value))
                            .filter(v -> v.isDefinite())
                            .isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static boolean reads(Pattern pattern, Effect.Ask ask) {
        return pattern.sign() == Sign.POSITIVE
                && pattern.type().name().equals(ask.type())
                && pattern.condition()
                        .tests()
                        .anyMatch(t -> t.field().attribute().equals(ask.attribute()));
    }
}
