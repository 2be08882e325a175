package org.washwright.casework;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Parameter;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.StageTerm;
import org.washwright.plant.Plant;
import org.washwright.problem.ProblemError;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;

/**
 * The plant form as its page draws it.
 *
 * @param action where it is sent
 * @param version version that it changes; empty for a new plant
 * @param heading what the page is called
 * @param name the name
 * @param process the process, with what is wrong with it
 * @param processes all processes
 * @param stagesKnown whether the stages ticked are all there are
 * @param order the stages in their order, joined by commas
 * @param stages all stages
 * @param settings what can be set, stage by stage
 * @param loads what it takes and how long it runs
 * @param solvents all solvent classes
 * @param text the plant as text, when it was given as text before
 * @param errors what is wrong
 */
record PlantFormView(
        String action,
        String version,
        String heading,
        Field name,
        Field process,
        List<Choice> processes,
        boolean stagesKnown,
        String order,
        List<Choice> stages,
        List<Settings> settings,
        List<Field> loads,
        List<Choice> solvents,
        String text,
        List<ProblemError> errors) {

    private static final int FIGURES = 4;

    /** One line to type in. */
    record Field(String id, String label, String help, String value, String error) {}

    /** One thing to choose. */
    record Choice(String id, String name, boolean ticked) {}

    /** What can be set at one stage. */
    record Settings(String stage, String name, List<Field> fields) {}

    /** Where a form goes and what it changes. */
    record Of(String action, String version, String heading, String text) {}

    static PlantFormView of(PlantForm form, Of of, List<ProblemError> errors, Edition edition) {
        return new Drawer(form, errors, edition.catalogue()).draw(of);
    }

    private static final class Drawer {
        private final PlantForm form;
        private final List<ProblemError> errors;
        private final Catalogue catalogue;
        private final Map<String, String> wrong = new TreeMap<>();

        Drawer(PlantForm form, List<ProblemError> errors, Catalogue catalogue) {
            this.form = form;
            this.errors = errors;
            this.catalogue = catalogue;
            errors.forEach(e -> e.pointer().ifPresent(p -> wrong.merge(p, e.message(), (a, b) -> a)));
        }

        PlantFormView draw(Of of) {
            return new PlantFormView(
                    of.action(),
                    of.version(),
                    of.heading(),
                    field("/name", "What do you call it?", ""),
                    field("/process", "Which process does its main stage run?", ""),
                    catalogue.leaves().stream()
                            .map(p -> new Choice(p.id(), p.term().name(), p.id().equals(form.text("/process"))))
                            .sorted(Comparator.comparing(Choice::name))
                            .toList(),
                    form.stagesKnown(),
                    String.join(",", form.stages()),
                    stages(),
                    settings(),
                    List.of(
                            field("/basket/mass", "Mass that a basket takes", "for instance 50 kg"),
                            field("/basket/area", "Area of parts that a basket takes", "for instance 6 m2"),
                            field("/basket/volume", "Room in a basket", "for instance 60 L"),
                            field("/largestPart", "Longest part that it takes", "for instance 600 mm"),
                            field("/chambers", "Chambers or baths of the main stage", "for instance 2"),
                            field("/hours", "Hours a week", "for instance 80 h"),
                            field("/transfer", "Time to lift a load on", "for instance 30 s"),
                            field("/availability", "Share of the hours in which it works", "for instance 85 %")),
                    catalogue.ofKind("solvent-class").values().stream()
                            .filter(t -> !t.isWithdrawn())
                            .map(t ->
                                    new Choice(t.id(), t.name(), form.solvents().contains(t.id())))
                            .toList(),
                    of.text(),
                    errors);
        }

        private Field field(String pointer, String label, String help) {
            return new Field(pointer, label, help, form.text(pointer), wrong.getOrDefault(pointer, ""));
        }

        private List<StageTerm> inOrder() {
            return catalogue.stages().values().stream()
                    .filter(s -> !s.term().isWithdrawn())
                    .sorted(Comparator.comparingInt(StageTerm::position))
                    .toList();
        }

        private List<Choice> stages() {
            return inOrder().stream()
                    .map(s -> new Choice(s.id(), s.term().name(), form.stages().contains(s.id())))
                    .toList();
        }

        private List<Settings> settings() {
            Optional<ProcessTerm> process = Optional.ofNullable(
                            catalogue.processes().get(form.text("/process")))
                    .filter(p -> !p.group());
            List<Settings> out = new ArrayList<>();
            Map<String, Span> main = process.map(p -> p.setting().windows()).orElse(Map.of());
            TreeSet<String> parameters = new TreeSet<>(main.keySet());
            // Until a process is chosen, all that any process can have; what was typed never goes away unseen.
            catalogue.parameters().keySet().stream()
                    .filter(p -> process.isEmpty()
                                    && catalogue.leaves().stream()
                                            .anyMatch(l -> l.setting().windows().containsKey(p))
                            || !form.text(pointer(Plant.MAIN, p)).isEmpty())
                    .forEach(parameters::add);
            out.add(settings(
                    Plant.MAIN, process.map(p -> p.term().name()).orElse("main stage"), List.copyOf(parameters), main));
            inOrder().stream()
                    .filter(s -> form.stages().contains(s.id()))
                    .filter(s -> !s.setting().windows().isEmpty())
                    .forEach(s -> out.add(settings(
                            s.id(),
                            s.term().name(),
                            List.copyOf(s.setting().windows().keySet()),
                            s.setting().windows())));
            return out;
        }

        private Settings settings(String stage, String name, List<String> parameters, Map<String, Span> usual) {
            return new Settings(
                    stage,
                    name,
                    parameters.stream()
                            .map(p -> {
                                Parameter parameter = catalogue.parameters().get(p);
                                String help = usual.containsKey(p)
                                        ? "usual: " + Quantities.write(usual.get(p), parameter.dimension(), FIGURES)
                                        : "for instance "
                                                + parameter.dimension().example();
                                return field(pointer(stage, p), parameter.term().name(), help);
                            })
                            .toList());
        }

        private static String pointer(String stage, String parameter) {
            return PlantForm.SETTINGS + stage + "/" + parameter;
        }
    }
}
