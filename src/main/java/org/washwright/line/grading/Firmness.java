package org.washwright.line.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.science.FirstRankShare;

/** How firm a first rank is: in which share of all weightings it holds, and what it rests on. */
public final class Firmness {

    /** Weightings drawn; the share is known to about two hundredths. */
    public static final int DRAWS = 2000;

    private static final int FIGURES = 2;

    private Firmness() {}

    /**
     * Share of all weightings of the areas in which each grade leads, by the middle of its points.
     *
     * @param grades grades of processes that may lead, in order
     * @param seed seed of the draws
     */
    public static List<Double> shares(List<Grader.Grade> grades, long seed) {
        double[][] scores = new double[grades.size()][];
        for (int i = 0; i < scores.length; i++) {
            scores[i] = grades.get(i).areas().stream()
                    .mapToDouble(a -> middle(a.points()))
                    .toArray();
        }
        List<Double> out = new ArrayList<>();
        for (double share : FirstRankShare.of(scores, seed, DRAWS)) {
            out.add(share);
        }
        return out;
    }

    /** Why the first leads the second, in one sentence. */
    public static String reason(String first, Grader.Grade a, String second, Grader.Grade b) {
        double lead = middle(a.total()) - middle(b.total());
        List<Step> steps = new ArrayList<>();
        double weights =
                a.areas().stream().mapToDouble(Grader.AreaGrade::weight).sum();
        for (int i = 0; i < a.areas().size(); i++) {
            Grader.AreaGrade area = a.areas().get(i);
            double by = (middle(area.points()) - middle(b.areas().get(i).points()))
                    * (weights == 0 ? 0 : area.weight() / weights);
            steps.add(new Step(area.area().name(), by));
        }
        List<String> up = parts(steps, 1);
        List<String> down = parts(steps, -1);
        if (up.isEmpty() && down.isEmpty()) {
            return first + " and " + second + " come out alike in every area.";
        }
        String head = Math.abs(lead) < 0.5
                ? first + " and " + second + " are level: "
                : first + " leads " + second + " by " + points(lead) + ": ";
        if (up.isEmpty()) {
            return head + "nothing speaks for it but its status; " + joined(down) + " speaks against it.";
        }
        return head + "it gains " + joined(up)
                + (down.isEmpty() ? " and loses nowhere." : " and loses " + joined(down) + ".");
    }

    private record Step(String area, double by) {}

    /** What an area adds to the lead, the most first; what is below half a tenth of a point says nothing. */
    private static List<String> parts(List<Step> steps, int sign) {
        return steps.stream()
                .filter(s -> s.by() * sign >= 0.05)
                .sorted(Comparator.comparingDouble((Step s) -> -s.by() * sign))
                .map(s -> Quantities.number(Math.abs(s.by()), FIGURES) + " in " + s.area())
                .toList();
    }

    private static String joined(List<String> parts) {
        return parts.size() < 2
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }

    private static String points(double lead) {
        String number = Quantities.number(Math.abs(lead), FIGURES);
        return (lead < 0 ? "minus " : "") + number + (number.equals("1") ? " point" : " points");
    }

    private static double middle(Span span) {
        return (span.low() + span.high()) / 2;
    }
}
