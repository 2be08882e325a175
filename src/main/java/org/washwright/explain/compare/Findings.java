package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.washwright.assessment.Answer;
import org.washwright.explain.compare.Comparison.Reworded;
import org.washwright.explain.compare.Comparison.Said;

/**
 * Findings of two answers, paired by identity.
 *
 * @param gained of the later answer alone, in its order
 * @param lost of the earlier answer alone, in its order
 * @param reworded of both, saying something else
 * @param held how many are the same
 */
record Findings(List<Said> gained, List<Said> lost, List<Reworded> reworded, int held) {

    private static final Set<String> SCORES = Set.of("support", "oppose");

    /** What makes two findings the same one. */
    private record Key(
            String rule, boolean certain, String line, List<String> matched, String verb, List<String> targets) {

        static Key of(Said s) {
            return new Key(s.rule(), s.certain(), s.line(), s.matched(), s.verb(), s.targets());
        }
    }

    static Findings of(Causes causes) {
        Map<Key, List<Said>> old = said(causes.before());
        Map<Key, List<Said>> now = said(causes.after());
        List<Said> gained = new ArrayList<>();
        List<Said> lost = new ArrayList<>();
        List<Reworded> reworded = new ArrayList<>();
        int held = 0;
        Set<Key> keys = new LinkedHashSet<>(old.keySet());
        keys.addAll(now.keySet());
        for (Key key : keys) {
            List<Said> left = new ArrayList<>(old.getOrDefault(key, List.of()));
            List<Said> right = new ArrayList<>(now.getOrDefault(key, List.of()));
            held += pair(left, right, Findings::same).size();
            reworded.addAll(pair(left, right, (a, b) -> a.detail().equals(b.detail())));
            reworded.addAll(pair(left, right, (a, b) -> true));
            lost.addAll(left);
            gained.addAll(right);
        }
        gained.sort(Comparator.comparingInt(Said::firing));
        lost.sort(Comparator.comparingInt(Said::firing));
        reworded.sort(Comparator.comparingInt(r -> r.after().firing()));
        // A rule is cited when it made a difference, not when it holds as before.
        gained.forEach(s -> causes.title(causes.after(), s.rule()));
        lost.forEach(s -> causes.title(causes.before(), s.rule()));
        reworded.forEach(r -> causes.title(causes.after(), r.after().rule()));
        return new Findings(List.copyOf(gained), List.copyOf(lost), List.copyOf(reworded), held);
    }

    private static boolean same(Said a, Said b) {
        return a.detail().equals(b.detail()) && a.text().equals(b.text());
    }

    /** Pairs what fits, in order, and takes it out of both lists. */
    private static List<Reworded> pair(List<Said> left, List<Said> right, BiPredicate<Said, Said> fits) {
        List<Reworded> pairs = new ArrayList<>();
        for (Said a : List.copyOf(left)) {
            for (Said b : right) {
                if (fits.test(a, b)) {
                    pairs.add(new Reworded(a, b));
                    left.remove(a);
                    right.remove(b);
                    break;
                }
            }
        }
        return pairs;
    }

    private static Map<Key, List<Said>> said(Side index) {
        Map<Key, List<Said>> out = new LinkedHashMap<>();
        all(index)
                .forEach(s ->
                        out.computeIfAbsent(Key.of(s), k -> new ArrayList<>()).add(s));
        return out;
    }

    /** Every finding of an answer; a firing that says nothing is one as well, so that none is lost sight of. */
    static List<Said> all(Side index) {
        List<Said> out = new ArrayList<>();
        for (Answer.Firing f : index.answer().firings()) {
            f.findings().forEach(x -> out.add(said(index, f, x)));
            if (f.findings().isEmpty()) {
                out.add(said(index, f, new Answer.Finding("", List.of(), "", "")));
            }
        }
        return out;
    }

    private static Said said(Side index, Answer.Firing f, Answer.Finding x) {
        int score = x.detail().lastIndexOf(", ");
        String detail = SCORES.contains(x.verb()) && score > 0 ? x.detail().substring(0, score) : x.detail();
        return new Said(
                f.rule(),
                index.title(f.rule()),
                f.certain(),
                f.line(),
                f.matched(),
                x.verb(),
                x.targets(),
                detail,
                x.text(),
                f.n());
    }
}
