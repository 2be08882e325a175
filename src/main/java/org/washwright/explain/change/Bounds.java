package org.washwright.explain.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.explain.vary.Move;
import org.washwright.explain.vary.Moves;
import org.washwright.explain.vary.Place;
import org.washwright.explain.vary.Reads;
import org.washwright.explain.vary.Seen;
import org.washwright.explain.vary.Trials;
import org.washwright.task.CleaningTask;

/**
 * What no change can reach. Letting go of what is said at some places shows in one evaluation what every change there can reach
 * at most. From a set of places that can't reach the goal follows a <em>cut</em>: places of which any set that reaches it
 * holds at least one.
 */
final class Bounds {

    private final CleaningTask task;
    private final Aim aim;
    private final List<Place> all;
    private final Reads reads;
    private final Trials trials;
    private final Set<Set<Place>> cuts = new LinkedHashSet<>();
    private final List<List<Place>> conceivable = new ArrayList<>();
    private final Map<List<Move>, List<Set<Place>>> afterMoves = new HashMap<>();

    Bounds(CleaningTask task, Aim aim, List<Place> all, Reads reads, Trials trials) {
        this.task = task;
        this.aim = aim;
        this.all = all;
        this.reads = reads;
        this.trials = trials;
    }

    /** True when these changes, together with whatever happens at the other places, may reach the goal. */
    boolean mayReach(Collection<Move> moves, Collection<Place> others) {
        return look(moves, others).filter(seen -> isConceivable(seen, others)).isPresent();
    }

    private Optional<Seen> look(Collection<Move> moves, Collection<Place> others) {
        return trials.see(Moves.apply(task, moves, others), aim.needsOrder());
    }

    private boolean isConceivable(Seen seen, Collection<Place> others) {
        return aim.isConceivable(seen, rule -> others.stream().anyMatch(p -> reads.reads(rule, p)));
    }

    /** True when a set holds a place of every cut; else no values at its places reach the goal. */
    boolean meetsAll(Collection<Place> places) {
        return cuts.stream().allMatch(cut -> places.stream().anyMatch(cut::contains));
    }

    /** How many cuts a place meets. */
    int met(Place place) {
        return (int) cuts.stream().filter(cut -> cut.contains(place)).count();
    }

    /**
     * False when these changes surely need another one besides that is none of the others: what still stands in the way after
     * them reads none of those places.
     */
    boolean mayComplete(List<Move> moves, Collection<Place> others) {
        List<Set<Place>> needed = afterMoves.get(moves);
        if (needed == null) {
            needed = cutsAfter(moves);
            afterMoves.put(List.copyOf(moves), needed);
        }
        return needed.stream().allMatch(cut -> others.stream().anyMatch(cut::contains));
    }

    private List<Set<Place>> cutsAfter(List<Move> moves) {
        Optional<Seen> seen = look(moves, List.of());
        Set<Place> moved = new LinkedHashSet<>();
        moves.forEach(m -> moved.add(m.place()));
        List<Set<Place>> out = new ArrayList<>();
        for (String rule : seen.map(aim::blockers).orElse(List.of())) {
            Set<Place> cut = readBy(rule, moved);
            List<Place> rest = all.stream()
                    .filter(p -> !cut.contains(p) && !moved.contains(p))
                    .toList();
            if (!out.contains(cut) && !mayReach(moves, rest)) {
                out.add(cut);
            }
        }
        return out;
    }

    private Set<Place> readBy(String rule, Collection<Place> without) {
        Set<Place> out = new LinkedHashSet<>();
        all.stream().filter(p -> reads.reads(rule, p) && !without.contains(p)).forEach(out::add);
        return out;
    }

    /** Looks for cuts in what keeps the goal from being reached as the task stands. */
    void start(Seen now) {
        for (String rule : aim.blockers(now)) {
            cutOf(rule, Set.of());
        }
    }

    /** True when changes at these places may reach the goal; else a new cut says of which other places one is needed. */
    boolean mayReach(Collection<Place> places) {
        if (conceivable.stream().anyMatch(places::containsAll)) {
            return true;
        }
        Optional<Seen> seen = look(List.of(), places);
        if (seen.filter(s -> isConceivable(s, places)).isPresent()) {
            conceivable.add(List.copyOf(places));
            return true;
        }
        boolean found = seen.map(aim::blockers).orElse(List.of()).stream().anyMatch(rule -> cutOf(rule, places));
        if (!found) {
            grow(places);
        }
        return false;
    }

    /** What a rule reads is a cut when letting go of all the rest does not reach the goal. */
    private boolean cutOf(String rule, Collection<Place> without) {
        Set<Place> cut = readBy(rule, without);
        if (cut.isEmpty() || cut.size() == all.size() || cuts.contains(cut)) {
            return false;
        }
        List<Place> rest = all.stream().filter(p -> !cut.contains(p)).toList();
        return !mayReach(List.of(), rest) && cuts.add(cut);
    }

    /** Lets go of as much as does not reach the goal; what is left over is a cut. */
    private void grow(Collection<Place> places) {
        Set<Place> released = new LinkedHashSet<>(places);
        Set<Place> cut = new LinkedHashSet<>();
        grow(all.stream().filter(p -> !places.contains(p)).toList(), released, cut);
        cuts.add(cut);
    }

    private void grow(List<Place> more, Set<Place> released, Set<Place> cut) {
        if (more.isEmpty()) {
            return;
        }
        List<Place> both = new ArrayList<>(released);
        both.addAll(more);
        if (!mayReach(List.of(), both)) {
            released.addAll(more);
        } else if (more.size() == 1) {
            cut.addAll(more);
        } else {
            grow(more.subList(0, more.size() / 2), released, cut);
            grow(more.subList(more.size() / 2, more.size()), released, cut);
        }
    }
}
