package org.washwright.plant;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.task.Value;

/**
 * A plant as the line of an answer would be built: its process, stages and windows, the basket it was sized by and the baths
 * that the sizing put side by side. What an answer does not say, such as hours a week, stays not known.
 */
public final class PlannedPlant {

    private static final String PARALLEL = "parallel";
    private static final MathContext DIGITS = new MathContext(12);

    private PlannedPlant() {}

    /** The plant as a document in plain data; empty when the answer holds no such process. */
    public static Optional<Map<String, Object>> of(Answer answer, String process, String title, Edition edition) {
        return answer.candidates().stream()
                .filter(c -> c.process().equals(process))
                .findFirst()
                .map(c -> document(c, title, edition));
    }

    private static Map<String, Object> document(Answer.Candidate candidate, String title, Edition edition) {
        Map<String, Object> out = new LinkedHashMap<>();
        String name = "Planned: " + candidate.name() + " for " + title;
        out.put("name", name.length() > 200 ? name.substring(0, 200) : name);
        out.put("process", candidate.process());
        List<String> stages = new ArrayList<>();
        Map<String, Object> settings = new LinkedHashMap<>();
        for (Answer.Stage stage : candidate.stages()) {
            String id = stage.main() ? Plant.MAIN : stage.stage();
            stages.add(id);
            Map<String, Object> windows = windows(stage);
            if (!windows.isEmpty()) {
                settings.putIfAbsent(id, windows);
            }
        }
        out.put("stages", stages);
        out.put("settings", settings);
        Map<String, Object> basket = basket(edition);
        if (!basket.isEmpty()) {
            out.put("basket", basket);
        }
        chambers(candidate).ifPresent(n -> out.put("chambers", n));
        out.put("hours", "unknown");
        return out;
    }

    private static Map<String, Object> windows(Answer.Stage stage) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (Answer.Window w : stage.windows()) {
            if (w.low() != null && w.high() != null && w.low() <= w.high()) {
                boolean inMinutes = w.unit().equals("s") && w.low() >= 60;
                String unit = inMinutes ? "min" : w.unit();
                String low = number(inMinutes ? w.low() / 60 : w.low());
                String high = number(inMinutes ? w.high() / 60 : w.high());
                out.put(
                        w.parameter(),
                        (low.equals(high) ? low : low + ".." + high) + (unit.isEmpty() ? "" : " " + unit));
            }
        }
        return out;
    }

    private static Map<String, Object> basket(Edition edition) {
        Map<String, Object> out = new LinkedHashMap<>();
        put(out, "volume", edition, "basket-volume", "L", Dimension.VOLUME);
        put(out, "mass", edition, "basket-mass", "kg", Dimension.MASS);
        put(out, "area", edition, "basket-area", "m2", Dimension.AREA);
        return out;
    }

    private static void put(
            Map<String, Object> out, String key, Edition edition, String assumption, String unit, Dimension dimension) {
        Edition.Assumption of = edition.assumptions().get(assumption);
        if (of != null && of.value() instanceof Value.Number n && n.span().isPoint() && of.dimension() == dimension) {
            out.put(key, number(Quantities.fromSi(n.span().low(), unit, dimension)) + " " + unit);
        }
    }

    /** The baths that the sizing put side by side for the main stage, when it knows their number. */
    private static Optional<String> chambers(Answer.Candidate candidate) {
        int main = 0;
        while (main < candidate.stages().size() && !candidate.stages().get(main).main()) {
            main++;
        }
        int place = main + 1;
        return candidate.design().stream()
                .flatMap(d -> d.figures().stream())
                .filter(f -> f.figure().equals(PARALLEL) && f.stage() == place && f.high() != null)
                .map(Design.Figure::high)
                .filter(n -> n >= 1)
                .map(PlannedPlant::number)
                .findFirst();
    }

    private static String number(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
