package org.washwright.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.line.ProcessLine;
import org.washwright.line.grading.Firmness;
import org.washwright.line.grading.Grader;

/** Says how the order came about, how firm it is and why the first leads. */
final class Rankings {

    private Rankings() {}

    /** The ranking of processes that stand, the first first; empty when none does. */
    static Optional<Ranking> of(
            List<ProcessLine> ranked, Map<String, Grader.Grade> grades, Weighing weighing, long seed) {
        if (ranked.isEmpty()) {
            return Optional.empty();
        }
        // One that hangs on something never passes one that does not, whatever the weights.
        List<ProcessLine> equals = ranked.stream()
                .filter(l -> l.status() == ranked.get(0).status())
                .toList();
        List<Double> firsts = Firmness.shares(
                equals.stream().map(l -> grades.get(l.process().id())).toList(), seed);
        List<Ranking.Share> shares = new ArrayList<>();
        for (int i = 0; i < equals.size(); i++) {
            if (firsts.get(i) > 0) {
                shares.add(new Ranking.Share(
                        equals.get(i).process().id(),
                        equals.get(i).process().term().name(),
                        firsts.get(i)));
            }
        }
        shares.sort(Comparator.comparingDouble((Ranking.Share s) -> -s.share()).thenComparing(Ranking.Share::process));
        return Optional.of(
                new Ranking(weighing.how(), weighing.consistency(), weighing.notes(), reason(ranked, grades), shares));
    }

    private static String reason(List<ProcessLine> ranked, Map<String, Grader.Grade> grades) {
        if (ranked.size() < 2) {
            return "";
        }
        ProcessLine a = ranked.get(0);
        ProcessLine b = ranked.get(1);
        String text = Firmness.reason(
                capital(a.process().term().name()),
                grades.get(a.process().id()),
                b.process().term().name(),
                grades.get(b.process().id()));
        return a.status() == b.status() ? text : "Only the first hangs on nothing. " + text;
    }

    private static String capital(String name) {
        return name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
    }
}
