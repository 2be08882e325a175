package org.washwright.drools;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.washwright.engine.Conclusions;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.Match;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;

/** Takes every match that fires, and hands what it concludes back to the running session. */
public final class MatchSink {

    /** Most firings of one run, far above what the caps on tasks and rules allow; a guard, not a limit to work with. */
    static final int MAX_FIRINGS = 2_000_000;

    private final Map<String, Rule> rules;
    private final Map<String, Integer> levels;
    private final FactTypes types;
    private final KieSession session;
    private final Set<String> certain = new HashSet<>();
    private final List<Match> matches = new ArrayList<>();
    private final Map<String, Fact> conclusions = new TreeMap<>();
    private final Map<String, FactHandle> handles = new HashMap<>();

    MatchSink(Map<String, Rule> rules, Map<String, Integer> levels, FactTypes types, KieSession session) {
        this.rules = rules;
        this.levels = levels;
        this.types = types;
        this.session = session;
    }

    /** Called by compiled rules: a certain match. */
    public void certain(String rule, MatchFact... facts) {
        Match match = match(rule, true, facts);
        certain.add(match.rule().id() + " " + match.key());
        take(match);
    }

    /** Called by compiled rules: a possible match, certain or not. */
    public void possible(String rule, MatchFact... facts) {
        Match match = match(rule, false, facts);
        if (!certain.contains(match.rule().id() + " " + match.key())) {
            take(match);
        }
    }

    private Match match(String rule, boolean isCertain, MatchFact... facts) {
        List<Optional<Fact>> matched = new ArrayList<>(facts.length);
        for (MatchFact f : facts) {
            matched.add(Optional.ofNullable(f).map(MatchFact::fact));
        }
        return new Match(rules.get(rule), matched, isCertain);
    }

    private void take(Match match) {
        matches.add(match);
        for (Fact conclusion : Conclusions.of(match, types)) {
            Fact known = conclusions.get(conclusion.id());
            if (known == null || (!known.sure() && conclusion.sure())) {
                conclusions.put(conclusion.id(), conclusion);
                FactHandle old = handles.put(conclusion.id(), session.insert(new MatchFact(conclusion)));
                if (old != null) {
                    session.delete(old);
                }
            }
        }
    }

    Inference.Inferred inferred() {
        matches.sort(Comparator.comparingInt(
                        (Match m) -> levels.getOrDefault(m.rule().id(), 0))
                .thenComparing(Match.ORDER));
        return new Inference.Inferred(List.copyOf(matches), List.copyOf(conclusions.values()));
    }
}
