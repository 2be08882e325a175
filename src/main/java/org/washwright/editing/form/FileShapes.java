package org.washwright.editing.form;

import static org.washwright.editing.form.FieldSpec.choice;
import static org.washwright.editing.form.FieldSpec.list;
import static org.washwright.editing.form.FieldSpec.sentence;
import static org.washwright.editing.form.FieldSpec.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Property;
import org.washwright.document.edit.Data;
import org.washwright.rule.Edition;
import org.washwright.task.FieldType;

/** Which forms a file has. */
final class FileShapes {

    private static final String TERMS = "/terms";
    private static final FieldSpec ID = text("/id", "Id", "Letters a to z, digits and hyphens; rules name it by this");
    private static final FieldSpec SOURCE =
            text("/source", "Source", "A source of the edition, then a comma and the place in it; or: assumption");

    private final Choices choices;
    private final Optional<Edition> words;

    FileShapes(Optional<Edition> words) {
        this.words = words;
        this.choices = new Choices(words);
    }

    /** The shape of a file; empty when it has no forms. */
    Optional<FileShape> of(String path, Data data) {
        return switch (path) {
            case "edition.yaml" -> Optional.of(new FileShape("source", List.of("/sources"), source(), edition()));
            case "assumptions.yaml" ->
                Optional.of(new FileShape("assumption", List.of("/assumptions"), assumption(), List.of()));
            case "grading.yaml" -> Optional.of(grading(data));
            case "catalogue/attributes.yaml" ->
                Optional.of(new FileShape("attribute", List.of("/attributes"), attribute(), List.of()));
            default ->
                data.at("/kind")
                        .filter(kind -> path.startsWith("catalogue/"))
                        .map(kind ->
                                new FileShape(kindName(kind.text()), List.of(TERMS), term(kind.text()), List.of()));
        };
    }

    private String kindName(String kind) {
        return words.map(w -> w.catalogue().kinds().get(kind)).map(Kind::name).orElse("term");
    }

    private static List<FieldSpec> edition() {
        return List.of(
                text("/name", "Name", "Of the rulebook, in its addresses"),
                text("/title", "Title", "What a reader calls it"),
                text("/language", "Language", "As a code, for instance en"),
                text("/licence", "Licence", "By which others may use it"));
    }

    private static List<FieldSpec> source() {
        return List.of(
                text("/id", "Id", "Short, as rules cite it"),
                text("/title", "Title", "As printed"),
                text("/year", "Year", ""),
                text("/locator", "Publisher and place", "Publisher, sections or pages"),
                choice("/seen", "Seen", "Whether the pages relied on were read", Choices.of("yes", "from memory")));
    }

    private static List<FieldSpec> assumption() {
        return List.of(
                ID,
                text("/label", "What it is", ""),
                text("/value", "Value", "A quantity or a range with its unit, for instance 20..30 °C"),
                SOURCE,
                sentence("/note", "Note", ""));
    }

    private List<FieldSpec> attribute() {
        return List.of(
                ID,
                text("/label", "Label", "As a table heads it"),
                text("/question", "Question", "As one would ask it on the shop floor"),
                choice("/quantity", "It is a quantity of", "One of these three", Choices.dimensions()),
                text("/unit", "usually written in", "A unit, for a quantity"),
                choice("/kind", "or a word of the kind", "", choices.kinds()),
                choice("/flag", "or yes or no", "", Choices.of("yes")));
    }

    private static FileShape grading(Data data) {
        List<String> lists = new ArrayList<>(List.of("/areas"));
        if (data.at("/areas").orElse(Data.one("")) instanceof Data.Many areas) {
            for (int i = 0; i < areas.items().size(); i++) {
                lists.add("/areas/" + i + "/criteria");
            }
        }
        List<FieldSpec> fields = List.of(
                ID,
                text("/name", "Name", ""),
                text("/weight", "Weight", "Against its neighbours; 0 counts for nothing"),
                text("/start", "Starts at", "Points from 0 to 100 before anything speaks for or against it"),
                text(
                                "/figure/of",
                                "Figure",
                                "A property such as medium.flashPoint, or a figure of the line such as line.cost-per-area")
                        .under("Points from a figure"),
                new FieldSpec(
                        "/figure/curve",
                        "Curve",
                        "A breakpoint a line, rising: 10 mg/m3 = 20",
                        FieldSpec.Shape.CURVE,
                        List.of(),
                        "Points from a figure"));
        return new FileShape(
                "area or criterion",
                lists,
                fields,
                List.of(
                        text("/steps/1", "A little", "Points that a support or an oppose of 1 moves a criterion"),
                        text("/steps/2", "Clearly", "of 2"),
                        text("/steps/3", "Strongly", "of 3")));
    }

