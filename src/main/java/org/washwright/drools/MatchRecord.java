package org.washwright.drools;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.washwright.engine.Conclusions;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.Match;
import org.washwright.rule.FactTypes;

/** Records every match that fires, and hands what it concludes back to the running session. */
final class MatchRecord implements MatchSink {

    /** In the order of answers; of the same rule and facts the certain match first. */
    private static final Comparator<Fired> ORDER = Comparator.comparingInt((Fired f) -> f.rule.rank())
            .thenComparing(Fired::facts, MatchRecord::compare)
            .thenComparing(Fired::sure, Comparator.reverseOrder());

    /** What fired; made into a match when all is over, so that noting it costs next to nothing. */
    private record Fired(RankedRule rule, MatchFact[] facts, boolean sure) {

        boolean repeats(Fired before) {
            return before.rule.rank() == rule.rank() && compare(before.facts, facts) == 0;
        }

        Match match() {
            List<Optional<Fact>> matched = new ArrayList<>(facts.length);
            for (MatchFact f : facts) {
                matched.add(f == null ? Optional.empty() : f.asMatched());
            }
            return new Match(rule.rule(), matched, sure);
        }
    }

    private final Map<String, RankedRule> rules;
    private final FactTypes types;
    private final KieSession session;
    private final List<Fired> fired = new ArrayList<>();
    private final Map<String, Fact> conclusions = new TreeMap<>();
    private final Map<String, FactHandle> handles = new HashMap<>();

    MatchRecord(Map<String, RankedRule> rules, FactTypes types, KieSession session) {
        this.rules = rules;
        this.types = types;
        this.session = session;
    }

    @Override
    public void certain(String rule, MatchFact... facts) {
        take(new Fired(rules.get(rule), facts, true));
    }

    @Override
    public void possible(String rule, MatchFact... facts) {
        take(new Fired(rules.get(rule), facts, false));
    }

    private void take(Fired match) {
        fired.add(match);
        if (match.rule.concludes()) {
            conclude(match.match());
        }
    }

    private void conclude(Match match) {
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
        fired.sort(ORDER);
        List<Match> matches = new ArrayList<>(fired.size());
        Fired last = null;
        for (Fired f : fired) {
            // The companion of a rule fires on its certain matches too.
            if (last == null || !f.repeats(last)) {
                matches.add(f.match());
                last = f;
            }
        }
        return new Inference.Inferred(matches, List.copyOf(conclusions.values()));
    }

    private static int compare(MatchFact[] one, MatchFact[] other) {
        for (int i = 0; i < one.length; i++) {
            // Of one rule the same places are empty: those of "not" and "exists".
            int order = one[i] == null
                    ? 0
                    : one[i].fact().id().compareTo(other[i].fact().id());
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
