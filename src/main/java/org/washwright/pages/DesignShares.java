package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Candidate;
import org.washwright.assessment.Design;

/** Stretches of bars that show how a whole is made up: the cost of a year, the two sides of a balance. */
@TemplateExtension
public final class DesignShares {

    private static final double WHOLE = 100;
    private static final String COST = "cost-";
    private static final List<String> NO_KIND = List.of("cost-total", "cost-per-part", "cost-per-area");

    private DesignShares() {}

    /**
     * One stretch of a bar.
     *
     * @param name what it is
     * @param text its amount with unit
     * @param percent its share of the whole
     * @param from where it begins, 0 to 100
     * @param tone number of its tone, from 1
     */
    public record Stretch(String name, String text, double percent, double from, int tone) {}

    /** A balance with both sides as stretches of one length. */
    public record Sides(Design.Balance balance, List<Stretch> in, List<Stretch> out, String total) {}

    /** The cost of a year by kind, at the middle of each range; empty when it is not known. */
    public static List<Stretch> costShares(Answer answer, Candidate candidate) {
        Map<String, Double> amounts = new LinkedHashMap<>();
        Map<String, String> texts = new LinkedHashMap<>();
        for (Design.Kind kind : answer.figures()) {
            if (kind.id().startsWith(COST) && !NO_KIND.contains(kind.id())) {
                candidate.design().stream()
                        .flatMap(d -> d.figures().stream())
                        .filter(f -> f.figure().equals(kind.id()) && f.low() != null && f.high() != null)
                        .forEach(f -> {
                            amounts.put(kind.label(), (f.low() + f.high()) / 2);
                            texts.put(kind.label(), f.text());
                        });
            }
        }
        return stretches(amounts, texts);
    }

    /** The balances of a line. */
    public static List<Sides> balanceSides(Candidate candidate) {
        return candidate.design().stream()
                .flatMap(d -> d.balances().stream())
                .map(b -> new Sides(
                        b,
                        side(b.in(), b.unit(), candidate),
                        side(b.out(), b.unit(), candidate),
                        Figures.three(b.in().stream()
                                        .mapToDouble(Design.Flow::amount)
                                        .sum()) + " " + b.unit()))
                .toList();
    }

    private static List<Stretch> side(List<Design.Flow> flows, String unit, Candidate candidate) {
        Map<String, Double> amounts = new LinkedHashMap<>();
        Map<String, String> texts = new LinkedHashMap<>();
        for (Design.Flow f : flows) {
            String name = f.stage() == 0
                    ? f.name()
                    : f.name() + ", " + f.stage() + " " + DesignLookup.stageName(candidate, f.stage());
            amounts.merge(name, f.amount(), Double::sum);
            texts.put(name, Figures.three(amounts.get(name)) + " " + unit);
        }
        return stretches(amounts, texts);
    }

    private static List<Stretch> stretches(Map<String, Double> amounts, Map<String, String> texts) {
        double sum = amounts.values().stream().mapToDouble(Double::doubleValue).sum();
        List<Stretch> out = new ArrayList<>();
        double at = 0;
        for (Map.Entry<String, Double> e : amounts.entrySet()) {
            double percent = sum == 0 ? 0 : WHOLE * e.getValue() / sum;
            out.add(new Stretch(e.getKey(), texts.get(e.getKey()), percent, at, out.size() % 7 + 1));
            at += percent;
        }
        return out;
    }
}
