package org.washwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Candidate;
import org.washwright.assessment.Answer.Stage;
import org.washwright.assessment.Design;
import org.washwright.assessment.Design.Balance;
import org.washwright.assessment.Design.Control;
import org.washwright.assessment.Design.Figure;
import org.washwright.assessment.Design.Flow;
import org.washwright.assessment.Design.Input;
import org.washwright.assessment.Design.Kind;
import org.washwright.assessment.Design.Proof;
import org.washwright.assessment.Ranking;

/** A line with every sort of figure a report has to show. All numbers are invented; none is a plant's. */
final class InventedDesign {

    private static final String INVENTED = "invented for tests";

    static final List<Kind> KINDS = List.of(
            kind(
                    "loads",
                    "loads an hour",
                    "throughput",
                    "1/h",
                    "parts an hour \u00F7 parts in a load \u00F7 availability",
                    ""),
            kind("takt", "takt of a load", "throughput", "min", "1 \u00F7 loads an hour", ""),
            kind(
                    "volume",
                    "bath volume",
                    "baths and stations",
                    "L",
                    "load volume \u00D7 filling",
                    "baskets fully covered"),
            kind(
                    "drag",
                    "carried over",
                    "rinsing and water",
                    "L/h",
                    "area an hour \u00D7 film of 80 to 120 \u00B5m",
                    "Re \u2264 2000"),
            kind(
                    "power",
                    "heat to hold it warm",
                    "heat and drying",
                    "kW",
                    "h \u00D7 A \u00D7 (T \u2212 T\u2080)",
                    "still air"),
            kind("air", "exhaust air", "air and solvent", "m\u00B3/h", "surface \u00D7 0.5 m\u00B7s\u207B\u00B9", ""),
            kind("energy", "energy", "cost", "\u20AC/a", "energy a year \u00D7 price of energy", ""),
            kind("chemistry", "media", "cost", "\u20AC/a", "media a year \u00D7 price of media", ""),
            kind("people", "people", "cost", "\u20AC/a", "hours a year \u00D7 wage", ""),
            kind("yearly", "cost a year", "cost", "\u20AC/a", "energy + media + people", ""),
            kind("per-part", "cost of a part", "cost", "\u20AC", "cost a year \u00F7 parts a year", ""));

    static final List<Input> INPUTS = List.of(
            new Input("assumption/price-energy", "price of energy", "0.21 \u20AC/kWh", INVENTED, true),
            new Input("assumption/availability", "availability", "0.85", INVENTED, false),
            new Input(
                    "medium/alkaline-cleaner/density",
                    "density of alkaline cleaner",
                    "1020 kg/m\u00B3",
                    INVENTED,
                    false));

    private InventedDesign() {}

    /** The answer with a design in every candidate but the last. */
    static Answer in(Answer answer) {
        List<Candidate> candidates = new ArrayList<>();
        for (Candidate c : answer.candidates()) {
            boolean last = candidates.size() == answer.candidates().size() - 1 && candidates.size() > 0;
            candidates.add(with(c, last ? Optional.empty() : Optional.of(of(c))));
        }
        Ranking ranking = new Ranking(
                "set directly, as the edition has them",
                null,
                List.of("The first two lie closer together than their points can tell."),
                candidates.isEmpty() ? "" : candidates.get(0).name() + " leads by soil removal.",
                candidates.stream()
                        .limit(3)
                        .map(c -> new Ranking.Share(c.process(), c.name(), 0.3))
                        .toList());
        return new Answer(
                answer.format(),
                answer.request(),
                answer.requestHash(),
                answer.headline(),
                answer.intended(),
                answer.facts(),
                answer.firings(),
                candidates,
                answer.ruledOut(),
                answer.cautions(),
                answer.questions(),
                answer.doubts(),
                answer.verifications(),
                Optional.of(ranking),
                KINDS,
                INPUTS,
                answer.rules(),
                answer.sources());
    }

    private static Candidate with(Candidate c, Optional<Design> design) {
        return new Candidate(
                c.process(),
                c.name(),
                c.status(),
                c.low(),
                c.high(),
                c.areas(),
                c.stages(),
                c.conditions(),
                c.cautions(),
                design);
    }

