package org.washwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.plant.PlantWeek;
import org.washwright.plant.PlantWeek.Load;
import org.washwright.plant.PlantWeek.Range;
import org.washwright.plant.PlantWeek.Reason;
import org.washwright.plant.PlantWeek.Slot;
import org.washwright.plant.PlantWeek.TaskOnPlant;
import org.washwright.quantity.Quantities;

/** Writes what a plant makes of its tasks as plain text: the sentence, the table, then the reasons of each task. */
final class PlantText {

    private static final int FIGURES = 3;

    private final PlantWeek week;
    private final PrintWriter out;

    PlantText(PlantWeek week, PrintWriter out) {
        this.week = week;
        this.out = out;
    }

    void write() {
        out.println(week.plant() + " (" + week.processName() + ")");
        out.println();
        out.println(week.headline());
        if (!week.tasks().isEmpty()) {
            out.println();
            table();
        }
        for (int i = 0; i < week.tasks().size(); i++) {
            task(i + 1, week.tasks().get(i));
        }
        out.println();
        out.println("Figures are for planning. Safety data sheets, local codes and a competent person decide.");
        out.println("edition " + week.edition() + ", meaning " + week.meaningHash() + ", as of " + week.asOf());
        out.flush();
    }

    private void table() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "verdict", "parts/week", "in a load", "min/load", "h/week", "up to", "fits", "task"));
        for (int i = 0; i < week.tasks().size(); i++) {
            TaskOnPlant task = week.tasks().get(i);
            int place = i + 1;
            Optional<Slot> slot =
                    week.week().order().stream().filter(s -> s.task() == place).findFirst();
            Optional<Load> load = task.load();
            rows.add(List.of(
                    String.valueOf(place),
                    task.verdict(),
                    cell(load.isPresent(), load.flatMap(Load::partsPerWeek)),
                    cell(load.isPresent(), load.flatMap(Load::partsInLoad)),
                    cell(load.isPresent(), load.flatMap(Load::minutesPerLoad)),
                    cell(load.isPresent(), load.flatMap(Load::hours)),
                    cell(load.isPresent(), slot.flatMap(Slot::until)),
                    slot.map(Slot::fits).orElse(""),
                    task.title()));
        }
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        rows.forEach(r -> {
            for (int c = 0; c < columns; c++) {
                widths[c] = Math.max(widths[c], r.get(c).length());
            }
        });
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < columns; c++) {
                line.append(row.get(c)).append(" ".repeat(widths[c] - row.get(c).length() + 2));
            }
            out.println(line.toString().stripTrailing());
        }
    }

    private void task(int place, TaskOnPlant task) {
        out.println();
        out.println(place + "  " + task.title() + ": " + task.verdict());
        reasons("x", task.blocks());
        reasons("~", task.conditions());
        reasons("=", task.settings());
        task.load().ifPresent(load -> {
            if (load.partsPerWeek().isPresent()) {
                out.println("   parts a week: " + load.partsFrom());
            }
            if (!load.slowest().isEmpty()) {
                out.println("   slowest station: " + load.slowest());
            }
            if (!load.notKnown().isEmpty()) {
                out.println("   hours not known, because these are not: " + String.join(", ", load.notKnown()));
            }
            if (!load.assumed().isEmpty()) {
                out.println("   not said of the plant, from the edition: " + String.join(", ", load.assumed()));
            }
        });
    }

    private void reasons(String mark, List<Reason> reasons) {
        reasons.forEach(r -> out.println(
                "  " + mark + " " + r.text() + (r.rules().isEmpty() ? "" : " [" + String.join(", ", r.rules()) + "]")));
    }

    private static String cell(boolean served, Optional<Range> range) {
        if (!served) {
            return "-";
        }
        return range.map(PlantText::text).orElse("not known");
    }

    private static String text(Range range) {
        String low = Quantities.number(range.low(), FIGURES);
        String high = Quantities.number(range.high(), FIGURES);
        return low.equals(high) ? low : low + " to " + high;
    }
}
