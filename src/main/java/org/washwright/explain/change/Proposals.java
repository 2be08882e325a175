package org.washwright.explain.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.explain.vary.Difference;
import org.washwright.explain.vary.Effort;
import org.washwright.explain.vary.Move;
import org.washwright.explain.vary.Moves;
import org.washwright.explain.vary.Place;
import org.washwright.explain.vary.PlaceWords;
import org.washwright.explain.vary.Seen;
import org.washwright.explain.vary.Trials;
import org.washwright.task.CleaningTask;

/** Words proposals and looks at what else they change. */
final class Proposals {
    private final Catalogue catalogue;
    private final CleaningTask task;
    private final Seen now;
    private final Trials trials;
    private final Aim aim;
    private final PlaceWords words;

    Proposals(Catalogue catalogue, CleaningTask task, Seen now, Trials trials, Aim aim, PlaceWords words) {
        this.catalogue = catalogue;
        this.task = task;
        this.now = now;
        this.trials = trials;
        this.aim = aim;
        this.words = words;
    }

    List<Changes.Proposal> of(List<SetSearch.Found> found) {
        List<Changes.Proposal> out = new ArrayList<>();
        found.stream()
                .sorted(Comparator.comparing((SetSearch.Found f) -> effort(f.moves()))
                        .thenComparing(f -> f.moves().size())
                        .thenComparing(f -> f.moves().stream()
                                .mapToInt(m -> m.effort().ordinal())
                                .sum())
                        .thenComparing(f -> f.moves().stream()
                                .map(m -> m.place().pointer())
                                .toList()
                                .toString()))
                .forEach(f -> out.add(proposal(f)));
        return out;
    }

    private static Effort effort(List<Move> moves) {
        return moves.stream().map(Move::effort).max(Comparator.naturalOrder()).orElseThrow();
    }

    private Changes.Proposal proposal(SetSearch.Found found) {
        Optional<Seen> ordered = aim.needsOrder()
                ? Optional.of(found.seen())
                : trials.left() > 0 ? trials.see(Moves.apply(task, found.moves()), true) : Optional.empty();
        Effort effort = effort(found.moves());
        return new Changes.Proposal(
                effort.name(),
                effort.words(),
                found.moves().stream().map(m -> change(m, found.others())).toList(),
                Difference.of(now, ordered.orElse(found.seen()), ordered.isPresent(), catalogue));
    }

    private Changes.Change change(Move move, List<Move> others) {
        return new Changes.Change(
                way(move),
                move.place().pointer(),
                words.name(move.place()),
                words.now(move.place()),
                words.then(move),
                words.typed(move),
                words.sentence(move),
                words.steps(move),
                move.effort().name(),
                others.stream()
                        .map(o -> new Changes.Other(words.then(o), words.typed(o)))
                        .toList());
    }

    private static String way(Move move) {
        if (move.place() instanceof Place.Said) {
            return "set";
        }
        return move.place() instanceof Place.More ? "add" : move.place() instanceof Place.Gone ? "remove" : "close";
    }
}
