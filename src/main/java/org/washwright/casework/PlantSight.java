package org.washwright.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Parameter;
import org.washwright.plant.Plant;
import org.washwright.plant.PlantJudge;
import org.washwright.plant.PlantWeek;
import org.washwright.plant.PlantWeek.Range;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.task.Value;

/** What the page of a plant shows: the plant in words, the choice of tasks, and the week as a table and a bar. */
final class PlantSight {

    private static final int FIGURES = 3;
    private static final double WHOLE = 100;
    private static final int TONES = 7;

    private PlantSight() {}

    /** A label and what is known of it; empty when it is not. */
    record Line(String label, String value) {}

    /** A task that can be chosen. */
    record Pick(UUID id, String title, boolean ticked, String parts, String turn, String error) {}

    /** A task of the week as a row of the table, with its stretch of the bar. */
    record Row(
            int place,
            String verdict,
            String status,
            PlantWeek.TaskOnPlant task,
            String parts,
            String partsFrom,
            String inLoad,
            String loads,
            String minutes,
            String hours,
            String until,
            String fits,
            int tone) {

        /** Conditions shown at once; the rest is folded away. */
        public List<PlantWeek.Reason> first() {
            return task.conditions().subList(0, Math.min(4, task.conditions().size()));
        }

        /** The conditions folded away. */
        public List<PlantWeek.Reason> rest() {
            return task.conditions().subList(first().size(), task.conditions().size());
        }
    }

    /**
     * A stretch of the bar.
     *
     * @param from its start, in percent of the bar
     * @param percent its length
     * @param tone its colour
     * @param broken true when the plant serves it only if something holds
     */
    record Stretch(double from, double percent, int tone, boolean broken) {}

    /**
     * The week drawn.
     *
     * @param stretches one for each task whose hours are known, at the middle of each range
     * @param has where the hours of the plant end, in percent; negative when they are not known
     * @param words the same for those who hear the page
     */
    record Bar(List<Stretch> stretches, double has, String words) {}

    static List<Line> lines(Plant plant, Edition edition) {
        Catalogue words = edition.catalogue();
        List<Line> out = new ArrayList<>();
        out.add(new Line("process", words.name("process", plant.process())));
        out.add(new Line(
                "stages",
                plant.stages()
                        .map(s -> String.join(
                                " → ",
                                s.stream().map(id -> stage(plant, words, id)).toList()))
                        .orElse("")));
        // In the order in which a load passes them; each once.
        Stream.concat(plant.stages().stream().flatMap(List::stream), plant.settings().keySet().stream())
                .distinct()
                .filter(plant.settings()::containsKey)
                .forEach(stage -> out.add(new Line(
                        stage(plant, words, stage),
                        settings(words, plant.settings().get(stage)))));
        out.add(new Line("basket: mass", text(plant.basket().mass(), Dimension.MASS)));
        out.add(new Line("basket: area", text(plant.basket().area(), Dimension.AREA)));
        out.add(new Line("basket: room", text(plant.basket().volume(), Dimension.VOLUME)));
        out.add(new Line("longest part", text(plant.largestPart(), Dimension.LENGTH)));
        out.add(new Line("chambers", text(plant.chambers(), Dimension.RATIO)));
        out.add(new Line("hours a week", text(plant.hours(), Dimension.TIME)));
        plant.solvents()
                .filter(s -> !s.isEmpty())
                .ifPresent(s -> out.add(new Line(
                        "solvents",
                        String.join(
                                ", ",
                                s.stream()
                                        .map(id -> words.name("solvent-class", id))
                                        .toList()))));
        return out;
    }

    private static String stage(Plant plant, Catalogue words, String id) {
        return id.equals(Plant.MAIN) ? words.name("process", plant.process()) : words.name("stage", id);
    }

    private static String settings(Catalogue words, Map<String, Value> settings) {
        return String.join(
                ", ",
                settings.entrySet().stream()
                        .map(e -> setting(words, e.getKey(), e.getValue()))
                        .toList());
    }

    private static String setting(Catalogue words, String id, Value value) {
        Parameter parameter = words.parameters().get(id);
        return parameter.term().name() + " " + text(value, parameter.dimension());
    }

    private static String text(Value value, Dimension dimension) {
        if (value instanceof Value.NotApplicable) {
            return "no limit";
        }
        if (!(value instanceof Value.Number n)) {
            return "";
        }
        // What plants take is weighed in kilograms and measured in square metres.
        Optional<Range> range = Double.isFinite(n.span().high())
                ? Optional.of(new Range(n.span().low(), n.span().high()))
                : Optional.empty();
        if (dimension == Dimension.MASS && range.isPresent()) {
            return text(range.get()) + " kg";
        }
        if (dimension == Dimension.AREA && range.isPresent()) {
            return text(range.get()) + " m²";
        }
        return Quantities.write(n.span(), dimension, FIGURES);
    }

    static List<Row> rows(PlantWeek week) {
        List<Row> out = new ArrayList<>();
        int served = 0;
        for (int i = 0; i < week.tasks().size(); i++) {
            PlantWeek.TaskOnPlant task = week.tasks().get(i);
            int place = i + 1;
            Optional<PlantWeek.Slot> slot =
                    week.week().order().stream().filter(s -> s.task() == place).findFirst();
            Optional<PlantWeek.Load> load = task.load();
            out.add(new Row(
                    place,
                    task.verdict(),
                    status(task.verdict()),
                    task,
                    text(load.flatMap(PlantWeek.Load::partsPerWeek)),
                    load.map(PlantWeek.Load::partsFrom).orElse(""),
                    text(load.flatMap(PlantWeek.Load::partsInLoad)),
                    text(load.flatMap(PlantWeek.Load::loads)),
                    text(load.flatMap(PlantWeek.Load::minutesPerLoad)),
                    text(load.flatMap(PlantWeek.Load::hours)),
                    text(slot.flatMap(PlantWeek.Slot::until)),
                    slot.map(PlantWeek.Slot::fits).orElse(""),
                    slot.isPresent() ? served++ % TONES + 1 : 0));
        }
        return out;
    }

    private static String status(String verdict) {
        return switch (verdict) {
            case PlantJudge.SERVES -> "recommended";
            case PlantJudge.SERVES_IF -> "conditional";
            default -> "ruled out";
        };
    }

    /** The bar; empty when no hours are known. */
    static Optional<Bar> bar(PlantWeek week, List<Row> rows) {
        double needs = middle(week.week().needs());
        double has = week.week().has().map(PlantSight::middle).orElse(-1.0);
        double length = Math.max(needs, has);
        if (needs <= 0) {
            return Optional.empty();
        }
        List<Stretch> stretches = new ArrayList<>();
        double at = 0;
        for (Row row : rows) {
            Optional<Range> hours = row.task().load().flatMap(PlantWeek.Load::hours);
            if (hours.isPresent()) {
                double percent = WHOLE * middle(hours.get()) / length;
                stretches.add(new Stretch(at, percent, row.tone(), row.status().equals("conditional")));
                at += percent;
            }
        }
        return Optional.of(new Bar(
                stretches, has < 0 ? -1 : WHOLE * has / length, week.week().sentence()));
    }

    private static double middle(Range range) {
        return (range.low() + range.high()) / 2;
    }

    private static String text(Optional<Range> range) {
        return range.map(PlantSight::text).orElse("");
    }

    private static String text(Range range) {
        String low = Quantities.number(range.low(), FIGURES);
        String high = Quantities.number(range.high(), FIGURES);
        return low.equals(high) ? low : low + " to " + high;
    }
}
