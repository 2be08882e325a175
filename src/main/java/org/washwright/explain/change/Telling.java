package org.washwright.explain.change;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.task.Group;

/** Says what a search came to. */
final class Telling {

    private static final int FIGURES = 2;
    private static final int WHOLE = 12;
    private static final int NAMED = 6;

    private final Goal goal;
    private final String process;
    private final String name;
    private final ChangeFinder.Scope scope;
    private final int places;

    Telling(Edition edition, Goal goal, String process, ChangeFinder.Scope scope, int places) {
        this.goal = goal;
        this.process = process;
        this.name = process.isEmpty() ? "" : edition.catalogue().name("process", process);
        this.scope = scope;
        this.places = places;
    }

    Changes reached(int evaluations) {
        String verdict = switch (goal.kind()) {
            case BRING_IN -> capital(name) + " is recommended already.";
            case LET_STAND -> capital(name) + " stands already.";
            case PUT_FIRST -> capital(name) + " is first already.";
            case DISPLACE_FIRST -> "No process stands, so none is first.";
        };
        return changes(
                true,
                verdict,
                List.of(),
                searched(evaluations, false, List.of(), List.of("Nothing had to be searched.")));
    }

    Changes impossible(int evaluations) {
        return changes(
                false,
                "Nothing that may change " + wanted() + ".",
                List.of(),
                searched(
                        evaluations,
                        true,
                        List.of(),
                        List.of(
                                "Even with all " + places + " things that may change left open at once, it stays so.",
                                heldFast())));
    }

    Changes found(List<Changes.Proposal> proposals, List<SetsOfSize> sizes, int evaluations) {
        List<String> counts = new ArrayList<>();
        for (int n = 1; n <= scope.most(); n++) {
            int size = n;
            long of = proposals.stream().filter(p -> p.changes().size() == size).count();
            if (of > 0) {
                counts.add((of == 1 ? "one" : String.valueOf(of)) + " " + sets(n, of));
            }
        }
        String verdict;
        if (counts.isEmpty()) {
            verdict = "No set of up to " + scope.most() + " changes that was tried " + wanted() + ".";
        } else {
            boolean one = proposals.size() == 1;
            verdict = capital(joined(counts)) + (one ? " " + wanted() : " " + wantedOfEach()) + ".";
        }
        List<String> text = new ArrayList<>();
        sizes.forEach(s -> text.add(said(s)));
        text.add(heldFast());
        return changes(
                false,
                verdict,
                proposals,
                searched(evaluations, false, sizes.stream().map(Telling::size).toList(), text));
    }

    private String wanted() {
        return switch (goal.kind()) {
            case BRING_IN -> "brings in " + name;
            case LET_STAND -> "lets " + name + " stand";
            case PUT_FIRST -> "puts " + name + " first";
            case DISPLACE_FIRST -> "takes the first place from " + name;
        };
    }

    private String wantedOfEach() {
        return switch (goal.kind()) {
            case BRING_IN -> "each bring in " + name;
            case LET_STAND -> "each let " + name + " stand";
            case PUT_FIRST -> "each put " + name + " first";
            case DISPLACE_FIRST -> "each take the first place from " + name;
        };
    }

    private static String sets(int size, long count) {
        if (size == 1) {
            return count == 1 ? "single change" : "single changes";
        }
        String word = count == 1 ? "pair" : "pairs";
        return size == 2 ? word + " of changes" : (count == 1 ? "set" : "sets") + " of three changes";
    }

    private static String said(SetsOfSize s) {
        String of = s.size() == 1 ? (s.sets() == 1 ? "single change" : "single changes") : sets(s.size(), s.sets());
        String all =
                number(s.sets()) + " " + of + ": " + number(s.passedOver()) + " need no trial, " + number(s.tried())
                        + " tried, " + s.reached() + (s.reached() == 1 ? " reaches" : " reach") + " the goal";
        if (s.left() == 0) {
            return all + "; none is left.";
        }
        List<String> among = List.copyOf(s.among());
        return all + "; " + number(s.left()) + (s.left() == 1 ? " was" : " were") + " not searched to the end, about "
                + Quantities.number(s.combinations(), FIGURES) + " combinations of values, over "
                + String.join(", ", among.stream().limit(NAMED).toList())
                + (among.size() > NAMED ? " and " + (among.size() - NAMED) + " more" : "") + ".";
    }

    private String heldFast() {
        List<String> fixed = scope.fixed().stream().map(Group::heading).toList();
        return fixed.isEmpty() ? "Nothing was held fast." : "Held fast: " + String.join("; ", fixed) + ".";
    }

    private static Changes.Size size(SetsOfSize s) {
        return new Changes.Size(
                s.size(),
                s.sets(),
                s.passedOver(),
                s.tried(),
                s.reached(),
                s.left(),
                s.combinations(),
                List.copyOf(s.among()));
    }

    private Changes.Searched searched(
            int evaluations, boolean impossible, List<Changes.Size> sizes, List<String> text) {
        return new Changes.Searched(
                evaluations,
                scope.evaluations(),
                places,
                scope.fixed().stream().map(Group::key).toList(),
                impossible,
                sizes,
                sizes.stream().allMatch(s -> s.left() == 0),
                text);
    }

    private Changes changes(
            boolean reached, String verdict, List<Changes.Proposal> proposals, Changes.Searched search) {
        return new Changes(goal.kind().word(), process, name, reached, verdict, proposals, search);
    }

    private static String joined(List<String> parts) {
        int last = parts.size() - 1;
        return last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    private static String number(long n) {
        return Quantities.number(n, WHOLE);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
