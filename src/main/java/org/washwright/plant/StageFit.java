package org.washwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.StageTerm;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;

/** Holds the stages that a task needs against those that the plant has. */
final class StageFit {

    private final Plant plant;
    private final Catalogue catalogue;
    private final ProcessLine line;
    private final Grounds grounds;
    private final Map<String, String> servedBy = new TreeMap<>();

    StageFit(Plant plant, Catalogue catalogue, ProcessLine line, Grounds grounds) {
        this.plant = plant;
        this.catalogue = catalogue;
        this.line = line;
        this.grounds = grounds;
    }

    void judge() {
        line.conditions().stream()
                .filter(c -> plant.stages().isEmpty() || !c.text().startsWith(ProcessLine.FURTHER_STAGE))
                .forEach(c -> grounds.verdict(false, c));
        if (plant.stages().isEmpty()) {
            notKnown();
            return;
        }
        line.steps().forEach(this::find);
        order();
    }

    /** The id under which the plant has this stage; empty when it lacks it. */
    Optional<String> servedBy(PlacedStage step) {
        return plant.stages().isEmpty() ? Optional.of(id(step)) : Optional.ofNullable(servedBy.get(step.key()));
    }

    private void notKnown() {
        List<PlacedStage> needed = line.steps().stream()
                .filter(s -> s.certain() && s.stage().isPresent())
                .toList();
        if (!needed.isEmpty()) {
            grounds.condition(
                    "Which stages the plant has besides its main one is not known; this task needs "
                            + String.join(", ", needed.stream().map(this::name).toList()) + ".",
                    needed.stream().flatMap(s -> s.owedTo().stream()).distinct().toList());
        }
    }

    private void find(PlacedStage step) {
        List<String> has = plant.stages().orElseThrow();
        if (has.contains(id(step))) {
            servedBy.put(step.key(), id(step));
            return;
        }
        Optional<String> instead = step.stage().orElseThrow().alternatives().stream()
                .filter(has::contains)
                .findFirst();
        String need = step.certain() ? "It needs the stage " : "It may need the stage ";
        if (instead.isPresent()) {
            servedBy.put(step.key(), instead.get());
            grounds.condition(
                    need + name(step) + ", for which the plant's " + catalogue.name("stage", instead.get())
                            + " would have to do" + grounds.whyNeeded(step),
                    step.owedTo());
        } else {
            grounds.blockIf(
                    step.certain(),
                    need + name(step) + ", which the plant lacks" + grounds.whyNeeded(step),
                    step.owedTo());
        }
    }

    /** A plant may have every stage and still not in this order, or a stage once that is needed twice. */
    private void order() {
        List<String> surely = passed(true);
        List<String> perhaps = passed(false);
        if (!within(surely)) {
            grounds.condition(
                    "A load has to pass the stages in an order in which they do not stand: " + names(surely) + ".",
                    List.of());
        } else if (!within(perhaps)) {
            grounds.condition(
                    "A load may have to pass the stages in an order in which they do not stand: " + names(perhaps)
                            + ".",
                    List.of());
        }
    }

    private List<String> passed(boolean onlyCertain) {
        return line.steps().stream()
                .filter(s -> (s.certain() || !onlyCertain) && servedBy.containsKey(s.key()))
                .map(s -> servedBy.get(s.key()))
                .toList();
    }

    private boolean within(List<String> passed) {
        List<String> left = new ArrayList<>(plant.stages().orElseThrow());
        for (String stage : passed) {
            int at = left.indexOf(stage);
            if (at < 0) {
                return false;
            }
            left = left.subList(at + 1, left.size());
        }
        return true;
    }

    private String names(List<String> stages) {
        return String.join(
                ", ",
                stages.stream()
                        .map(s -> s.equals(Plant.MAIN) ? line.process().term().name() : catalogue.name("stage", s))
                        .toList());
    }

    /** Stage id, or that of the main stage. */
    static String id(PlacedStage step) {
        return step.stage().map(StageTerm::id).orElse(Plant.MAIN);
    }

    private String name(PlacedStage step) {
        return step.stage()
                .map(s -> s.term().name())
                .orElse(line.process().term().name());
    }
}
