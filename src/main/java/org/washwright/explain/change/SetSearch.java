package org.washwright.explain.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.explain.vary.Move;
import org.washwright.explain.vary.Moves;
import org.washwright.explain.vary.Place;
import org.washwright.explain.vary.Places;
import org.washwright.explain.vary.Seen;
import org.washwright.explain.vary.Trials;
import org.washwright.task.CleaningTask;

/**
 * Goes through sets of places from the smallest to the largest. A set that holds a smaller one that reaches the goal is passed
 * over; so is a set that meets not every cut. Of the others it is first asked whether any values can reach the goal, and then
 * which.
 */
final class SetSearch {

    private final CleaningTask task;
    private final Aim aim;
    private final List<Places.Choice> choices;
    private final Bounds bounds;
    private final Trials trials;
    private final Seen now;
    private final int perSet;
    private final List<Found> found = new ArrayList<>();
    private final List<SetsOfSize> sizes = new ArrayList<>();

    /**
     * A search.
     *
     * @param now what came of the task as it stands
     * @param perSet most evaluations for one set, so that none uses up what others need
     */
    SetSearch(
            CleaningTask task,
            Aim aim,
            List<Places.Choice> choices,
            Bounds bounds,
            Trials trials,
            Seen now,
            int perSet) {
        this.task = task;
        this.aim = aim;
        this.choices = choices;
        this.bounds = bounds;
        this.trials = trials;
        this.now = now;
        this.perSet = perSet;
    }

    /**
     * A smallest set of changes that reaches the goal.
     *
     * @param moves the changes, by effort
     * @param seen what came of the task with them
     * @param others of a single change, the other values at its place that reach the goal too
     */
    record Found(List<Move> moves, Seen seen, List<Move> others) {
        boolean isWithin(Collection<Place> places) {
            return moves.stream().map(Move::place).allMatch(places::contains);
        }
    }

    List<Found> found() {
        return found;
    }

    List<SetsOfSize> sizes() {
        return sizes;
    }

    /** Searches sets up to a size. */
    void run(int most) {
        for (int size = 1; size <= Math.min(most, choices.size()); size++) {
            new OneSize(size).run();
        }
    }

    /** The search through the sets of one size. */
    private final class OneSize {
        private final int size;
        private long sets;
        private long passedOver;
        private long tried;
        private int reached;
        private long left;
        private double combinations;
        private final Set<String> among = new TreeSet<>();

        OneSize(int size) {
            this.size = size;
        }

        void run() {
            choose(0, new ArrayList<>());
            sizes.add(new SetsOfSize(size, sets, passedOver, tried, reached, left, combinations, among));
        }

        private void choose(int from, List<Places.Choice> chosen) {
            if (chosen.size() == size) {
                sets++;
                look(List.copyOf(chosen));
                return;
            }
            for (int i = from; i < choices.size(); i++) {
                chosen.add(choices.get(i));
                choose(i + 1, chosen);
                chosen.remove(chosen.size() - 1);
            }
        }

        private void look(List<Places.Choice> set) {
            List<Place> places = set.stream().map(Places.Choice::place).toList();
            if (!bounds.meetsAll(places) || found.stream().anyMatch(f -> f.isWithin(places))) {
                passedOver++;
                return;
            }
            try {
                trials.allow(perSet);
                if (!bounds.mayReach(places)) {
                    passedOver++;
                    return;
                }
                Optional<Found> here = size == 1 ? single(set.get(0)) : several(set);
                tried++;
                if (here.isPresent()) {
                    found.add(here.get());
                    reached++;
                }
            } catch (Trials.Spent spent) {
                left++;
                combinations += set.stream().mapToDouble(c -> c.moves().size()).reduce(1, (a, b) -> a * b);
                places.forEach(p -> among.add(p.pointer()));
            }
        }
    }

    /** All values at one place that reach the goal; the first of them is the one that changes least else. */
    private Optional<Found> single(Places.Choice choice) {
        List<Move> reaching = new ArrayList<>();
        List<Seen> seen = new ArrayList<>();
        for (Move m : choice.moves()) {
            reached(List.of(m)).ifPresent(s -> {
                reaching.add(m);
                seen.add(s);
            });
        }
        if (reaching.isEmpty()) {
            return Optional.empty();
        }
        Comparator<Integer> least = Comparator.comparing(
                        (Integer i) -> reaching.get(i).effort())
                .thenComparingLong(i -> moved(now, seen.get(i)))
                .thenComparing(i -> i);
        int best = java.util.stream.IntStream.range(0, reaching.size())
                .boxed()
                .min(least)
                .orElseThrow();
        Seen after = seen.get(best);
        Move move = reaching.remove(best);
        return Optional.of(new Found(List.of(move), after, List.copyOf(reaching)));
    }

    private static long moved(Seen before, Seen after) {
        return before.statuses().entrySet().stream()
                .filter(e -> after.statuses().get(e.getKey()) != e.getValue())
                .count();
    }

    /** Values at several places that reach the goal together; first at the place that most hangs on. */
    private Optional<Found> several(List<Places.Choice> set) {
        List<Places.Choice> order = set.stream()
                .sorted(Comparator.comparingInt((Places.Choice c) -> -bounds.met(c.place()))
                        .thenComparingInt(c -> c.moves().size()))
                .toList();
        return descend(order, 0, new ArrayList<>())
                .map(this::least)
                .filter(f -> found.stream()
                        .noneMatch(known -> known.isWithin(
                                f.moves().stream().map(Move::place).toList())));
    }

    private Optional<Reached> descend(List<Places.Choice> order, int at, List<Move> moves) {
        boolean last = at == order.size() - 1;
        List<Place> rest = order.subList(at + 1, order.size()).stream()
                .map(Places.Choice::place)
                .toList();
        for (Move m : order.get(at).moves()) {
            moves.add(m);
            Optional<Reached> here = Optional.empty();
            if (last) {
                here = reached(moves).map(s -> new Reached(List.copyOf(moves), s));
            } else if (bounds.mayComplete(moves, rest) && bounds.mayReach(moves, rest)) {
                here = descend(order, at + 1, moves);
            }
            moves.remove(moves.size() - 1);
            if (here.isPresent()) {
                return here;
            }
        }
        return Optional.empty();
    }

    /** Changes that reach the goal, and what came of them. */
    private record Reached(List<Move> moves, Seen seen) {}

    /** The same changes without those that are not needed, which shows that none of them can be left out. */
    private Found least(Reached all) {
        Reached needed = all;
        for (Move m : all.moves()) {
            List<Move> fewer = needed.moves().stream().filter(x -> !x.equals(m)).toList();
            Optional<Seen> seen = fewer.isEmpty() ? Optional.empty() : reached(fewer);
            needed = seen.map(s -> new Reached(fewer, s)).orElse(needed);
        }
        List<Move> moves = needed.moves().stream()
                .sorted(Comparator.comparing(Move::effort)
                        .thenComparing(m -> m.place().pointer()))
                .toList();
        return new Found(moves, needed.seen(), List.of());
    }

    private Optional<Seen> reached(List<Move> moves) {
        CleaningTask changed = Moves.apply(task, moves);
        return Moves.leavesWork(task, changed)
                ? trials.see(changed, aim.needsOrder()).filter(aim::isReached)
                : Optional.empty();
    }
}
