package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.washwright.document.Place;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleText;

/** Rules of two editions held against each other, by id and, where an id is gone, by what they do. */
final class RuleDifferences {

    private final Edition before;
    private final Edition after;
    private final Map<String, Rule> gone = new TreeMap<>();
    private final Map<String, Rule> fresh = new TreeMap<>();
    private final List<Difference> out = new ArrayList<>();

    private RuleDifferences(Edition before, Edition after) {
        this.before = before;
        this.after = after;
    }

    static List<Difference> of(Edition before, Edition after) {
        return new RuleDifferences(before, after).found();
    }

    private List<Difference> found() {
        before.rules().forEach(r -> gone.put(r.id(), r));
        after.rules()
                .forEach(r -> Optional.ofNullable(gone.remove(r.id()))
                        .ifPresentOrElse(old -> same(old, r), () -> fresh.put(r.id(), r)));
        renamed(RuleParts::nameless);
        renamed(RuleParts::working);
        gone.values().forEach(r -> out.add(alone(r, What.REMOVED)));
        fresh.values().forEach(r -> out.add(alone(r, What.ADDED)));
        out.sort(Comparator.comparing(Difference::id));
        return List.copyOf(out);
    }

    private void same(Rule old, Rule now) {
        if (!RuleText.canonical(old).equals(RuleText.canonical(now))) {
            List<Detail> details = details(old, now);
            boolean answers = details.stream().anyMatch(Detail::answers);
            out.add(difference(old, now, answers ? What.CHANGED : What.REWORDED, answers, true, details));
        } else if (!at(old.place()).equals(at(now.place()))) {
            out.add(difference(old, now, What.MOVED, false, false, List.of()));
        }
    }

    private static String at(Place place) {
        return place.file() + ":" + place.line();
    }

    private void renamed(Function<Rule, String> key) {
        Map<String, List<Rule>> byKey = new TreeMap<>();
        gone.values()
                .forEach(r -> byKey.computeIfAbsent(key.apply(r), k -> new ArrayList<>())
                        .add(r));
        for (Rule now : List.copyOf(fresh.values())) {
            List<Rule> same = byKey.getOrDefault(key.apply(now), List.of());
            if (!same.isEmpty()) {
                Rule old = same.remove(0);
                gone.remove(old.id());
                fresh.remove(now.id());
                List<Detail> details = new ArrayList<>(List.of(new Detail("id", old.id(), now.id(), false)));
                details.addAll(words(old, now));
                out.add(difference(old, now, What.RENAMED, false, true, details));
            }
        }
    }

    private Difference difference(
            Rule old, Rule now, What what, boolean answers, boolean meaning, List<Detail> details) {
        return new Difference(
                Subject.RULE, now.id(), now.title(), what, answers, meaning, old.place(), now.place(), details);
    }

    private Difference alone(Rule rule, What what) {
        boolean added = what == What.ADDED;
        RuleParts parts = new RuleParts(added ? after : before, rule);
        List<Detail> details = new ArrayList<>();
        parts.clauses().forEach(c -> details.add(lone("condition", c.whole(), added)));
        parts.effects().forEach(s -> details.add(lone("says", s.part().words(), added)));
        return new Difference(
                Subject.RULE,
                rule.id(),
                rule.title(),
                what,
                true,
                true,
                added ? Difference.NOWHERE : rule.place(),
                added ? rule.place() : Difference.NOWHERE,
                details);
    }

    private static Detail lone(String what, String words, boolean added) {
        return new Detail(what, added ? "" : words, added ? words : "", true);
    }

    private List<Detail> details(Rule old, Rule now) {
        RuleParts a = new RuleParts(before, old);
        RuleParts b = new RuleParts(after, now);
        List<Detail> details = new ArrayList<>(PartChanges.conditions(a.clauses(), b.clauses()));
        details.addAll(PartChanges.effects(a.effects(), b.effects()));
        details.addAll(words(old, now));
        if (details.isEmpty()) {
            // The same parts in another order: findings come in another order, and say the same.
            details.add(new Detail("order", "conditions and effects", "in another order", false));
        }
        return details;
    }

    /** Words for readers that differ. */
    private List<Detail> words(Rule old, Rule now) {
        List<Detail> details = new ArrayList<>(
                PartChanges.reasons(new RuleParts(before, old).effects(), new RuleParts(after, now).effects()));
        details.addAll(Facets.between(cover(old), cover(now)));
        return details;
    }

    private static Facets cover(Rule rule) {
        return new Facets(rule.title(), rule.place())
                .words("title", rule.title())
                .words("basis", rule.basis().word())
                .words("source", RestFacets.cites(rule.sources()))
                .words("since", rule.since())
                .words("note", rule.note());
    }
}
