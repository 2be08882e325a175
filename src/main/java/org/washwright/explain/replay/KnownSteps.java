package org.washwright.explain.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.washwright.assessment.Answer;
import org.washwright.explain.replay.Step.Added;
import org.washwright.explain.replay.Step.Kind;
import org.washwright.explain.replay.Step.Read;

/** The steps before any rule: what was given, what the catalogue says of it, and what formulas make of both. */
final class KnownSteps {

    private final ToldAnswer index;
    private final Scope scope;
    private final Map<String, Integer> ranks = new HashMap<>();

    KnownSteps(ToldAnswer index, Scope scope) {
        this.index = index;
        this.scope = scope;
    }

    List<Step> steps() {
        List<Answer.Fact> facts = index.answer().facts().stream()
                .filter(f -> !ToldAnswer.isConclusion(f) && !ToldAnswer.isOfLine(f) && scope.ref(f.id()))
                .toList();
        List<Step> steps = new ArrayList<>();
        facts.stream().filter(f -> !ToldAnswer.isOfEdition(f)).forEach(f -> steps.add(given(f)));
        facts.stream().sorted(Comparator.comparing(ToldAnswer::isOfEdition)).forEach(f -> catalogue(f, steps));
        computed(facts, steps);
        return steps;
    }

    private Step given(Answer.Fact fact) {
        List<Added> adds = new ArrayList<>();
        adds.add(new Added("fact", fact.id(), fact.name(), ""));
        List<Added> values = values(fact, a -> !isDerived(a));
        adds.addAll(values);
        return step(
                "given/" + fact.id(),
                Kind.GIVEN,
                "What was said of " + fact.name(),
                values.isEmpty() ? "Nothing more was said of it." : "",
                List.of(),
                adds);
    }

    private void catalogue(Answer.Fact fact, List<Step> steps) {
        boolean ofEdition = ToldAnswer.isOfEdition(fact);
        List<Added> adds = new ArrayList<>();
        if (ofEdition) {
            adds.add(new Added("fact", fact.id(), fact.name(), ""));
        }
        adds.addAll(values(fact, a -> isDerived(a) && rank(a) == 0));
        if (!adds.isEmpty()) {
            Set<String> inputs = inputs(fact.attributes(), a -> isDerived(a) && rank(a) == 0);
            steps.add(step(
                    "catalogue/" + fact.id(),
                    Kind.CATALOGUE,
                    "What the catalogue says of " + fact.name(),
                    "",
                    reads(inputs, adds),
                    adds));
        }
    }

    /** One step a formula: all that it computes, once everything it needs is known. */
    private void computed(List<Answer.Fact> facts, List<Step> steps) {
        Map<String, Map<Integer, List<Answer.Attribute>>> byFormula = new LinkedHashMap<>();
        for (Answer.Fact fact : facts) {
            for (Answer.Attribute a : fact.attributes()) {
                if (scope.ref(a.ref()) && isDerived(a) && rank(a) > 0) {
                    String field = a.ref().substring(fact.id().length() + 1);
                    byFormula
                            .computeIfAbsent(fact.type() + "/" + field, k -> new TreeMap<>())
                            .computeIfAbsent(rank(a), k -> new ArrayList<>())
                            .add(a);
                }
            }
        }
        Map<Integer, List<Step>> byRank = new TreeMap<>();
        byFormula.forEach((key, ranked) ->
                ranked.forEach((rank, values) -> byRank.computeIfAbsent(rank, k -> new ArrayList<>())
                        .add(computed("computed/" + key + (ranked.size() > 1 ? "/" + rank : ""), values))));
        byRank.values().forEach(steps::addAll);
    }

    private Step computed(String id, List<Answer.Attribute> values) {
        Answer.Attribute first = values.get(0);
        boolean formula = first.origin().kind().equals("computed");
        List<Added> adds = values.stream().map(this::value).toList();
        String source = first.origin().source();
        String says =
                formula ? sentence(first.origin().detail()) + (source.isEmpty() ? "" : " Source: " + source + ".") : "";
        String title =
                Titles.capital(first.label().replace(" (computed)", "")) + (formula ? " is computed" : " is looked up");
        return step(id, Kind.COMPUTED, title, says, reads(inputs(values, a -> true), adds), adds);
    }

    private static String sentence(String text) {
        return text.isEmpty() || text.endsWith(".") ? text : text + ".";
    }

    private List<Read> reads(Set<String> inputs, List<Added> adds) {
        List<String> own = adds.stream().map(Added::ref).toList();
        return inputs.stream()
                .filter(i -> !own.contains(i))
                .filter(i -> index.attribute(i).isPresent() || index.fact(i).isPresent())
                .map(index::read)
                .toList();
    }

    private Set<String> inputs(List<Answer.Attribute> attributes, Predicate<Answer.Attribute> which) {
        Set<String> inputs = new LinkedHashSet<>();
        attributes.stream()
                .filter(a -> scope.ref(a.ref()) && which.test(a))
                .forEach(a -> inputs.addAll(a.origin().inputs()));
        return inputs;
    }

    private List<Added> values(Answer.Fact fact, Predicate<Answer.Attribute> which) {
        return fact.attributes().stream()
                .filter(a -> scope.ref(a.ref()) && which.test(a))
                .map(this::value)
                .toList();
    }

    private Added value(Answer.Attribute a) {
        return new Added("value", a.ref(), index.name(a.ref()), a.value());
    }

    /** True for what follows from the catalogue or a formula. */
    private static boolean isDerived(Answer.Attribute a) {
        return a.origin().kind().equals("computed") || a.origin().kind().equals("catalogue");
    }

    /** How many formulas, one upon the other, stand between an attribute and what is given or looked up: 0 for none. */
    private int rank(Answer.Attribute a) {
        Integer known = ranks.get(a.ref());
        if (known != null) {
            return known;
        }
        // Guards against a formula that reads itself; no edition has one.
        ranks.put(a.ref(), 0);
        int below = a.origin().inputs().stream()
                .flatMap(i -> index.attribute(i).stream())
                .mapToInt(this::rank)
                .max()
                .orElse(0);
        boolean computed = a.origin().kind().equals("computed");
        int rank = computed || isDerived(a) && below > 0 ? below + 1 : 0;
        ranks.put(a.ref(), rank);
        return rank;
    }

    private static Step step(String id, Kind kind, String title, String says, List<Read> reads, List<Added> adds) {
        return new Step(id, kind, Step.NO_LEVEL, true, "", 0, "", title, says, reads, adds);
    }
}