    private List<FieldSpec> term(String kind) {
        List<FieldSpec> out = new ArrayList<>(List.of(
                ID,
                text("/name", "Name", "What a reader calls it"),
                sentence("/definition", "Definition", "In a sentence"),
                list("/synonyms", "Also called", "One a line"),
                choice(
                        "/replacedBy",
                        "Withdrawn; use instead",
                        "A withdrawn term stays readable",
                        choices.terms(kind))));
        out.addAll(extra(kind));
        words.map(w -> w.catalogue().kinds().get(kind))
                .ifPresent(k -> k.properties().values().forEach(p -> out.add(property(p))));
        return out;
    }

    private FieldSpec property(Property property) {
        List<Choices.Choice> some = property.type() instanceof FieldType.TermType t
                ? t.isFlag() ? Choices.of("yes", "no", "unknown") : choices.terms(t.kind())
                : List.of();
        String help = property.type() instanceof FieldType.NumberType n
                ? "a quantity or a range, for instance " + n.dimension().example() + "; or unknown"
                : property.type() instanceof FieldType.TermType t && t.isFlag()
                        ? "yes or no; empty where it does not apply"
                        : "a word; several joined by | where it is not certain";
        return new FieldSpec(
                "/properties/" + property.id(), property.label(), help, FieldSpec.Shape.VALUE, some, "Properties");
    }

    private List<FieldSpec> extra(String kind) {
        return switch (kind) {
            case "process" -> {
                List<FieldSpec> out = new ArrayList<>(List.of(
                        choice("/parent", "Belongs to", "A node of the process tree", choices.terms(kind)),
                        choice(
                                "/group",
                                "A group",
                                "yes for a node that is no process itself",
                                Choices.of("yes", "no")),
                        text("/phrase", "As a headline says it", "Imperative")));
                out.addAll(setting());
                yield out;
            }
            case "stage" -> {
                List<FieldSpec> out = new ArrayList<>(List.of(
                        text("/position", "Position", "A number; main stages stand at 100"),
                        choice("/cleaning", "Takes soil off", "", Choices.of("yes", "no")),
                        text("/phrase", "As a headline says it", "Imperative"),
                        list("/alternatives", "Instead of it", "Ids of stages, one a line")));
                out.addAll(setting());
                yield out;
            }
            case "parameter" ->
                List.of(
                        choice("/quantity", "Quantity", "", Choices.dimensions()),
                        text("/unit", "Unit", ""),
                        text("/scale", "Scale", "The range it can have in this trade: low..high"),
                        choice("/factor", "Factor", "", Choices.of(Catalogue.FACTORS.toArray(String[]::new))));
            case "hazard" ->
                List.of(sentence(
                        "/caution",
                        "Caution",
                        "The usual caution in one sentence; it defers to the safety data sheet"));
            case "test-method" -> List.of(sentence("/blindTo", "Can’t see", ""));
            default -> List.of();
        };
    }

    private List<FieldSpec> setting() {
        List<FieldSpec> out = new ArrayList<>();
        Catalogue.FACTORS.forEach(
                f -> out.add(text("/factors/" + f, f, "In words").under("The four factors")));
        words.ifPresent(w -> w.catalogue()
                .parameters()
                .values()
                .forEach(p -> out.add(text(
                                "/windows/" + p.term().id(),
                                p.term().name(),
                                "A range, for instance " + p.dimension().example())
                        .under("Windows"))));
        return out;
    }
}
