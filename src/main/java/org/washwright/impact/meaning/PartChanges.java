package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.impact.meaning.RuleParts.Clause;
import org.washwright.impact.meaning.RuleParts.Part;
import org.washwright.impact.meaning.RuleParts.Said;

/** Which conditions and effects of a rule were lost, gained or changed. */
final class PartChanges {

    private static final String CONDITION = "condition";
    private static final String SAYS = "says";

    private PartChanges() {}

    static List<Detail> conditions(List<Clause> before, List<Clause> after) {
        Map<String, Clause> old = byHead(before);
        Map<String, Clause> now = byHead(after);
        Set<String> heads = new LinkedHashSet<>(old.keySet());
        heads.addAll(now.keySet());
        List<Detail> out = new ArrayList<>();
        for (String head : heads) {
            Clause a = old.get(head);
            Clause b = now.get(head);
            if (a == null) {
                out.add(new Detail(CONDITION, "", b.whole(), true));
            } else if (b == null) {
                out.add(new Detail(CONDITION, a.whole(), "", true));
            } else {
                out.addAll(paired(CONDITION, a.parts(), b.parts()));
            }
        }
        return out;
    }

    static List<Detail> effects(List<Said> before, List<Said> after) {
        List<Said> lost = without(before, after);
        List<Said> gained = without(after, before);
        return paired(
                SAYS,
                lost.stream().map(Said::part).toList(),
                gained.stream().map(Said::part).toList());
    }

    /** Effects that do the same and give another reason. */
    static List<Detail> reasons(List<Said> before, List<Said> after) {
        List<Said> rest = new ArrayList<>(after);
        List<Detail> out = new ArrayList<>();
        for (Said a : before) {
            // One with the same reason is the same effect, wherever another of the same doing stands.
            if (removeFirst(rest, b -> b.reasonKey().equals(a.reasonKey())).isPresent()) {
                continue;
            }
            removeFirst(rest, b -> b.part().key().equals(a.part().key()) && !isIn(before, b))
                    .ifPresent(b -> out.add(new Detail("reason", a.reason(), b.reason(), false)));
        }
        return out;
    }

    private static boolean isIn(List<Said> list, Said said) {
        return list.stream().anyMatch(s -> s.reasonKey().equals(said.reasonKey()));
    }

    private static java.util.Optional<Said> removeFirst(List<Said> list, java.util.function.Predicate<Said> wanted) {
        for (int i = 0; i < list.size(); i++) {
            if (wanted.test(list.get(i))) {
                return java.util.Optional.of(list.remove(i));
            }
        }
        return java.util.Optional.empty();
    }

    /** Effects of one rule that the other one lacks, each as often as it stands there more often. */
    private static List<Said> without(List<Said> some, List<Said> others) {
        List<Said> rest = new ArrayList<>(others);
        return some.stream()
                .filter(s -> removeFirst(
                                rest, o -> o.part().key().equals(s.part().key()))
                        .isEmpty())
                .toList();
    }

    /** Lost and gained parts; two about the same are one that changed. */
    private static List<Detail> paired(String what, List<Part> before, List<Part> after) {
        List<Part> lost = new ArrayList<>(before);
        List<Part> gained = new ArrayList<>(after);
        lost.removeIf(a -> {
            for (int i = 0; i < gained.size(); i++) {
                if (gained.get(i).key().equals(a.key())) {
                    gained.remove(i);
                    return true;
                }
            }
            return false;
        });
        List<Detail> out = new ArrayList<>();
        for (Part a : lost) {
            Part b = null;
            for (Part g : gained) {
                if (b == null && g.about().equals(a.about())) {
                    b = g;
                }
            }
            if (b == null) {
                out.add(new Detail(what, a.words(), "", true));
            } else {
                gained.remove(b);
                // Two numbers may differ by less than words show.
                boolean alike = a.words().equals(b.words());
                out.add(new Detail(what, alike ? a.key() : a.words(), alike ? b.key() : b.words(), true));
            }
        }
        gained.forEach(b -> out.add(new Detail(what, "", b.words(), true)));
        return out;
    }

    private static Map<String, Clause> byHead(List<Clause> clauses) {
        Map<String, Clause> out = new LinkedHashMap<>();
        clauses.forEach(c -> out.put(c.head(), c));
        return out;
    }
}
