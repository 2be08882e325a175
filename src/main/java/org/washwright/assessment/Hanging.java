package org.washwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.engine.Finding;
import org.washwright.engine.Firing;
import org.washwright.rule.Effect;

/** What hangs on one thing that is not known: the effects of the firings it holds, put into words. */
final class Hanging {

    private static final int MOST_NAMES = 2;
    private static final int MOST_PHRASES = 2;
    private static final int FEW = 3;

    private final Catalogue catalogue;
    private final Set<String> standing;
    private final Map<String, TreeSet<String>> decides = new LinkedHashMap<>();
    private final TreeSet<String> moved = new TreeSet<>();
    private boolean onlyForOthers;

    /**
     * Nothing yet.
     *
     * @param standing ids of the processes that are not ruled out
     */
    Hanging(Catalogue catalogue, Set<String> standing) {
        this.catalogue = catalogue;
        this.standing = standing;
    }

    /** Adds what an undecided firing would say. */
    void add(Firing firing) {
        for (Finding finding : firing.findings()) {
            List<String> targets =
                    finding.targets().stream().filter(standing::contains).toList();
            boolean general = finding.targets().isEmpty();
            if (!general && targets.isEmpty()) {
                onlyForOthers = true;
            } else if (finding.effect() instanceof Effect.Score) {
                targets.forEach(t -> moved.add(catalogue.name("process", t)));
            } else {
                phrase(finding.effect()).ifPresent(phrase -> {
                    TreeSet<String> names = decides.computeIfAbsent(phrase, k -> new TreeSet<>());
                    targets.forEach(t -> names.add(catalogue.name("process", t)));
                });
            }
        }
    }

    /** A phrase with {@code @} where the names of processes stand; digits in front give its rank. */
    private Optional<String> phrase(Effect effect) {
        if (effect instanceof Effect.RuleOut r) {
            return Optional.of("0whether @ may stand " + r.role().phrase());
        }
        if (effect instanceof Effect.Require r) {
            return Optional.of("1whether the line of @ needs " + catalogue.name("stage", r.stage()));
        }
        if (effect instanceof Effect.Limit l) {
            return Optional.of("2the limit of " + catalogue.name("parameter", l.parameter()) + " for @");
        }
        if (effect instanceof Effect.Caution c) {
            return Optional.of("3whether to warn of " + catalogue.name("hazard", c.hazard()));
        }
        return effect instanceof Effect.Verify v
                ? Optional.of("4whether to prove cleanliness by " + catalogue.name("test-method", v.method()))
                : Optional.empty();
    }

    /** What it comes to; empty when no firing says anything. */
    Optional<Wanted.Note> note() {
        if (!decides.isEmpty()) {
            List<String> said = new ArrayList<>();
            new TreeMap<>(decides)
                    .forEach((phrase, names) -> said.add(phrase.substring(1).replace("@", names(names))));
            return Optional.of(new Wanted.Note(
                    Wanted.Kind.DECIDES,
                    "Decides " + phrases(said, 1) + ".",
                    "Decides " + phrases(said, MOST_PHRASES) + "."));
        }
        if (!moved.isEmpty()) {
            return Optional.of(
                    Wanted.Note.of(Wanted.Kind.MOVES, "Moves points of " + names(moved) + "; decides on no process."));
        }
        return onlyForOthers
                ? Optional.of(Wanted.Note.of(
                        Wanted.Kind.SETTLED, "Not needed: it concerns only processes that are ruled out already."))
                : Optional.empty();
    }

    private static String phrases(List<String> said, int most) {
        int more = said.size() - most;
        String shown = String.join("; ", said.stream().limit(most).toList());
        return more <= 0 ? shown : shown + "; and " + (more == 1 ? "one thing" : more + " things") + " more";
    }

    private String names(TreeSet<String> names) {
        if (names.size() >= FEW && names.size() == standing.size()) {
            return "every process left";
        }
        List<String> all = List.copyOf(names);
        return all.size() <= MOST_NAMES
                ? String.join(" and ", all)
                : String.join(", ", all.subList(0, MOST_NAMES)) + " and " + (all.size() - MOST_NAMES) + " more";
    }
}
