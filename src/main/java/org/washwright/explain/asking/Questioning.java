package org.washwright.explain.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Outcome;
import org.washwright.catalogue.Catalogue;
import org.washwright.explain.vary.Move;
import org.washwright.explain.vary.Place;
import org.washwright.explain.vary.PlaceWords;
import org.washwright.explain.vary.Seen;
import org.washwright.quantity.Quantities;
import org.washwright.task.Group;

/** Puts unknowns, their outcomes and what hangs on them into words. */
final class Questioning {

    private static final int FIGURES = 2;
    private static final int PERCENT = 100;

    private final PlaceWords words;
    private final Outcome outcome;

    Questioning(PlaceWords words, Outcome outcome) {
        this.words = words;
        this.outcome = outcome;
    }

    /** The question as an answer asks it. */
    String question(Place place) {
        if (place instanceof Place.Said said) {
            if (said.edit().group().isEmpty()) {
                return said.edit().attribute().question();
            }
            Group group = said.edit().group().get();
            String fact = group.key() + (group.isList() ? "/" + said.edit().index() : "");
            return outcome.question(fact + "/" + said.edit().attribute().name());
        }
        return outcome.question(place.group().orElseThrow().key());
    }

    FindOut.Unknown unknown(Asking.Tried tried, double decides, Seen now, Catalogue catalogue) {
        List<FindOut.Turn> turns = tried.turns().stream()
                .map(t -> new FindOut.Turn(
                        way(t.move()),
                        words.then(t.move()),
                        words.typed(t.move()),
                        t.move().place().pointer(),
                        steps(t.move()),
                        Asking.difference(now, t, catalogue),
                        t.decided()))
                .toList();
        double first = tried.share(Asking.Turned::firstChanges);
        double status = tried.share(Asking.Turned::statusChanges);
        Optional<Integer> worst = worst(turns);
        return new FindOut.Unknown(
                tried.choice().place().pointer(),
                words.name(tried.choice().place()),
                question(tried.choice().place()),
                words.now(tried.choice().place()),
                decides,
                first,
                status,
                turns,
                worst,
                tried.contradictory().stream().map(words::then).toList(),
                tried.left().stream().map(words::then).toList(),
                text(tried, turns, worst, first, status));
    }

    /** Of a list that may hold more, one more entry is then all there is besides. */
    private List<String> steps(Move move) {
        List<String> out = new ArrayList<>(words.steps(move));
        if (move.place() instanceof Place.More more) {
            out.add("/" + more.list().key() + "/open=no");
        }
        return out;
    }

    /** The outcome that takes most from what stands now. */
    private static Optional<Integer> worst(List<FindOut.Turn> turns) {
        int worst = -1;
        int most = 0;
        for (int i = 0; i < turns.size(); i++) {
            int lost = turns.get(i).elsewhere().lost().size();
            if (lost > most) {
                worst = i;
                most = lost;
            }
        }
        return worst < 0 ? Optional.empty() : Optional.of(worst);
    }

    private static String text(
            Asking.Tried tried, List<FindOut.Turn> turns, Optional<Integer> worst, double first, double status) {
        String part =
                tried.left().isEmpty() ? "" : " Of its outcomes " + tried.left().size() + " were not tried.";
        if (turns.isEmpty()) {
            return "Every outcome that was tried contradicts what is said elsewhere." + part;
        }
        if (first == 0 && status == 0) {
            return "The answer is the same whatever it is: the same processes stand, and the same one is first." + part;
        }
        List<String> said = new ArrayList<>();
        said.add(
                first == 0
                        ? "The first stays the first whatever it is"
                        : "Another process is first in " + percent(first) + " of its outcomes");
        said.add(
                status == 0
                        ? "no process changes its status"
                        : "some process changes its status in " + percent(status));
        String worstSaid = worst.map(w -> {
                    int lost = turns.get(w).elsewhere().lost().size();
                    return " At worst (" + turns.get(w).to() + ") " + lost
                            + (lost == 1 ? " process falls" : " processes fall") + " out.";
                })
                .orElse(" No outcome takes a process out.");
        return String.join("; ", said) + "." + worstSaid + part;
    }

    private static String percent(double share) {
        return Quantities.number(Math.rint(share * PERCENT), FIGURES + 1) + " %";
    }

    private static String way(Move move) {
        return move.place() instanceof Place.Said ? "set" : move.place() instanceof Place.More ? "add" : "close";
    }

    static String verdict(List<FindOut.Unknown> matters, List<FindOut.Unknown> same, List<String> notTried, int open) {
        if (matters.isEmpty() && same.isEmpty() && notTried.isEmpty()) {
            return open == 0
                    ? "Everything that can be said of the task is said."
                    : "Everything that can be said of the task is said; what " + open
                            + (open == 1 ? " process hangs" : " processes hang")
                            + " on, the rulebook itself leaves open.";
        }
        if (matters.isEmpty()) {
            return notTried.isEmpty()
                    ? "Nothing has to be found out: the answer is the same whatever is still open."
                    : "Nothing that was tried has to be found out; some was not tried.";
        }
        return "Find out first: " + matters.get(0).question();
    }
}
