package org.washwright.explain.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.catalogue.Catalogue;
import org.washwright.explain.vary.Difference;
import org.washwright.explain.vary.Move;
import org.washwright.explain.vary.Moves;
import org.washwright.explain.vary.Place;
import org.washwright.explain.vary.PlaceWords;
import org.washwright.explain.vary.Places;
import org.washwright.explain.vary.Seen;
import org.washwright.explain.vary.Trials;
import org.washwright.line.ProcessLine.Status;
import org.washwright.task.CleaningTask;

/** Tries what unknowns may turn out to be, one unknown at a time. Safe for use by several threads at once. */
public final class Asking {

    /** Most evaluations of one search. */
    public static final int MOST_EVALUATIONS = 3000;

    private static final String ASSUMPTION =
            "The outcomes of each are taken as equally likely, and each by itself; nobody has counted them.";

    private final Assessor assessor;
    private final Places places;

    /** Asks by this assessor; one that runs rules by an index is by far the quickest. */
    public Asking(Assessor assessor) {
        this.assessor = assessor;
        this.places = new Places(assessor.edition());
    }

    /** What is not known of a task, with all that is tried for it, in order of pointers. */
    public List<Places.Choice> unknowns(CleaningTask task) {
        List<Places.Choice> out = new ArrayList<>();
        for (Places.Choice c : places.open(task)) {
            List<Move> moves = new ArrayList<>(c.moves());
            if (c.place() instanceof Place.Closed closed) {
                moves.addAll(places.further(task, closed.list()));
            }
            out.add(new Places.Choice(c.place(), moves));
        }
        out.sort(java.util.Comparator.comparing(c -> c.place().pointer()));
        return out;
    }

    /**
     * Says what to find out.
     *
     * @param evaluations most evaluations, from 1
     * @param progress told the number of evaluations after each
     * @throws org.washwright.assessment.RefusedTask when values of the task contradict each other
     */
    public FindOut ask(CleaningTask task, Wishes wishes, int evaluations, IntConsumer progress) {
        Trials trials = new Trials(assessor, wishes, evaluations, progress);
        Seen now = trials.seeOrRefuse(task);
        Catalogue catalogue = assessor.edition().catalogue();
        Questioning words = new Questioning(new PlaceWords(task, assessor.edition()), assessor.outcome(task, wishes));
        List<Tried> tried = new ArrayList<>();
        List<String> notTried = new ArrayList<>();
        for (Places.Choice c : unknowns(task)) {
            Tried t = tried(task, c, now, trials);
            if (t.turns().isEmpty() && t.contradictory().isEmpty()) {
                notTried.add(words.question(c.place()));
            } else {
                tried.add(t);
            }
        }
        Map<String, Double> undecided = new TreeMap<>();
        now.statuses().forEach((process, status) -> {
            if (status == Status.CONDITIONAL) {
                undecided.put(process, 1.0);
            }
        });
        List<FindOut.Unknown> matters = new ArrayList<>();
        List<FindOut.Unknown> same = new ArrayList<>();
        Order order = new Order(undecided);
        for (Order.Placed placed : order.of(tried)) {
            FindOut.Unknown unknown = words.unknown(placed.tried(), placed.decides(), now, catalogue);
            (unknown.isSame() ? same : matters).add(unknown);
        }
        return new FindOut(
                Questioning.verdict(matters, same, notTried, undecided.size()),
                ASSUMPTION,
                now.first(),
                now.first().isEmpty() ? "" : catalogue.name("process", now.first()),
                undecided.size(),
                matters,
                same,
                notTried,
                trials.done(),
                evaluations);
    }

    /**
     * An unknown with what came of its outcomes.
     *
     * @param eased how many conditions fewer its outcomes leave on average
     */
    record Tried(Places.Choice choice, List<Turned> turns, List<Move> contradictory, List<Move> left, double eased) {

        /** Share of the outcomes that meet something. */
        double share(java.util.function.Predicate<Turned> meets) {
            return turns.isEmpty() ? 0 : (double) turns.stream().filter(meets).count() / turns.size();
        }
    }

    /** One outcome with what came of it. */
    record Turned(Move move, Seen seen, boolean firstChanges, List<String> decided, boolean statusChanges) {}

    private static Tried tried(CleaningTask task, Places.Choice choice, Seen now, Trials trials) {
        List<Turned> turns = new ArrayList<>();
        List<Move> contradictory = new ArrayList<>();
        List<Move> left = new ArrayList<>();
        double eased = 0;
        for (Move m : choice.moves()) {
            if (trials.left() == 0) {
                left.add(m);
                continue;
            }
            Optional<Seen> seen = trials.see(after(task, m), true);
            if (seen.isEmpty()) {
                contradictory.add(m);
            } else {
                turns.add(turned(m, seen.get(), now));
                eased += conditions(now) - conditions(seen.get());
            }
        }
        return new Tried(choice, turns, contradictory, left, turns.isEmpty() ? 0 : eased / turns.size());
    }

    /** The task once this is known; of a list that may hold more, one more entry is then all there is besides. */
    static CleaningTask after(CleaningTask task, Move move) {
        List<Move> moves = move.place() instanceof Place.More more
                ? List.of(move, new Move(new Place.Closed(more.list()), Optional.empty(), move.effort()))
                : List.of(move);
        return Moves.apply(task, moves);
    }

    private static int conditions(Seen seen) {
        return seen.open().values().stream().mapToInt(n -> n).sum();
    }

    private static Turned turned(Move move, Seen seen, Seen now) {
        List<String> decided = new ArrayList<>();
        now.statuses().forEach((process, was) -> {
            if (was == Status.CONDITIONAL && seen.statuses().get(process) != Status.CONDITIONAL) {
                decided.add(process);
            }
        });
        boolean statusChanges = !seen.statuses().equals(now.statuses());
        return new Turned(move, seen, !seen.first().equals(now.first()), decided, statusChanges);
    }

    /** What is otherwise after an outcome. */
    static Difference difference(Seen now, Turned turned, Catalogue catalogue) {
        return Difference.of(now, turned.seen(), true, catalogue);
    }
}