    private static Design of(Candidate candidate) {
        List<Figure> figures = new ArrayList<>();
        figures.add(figure("loads", 0, 14.2, 16.8, "14.2 to 16.8 1/h", "part/rate", "assumption/availability"));
        figures.add(figure("takt", 0, 3.57, 4.23, "3.57 to 4.23 min", "figure/loads/0"));
        List<Control> control = new ArrayList<>();
        List<Flow> losses = new ArrayList<>();
        for (int i = 1; i <= candidate.stages().size(); i++) {
            Stage stage = candidate.stages().get(i - 1);
            figures.add(figure("volume", i, 640.0, 1250.0, "640 to 1\u2009250 L", "medium/alkaline-cleaner/density"));
            figures.add(new Figure(
                    "drag",
                    i,
                    i == 1 ? "not known" : "1.15 to 1.73 L/h",
                    i == 1 ? null : 1.15,
                    i == 1 ? null : 1.73,
                    List.of(i == 1 ? "part/wallThickness" : "part/wettedArea", "figure/volume/" + i),
                    i == 2 ? List.of("cupped parts carry out more than a film") : List.of()));
            figures.add(figure(
                    "power",
                    i,
                    1.2 * i,
                    2.4 * i,
                    Numerals.three(1.2 * i) + " to " + Numerals.three(2.4 * i) + " kW",
                    "window/" + i + "/temperature"));
            control.add(new Control(
                    i,
                    "conductivity",
                    "probe in the bath; change the bath when it stays out for a shift",
                    "every shift",
                    "at most " + 100 * i + " \u00B5S/cm at 25 \u00B0C"));
            losses.add(new Flow("walls and surface of " + stage.name(), i, 1.5));
        }
        figures.add(figure("air", 0, 1800.0, null, "at least 1\u2009800 m\u00B3/h"));
        figures.add(
                figure("energy", 0, 4000.0, 6000.0, "4\u2009000 to 6\u2009000 \u20AC/a", "assumption/price-energy"));
        figures.add(figure("chemistry", 0, 1000.0, 3000.0, "1\u2009000 to 3\u2009000 \u20AC/a"));
        figures.add(figure("people", 0, 20000.0, 30000.0, "20\u2009000 to 30\u2009000 \u20AC/a"));
        figures.add(figure(
                "yearly",
                0,
                25000.0,
                39000.0,
                "25\u2009000 to 39\u2009000 \u20AC/a",
                "figure/energy/0",
                "figure/chemistry/0",
                "figure/people/0"));
        figures.add(figure("per-part", 0, 0.011, 0.017, "0.011 to 0.017 \u20AC", "figure/yearly/0"));
        double lost = losses.stream().mapToDouble(Flow::amount).sum();
        List<Flow> out = new ArrayList<>(losses);
        out.add(new Flow("carried out with the parts", 0, 4.5));
        return new Design(
                figures,
                List.of(
                        new Balance("heat", "heat", "kW", List.of(new Flow("electric heaters", 0, lost + 4.5)), out),
                        new Balance(
                                "water",
                                "water",
                                "L/h",
                                List.of(new Flow("fresh water", 0, 60)),
                                List.of(new Flow("drag-out", 0, 2.5), new Flow("waste water", 0, 57.5)))),
                control,
                List.of(new Proof(
                        "gravimetry",
                        "gravimetry of the solvent extract",
                        "residual film of at most 0.02 g/m\u00B2",
                        "at most 0.02 g/m\u00B2",
                        "demand/residue",
                        "10 parts together, from the middle of a lot",
                        "",
                        "every week",
                        "salts and oxides",
                        false,
                        List.of())));
    }

    private static Kind kind(String id, String label, String group, String unit, String formula, String holds) {
        return new Kind(id, label, group, unit, formula, INVENTED, holds);
    }

    private static Figure figure(String id, int stage, Double low, Double high, String text, String... inputs) {
        return new Figure(id, stage, text, low, high, List.of(inputs), List.of());
    }
}
