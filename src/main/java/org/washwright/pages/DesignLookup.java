package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Candidate;
import org.washwright.assessment.Design;

/** The figures of a line as pages show them: by group and kind, each with what it was computed from. */
@TemplateExtension
public final class DesignLookup {

    /** Figures that a reader looks at first, in this order. */
    private static final List<String> KEY = List.of(
            "cost-per-part",
            "investment-class",
            "power-installed",
            "fresh-water",
            "exhaust-air",
            "solvent-use",
            "cycle",
            "people");

    private DesignLookup() {}

    /** Figures of one group, such as those of water. */
    public record Group(String id, String name, List<Row> rows) {}

    /** Figures of one kind. */
    public record Row(Design.Kind kind, List<Cell> cells) {

        /** True when none of them is known. */
        public boolean unknown() {
            return cells.stream()
                    .allMatch(c -> c.figure().low() == null && c.figure().high() == null);
        }
    }

    /** One figure, the name of its stage (empty for the line), and what it was computed from. */
    public record Cell(Design.Figure figure, String stage, List<Read> inputs) {}

    /**
     * Something that a figure was computed from.
     *
     * @param label what it is
     * @param value its value
     * @param origin where that comes from; empty when it stands on this page
     * @param target id on this page, or {@code fact-…} on the page of reasons; empty when it leads nowhere
     * @param changed true for an assumption changed for this request
     */
    public record Read(String label, String value, String origin, String target, boolean changed) {

        /** True when it leads to the page of reasons. */
        public boolean onTrace() {
            return target.startsWith("fact-");
        }
    }

    /** True when the line was sized. */
    public static boolean sized(Candidate candidate) {
        return candidate.design().isPresent();
    }

    /** The design in a list, so that a template can go through it; empty when the line was not sized. */
    public static List<Design> designs(Candidate candidate) {
        return candidate.design().stream().toList();
    }

    /** The ranking in a list, so that a template can go through it; empty when nothing stands. */
    public static List<org.washwright.assessment.Ranking> rankings(Answer answer) {
        return answer.ranking().stream().toList();
    }

    /** The first figures, those that apply. */
    public static List<Row> keyFigures(Answer answer, Candidate candidate) {
        List<Row> rows = rows(answer, candidate);
        return KEY.stream()
                .flatMap(id -> rows.stream().filter(r -> r.kind().id().equals(id)))
                .toList();
    }

    /** All figures by group. */
    public static List<Group> figureGroups(Answer answer, Candidate candidate) {
        Map<String, List<Row>> groups = new LinkedHashMap<>();
        rows(answer, candidate)
                .forEach(r -> groups.computeIfAbsent(r.kind().group(), k -> new ArrayList<>())
                        .add(r));
        List<Group> out = new ArrayList<>();
        groups.forEach((name, rows) -> out.add(new Group("group-" + out.size(), name, rows)));
        return out;
    }

    /** Kinds of which at least one of these processes has a figure for its line as a whole. */
    public static List<Design.Kind> comparedFigures(Answer answer, List<Candidate> chosen) {
        return answer.figures().stream()
                .filter(k -> chosen.stream()
                        .flatMap(c -> c.design().stream())
                        .flatMap(d -> d.figures().stream())
                        .anyMatch(f -> f.stage() == 0 && f.figure().equals(k.id())))
                .toList();
    }

    /** The figure of the line as a whole by the id of its kind, as text; a dash when it does not apply. */
    public static String lineFigure(Candidate candidate, String kind) {
        return candidate.design().stream()
                .flatMap(d -> d.figures().stream())
                .filter(f -> f.stage() == 0 && f.figure().equals(kind))
                .map(Design.Figure::text)
                .findFirst()
                .orElse("–");
    }

    /** What a reader calls a reference of a figure that set points. */
    public static String figureName(Answer answer, String ref) {
        String[] parts = ref.split("/");
        return parts[0].equals("figure")
                ? answer.figures().stream()
                        .filter(k -> k.id().equals(parts[1]))
                        .map(Design.Kind::label)
                        .findFirst()
                        .orElse(parts[1])
                : answer.facts().stream()
                        .flatMap(f -> f.attributes().stream())
                        .filter(a -> a.ref().equals(ref))
                        .map(Answer.Attribute::label)
                        .findFirst()
                        .orElse(ref);
    }

    private static List<Row> rows(Answer answer, Candidate candidate) {
        if (candidate.design().isEmpty()) {
            return List.of();
        }
        Resolver resolver = new Resolver(answer, candidate);
        Map<String, List<Cell>> byKind = new LinkedHashMap<>();
        for (Design.Figure f : candidate.design().get().figures()) {
            byKind.computeIfAbsent(f.figure(), k -> new ArrayList<>())
                    .add(new Cell(
                            f,
                            stageName(candidate, f.stage()),
                            f.inputs().stream().map(resolver::read).toList()));
        }
        List<Row> rows = new ArrayList<>();
        for (Design.Kind kind : answer.figures()) {
            if (byKind.containsKey(kind.id())) {
                rows.add(new Row(kind, byKind.get(kind.id())));
            }
        }
        return rows;
    }

    /** Name of the stage at a place; empty for the line. */
    public static String stageName(Candidate candidate, int place) {
        return place == 0 ? "" : candidate.stages().get(place - 1).name();
    }

    /** Puts references into words. */
    private static final class Resolver {
        private final Candidate candidate;
        private final Map<String, Design.Input> inputs = new java.util.HashMap<>();
        private final Map<String, Answer.Attribute> attributes = new java.util.HashMap<>();
        private final Map<String, Design.Kind> kinds = new java.util.HashMap<>();

        Resolver(Answer answer, Candidate candidate) {
            this.candidate = candidate;
            answer.inputs().forEach(i -> inputs.put(i.ref(), i));
            answer.figures().forEach(k -> kinds.put(k.id(), k));
            answer.facts().forEach(f -> f.attributes().forEach(a -> attributes.put(a.ref(), a)));
        }

        Read read(String ref) {
            String[] parts = ref.split("/");
            if (parts[0].equals("figure")) {
                return figure(parts[1], Integer.parseInt(parts[2]));
            }
            if (parts[0].equals("window")) {
                return window(Integer.parseInt(parts[1]), parts[2]);
            }
            Design.Input input = inputs.get(ref);
            if (input != null) {
                return new Read(input.label(), input.value(), input.source(), "", input.changed());
            }
            Answer.Attribute attribute = attributes.get(ref);
            return attribute == null
                    ? new Read(ref, "", "", "", false)
                    : new Read(
                            attribute.label(),
                            attribute.value(),
                            attribute.origin().kind(),
                            "fact-" + ref,
                            false);
        }

        private Read figure(String id, int place) {
            Optional<Design.Figure> figure = candidate.design().orElseThrow().figures().stream()
                    .filter(f -> f.figure().equals(id) && f.stage() == place)
                    .findFirst();
            String of = place == 0 ? "" : ", stage " + place;
            return new Read(
                    kinds.get(id).label() + of, figure.map(Design.Figure::text).orElse(""), "", "figure-" + id, false);
        }

        private Read window(int place, String parameter) {
            Answer.Stage stage = candidate.stages().get(place - 1);
            return stage.windows().stream()
                    .filter(w -> w.parameter().equals(parameter))
                    .findFirst()
                    .map(w -> new Read(
                            w.name() + " of stage " + place, w.text(), "window of the stage", "stage-" + place, false))
                    .orElse(new Read(parameter, "", "", "", false));
        }
    }
}
