package org.washwright.analysis;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.Rule;

/** Rules that say the same as others, or the opposite, wherever they fire. */
final class Pairs {

    private final Edition edition;
    private final Implication implication;
    private final BiFunction<Rule, Rule, List<WitnessSearch>> searches;
    private final String excluding;

    /**
     * Pairs of an edition's rules.
     *
     * @param searches for two rules, the searches to try: dated law may meet on a day of its own only
     * @param excluding property of conclusions that names a conclusion they exclude
     */
    Pairs(
            Edition edition,
            Implication implication,
            BiFunction<Rule, Rule, List<WitnessSearch>> searches,
            String excluding) {
        this.edition = edition;
        this.implication = implication;
        this.searches = searches;
        this.excluding = excluding;
    }

    /** All findings about pairs among rules that can fire. */
    List<Finding> findings(List<Rule> alive) {
        List<Supplier<Optional<Finding>>> open = new ArrayList<>();
        Set<String> same = new HashSet<>();
        for (Rule narrow : alive) {
            for (Rule wide : alive) {
                if (narrow.id().equals(wide.id()) || !mayMatter(narrow, wide)) {
                    continue;
                }
                implication.of(narrow, wide).ifPresent(map -> {
                    boolean both = covered(narrow, wide, map, false)
                            && implication
                                    .of(wide, narrow)
                                    .filter(back -> covered(wide, narrow, back, false))
                                    .isPresent();
                    if (both && same.add(narrow.id()) && !same.contains(wide.id())) {
                        open.add(() -> twice(narrow, wide));
                    } else if (!both && covered(narrow, wide, map, true)) {
                        open.add(() -> subsumed(narrow, wide));
                    }
                    open.add(() -> opposed(narrow, wide));
                });
            }
        }
        // What takes long is to find a task that shows it.
        return open.parallelStream()
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .toList();
    }

    /** A cheap look before a dear one. */
    private static boolean mayMatter(Rule narrow, Rule wide) {
        return narrow.effects().stream().anyMatch(n -> wide.effects().stream().anyMatch(w -> Effects.touch(n, w)));
    }

    /** True when all that the narrower rule says is said by the wider one too. */
    private boolean covered(Rule narrow, Rule wide, List<Integer> map, boolean sameWords) {
        return narrow.effects().stream()
                .allMatch(n -> wide.effects().stream()
                        .anyMatch(w -> Effects.covers(implication, narrow, n, wide, w, map, sameWords)));
    }

    private Optional<Finding> twice(Rule a, Rule b) {
        return shown(
                Finding.Kind.DUPLICATE,
                a,
                b,
                a.id() + " and " + b.id() + " fire on the same tasks and say the same; keep one of them.",
                found -> true);
    }

    private Optional<Finding> subsumed(Rule narrow, Rule wide) {
        boolean row = !narrow.place().file().isEmpty()
                && narrow.place().file().equals(wide.place().file())
                && narrow.place().file().startsWith("tables/");
        return shown(
                row ? Finding.Kind.SHADOWED : Finding.Kind.SUBSUMED,
                narrow,
                wide,
                (row ? "The row " : "") + narrow.id() + " adds nothing: " + wide.id()
                        + " fires wherever it does and says at least as much.",
                found -> true);
    }

    private Optional<Finding> opposed(Rule narrow, Rule wide) {
        for (Effect n : narrow.effects()) {
            for (Effect w : wide.effects()) {
                String what = opposition(narrow, n, wide, w);
                if (!what.isEmpty()) {
                    return shown(
                            Finding.Kind.CONTRADICTORY,
                            narrow,
                            wide,
                            "Wherever " + narrow.id() + " fires, " + wide.id() + " fires too and " + what + ".",
                            found -> meet(found, narrow, n, wide, w));
                }
            }
        }
        return Optional.empty();
    }

    /** What the one says against the other, in words; empty when nothing. */
    private String opposition(Rule narrow, Effect n, Rule wide, Effect w) {
        if (n instanceof Effect.Score a && w instanceof Effect.Score b) {
            boolean against = a.support() != b.support()
                    && a.criterion().equals(b.criterion())
                    && a.points() == b.points()
                    && meet(narrow, a.target(), wide, b.target());
            return against ? "says the opposite on " + a.criterion() + " with the same weight" : "";
        }
        if (n instanceof Effect.Limit a && w instanceof Effect.Limit b) {
            boolean against = Conflicts.closed(a, b) && meet(narrow, a.target(), wide, b.target());
            return against ? "leaves no " + a.parameter() + " between them" : "";
        }
        if (n instanceof Effect.Conclude a && w instanceof Effect.Conclude b) {
            boolean against = a.subject().isPresent() == b.subject().isPresent() && excludes(a, b);
            return against ? "concludes " + b.conclusion() + ", which " + a.conclusion() + " excludes" : "";
        }
        return "";
    }

    private boolean excludes(Effect.Conclude a, Effect.Conclude b) {
        return edition.catalogue()
                .term("conclusion", a.conclusion())
                .map(t -> t.property(excluding))
                .filter(v -> v instanceof org.washwright.task.Value.OneOf o
                        && o.terms().contains(b.conclusion()))
                .isPresent();
    }

    private boolean meet(Rule narrow, Effect.Target a, Rule wide, Effect.Target b) {
        return implication.about(narrow, a).stream().anyMatch(implication.about(wide, b)::contains);
    }

    /** True when on a task both effects concern the same process, or the task as a whole. */
    private static boolean meet(WitnessSearch.Found found, Rule narrow, Effect n, Rule wide, Effect w) {
        Set<String> some = targets(found, narrow, n);
        Set<String> others = targets(found, wide, w);
        return some.isEmpty() && others.isEmpty() || some.stream().anyMatch(others::contains);
    }

    private static Set<String> targets(WitnessSearch.Found found, Rule rule, Effect effect) {
        Set<String> out = new HashSet<>();
        found.seen().firings().stream()
                .filter(f -> f.certain() && f.rule().id().equals(rule.id()))
                .flatMap(f -> f.findings().stream())
                .filter(f -> f.effect().equals(effect))
                .forEach(f -> out.addAll(f.targets()));
        return out;
    }

    /** The finding with a task on which both really fire; nothing when there is none, for then nothing was shown. */
    private Optional<Finding> shown(
            Finding.Kind kind, Rule narrow, Rule wide, String words, Predicate<WitnessSearch.Found> wanted) {
        return searches.apply(narrow, wide).stream()
                .map(search -> search.fires(List.of(narrow, wide), wanted)
                        .map(found -> new Finding(
                                kind,
                                List.of(narrow.id(), wide.id()),
                                narrow.place(),
                                words,
                                Optional.of(found.task()),
                                search.asOf(),
                                Optional.empty())))
                .flatMap(Optional::stream)
                .findFirst();
    }
}
