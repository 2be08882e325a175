package org.washwright.editing.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Term;
import org.washwright.exchange.TableVerbs;
import org.washwright.rule.Basis;
import org.washwright.rule.Edition;
import org.washwright.rule.Field;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** What the columns of a table are called, what their cells may hold, and which further columns there could be. */
final class ColumnWords {

    private static final String ANY = "a word, words joined by |, or ! and a word";

    private final Edition words;

    ColumnWords(Edition words) {
        this.words = words;
    }

    /**
     * A column in words.
     *
     * @param label what a reader calls it
     * @param help what its cells may hold
     * @param list which list of words its cells offer; empty for none
     */
    record Described(String label, String help, String list) {}

    /** A word of a list with what it is called. */
    record Word(String id, String name) {
        /** What a reader calls it; the word itself where it has no name. */
        public String shown() {
            return name.isEmpty() ? id : name;
        }
    }

    /** Columns that could be added, of one thing. */
    record Offer(String thing, List<Column> columns) {}

    /** A column that could be added. */
    record Column(String name, String label, String question) {}

    Described describe(String column) {
        int dot = column.indexOf('.');
        if (dot < 0) {
            return argument(column);
        }
        String type = column.substring(0, dot);
        Optional<Field> field = words.types().type(type).flatMap(t -> t.field(column.substring(dot + 1)));
        return field.map(f -> new Described(thing(type) + ": " + f.label(), holds(f.type()), list(f.type())))
                .orElse(new Described(column, "no field of this edition", ""));
    }

    private static Described argument(String column) {
        return switch (column) {
            case "id" -> new Described("rule", "letters, digits and hyphens, used once in the edition", "");
            case "target" -> new Described("speaks of", "a process or a group of them", "process");
            case "criterion" -> new Described("criterion", "one of the grading", "criterion");
            case "points" -> new Described("points", "1, 2 or 3", "points");
            case "role" -> new Described("as", "where in a line it is ruled out", "role");
            case "stage", "after", "before" -> new Described(column, "a stage", "stage");
            case "parameter" -> new Described("setting", "a parameter of the stage", "parameter");
            case "min" -> new Described("at least", "a quantity with its unit", "");
            case "max" -> new Described("at most", "a quantity with its unit", "");
            case "hazard" -> new Described("hazard", "one of the catalogue", "hazard");
            case "method" -> new Described("test", "a test method", "test-method");
            case "conclusion" -> new Described("conclusion", "one of the catalogue", "conclusion");
            case "reason" -> new Described("because", "one sentence; {$soil.kind} and the like name what was met", "");
            case "basis" -> new Described("basis", "where this row comes from", "basis");
            case "source" ->
                new Described("source", "a source of the edition, then a comma and the place in it", "source");
            default -> new Described(column, "", "");
        };
    }

    private String thing(String type) {
        return Group.byFactType(type)
                .map(Group::label)
                .orElse(type.toLowerCase(java.util.Locale.ROOT).replaceFirst("^.*/", ""));
    }

    private static String holds(FieldType type) {
        if (type instanceof FieldType.NumberType n) {
            return "a sign and a quantity, for instance > " + n.dimension().example();
        }
        return type instanceof FieldType.TermType t && t.isFlag() ? "yes or no" : ANY;
    }

    private static String list(FieldType type) {
        return type instanceof FieldType.TermType t ? t.kind() : "";
    }

    /** The words of a list. */
    List<Word> list(String list) {
        return switch (list) {
            case "flag" -> List.of(new Word("yes", ""), new Word("no", ""));
            case "points" -> List.of(new Word("1", "a little"), new Word("2", "clearly"), new Word("3", "strongly"));
            case "criterion" ->
                words.grading().areas().stream()
                        .flatMap(a -> a.criteria().stream())
                        .map(c -> new Word(c.id(), c.name()))
                        .toList();
            case "role" ->
                TableVerbs.roles().entrySet().stream()
                        .map(e -> new Word(e.getKey(), e.getValue()))
                        .toList();
            case "basis" ->
                Arrays.stream(Basis.values()).map(b -> new Word(b.word(), "")).toList();
            case "source" ->
                words.sources().values().stream()
                        .map(s -> new Word(s.id(), s.title()))
                        .toList();
            default -> terms(list);
        };
    }

    private List<Word> terms(String kind) {
        List<Word> out = new ArrayList<>();
        words.catalogue().ofKind(kind).values().stream()
                .filter(t -> !t.isWithdrawn())
                .map((Term t) -> new Word(t.id(), t.name()))
                .forEach(out::add);
        if (kind.equals("process")) {
            out.add(new Word("$process", "the process that the row speaks of"));
        }
        return out;
    }

    /** Columns that a table of this verb could have and has not. */
    List<Offer> offers(String verb, List<String> there) {
        Map<String, List<Column>> byThing = new LinkedHashMap<>();
        words.types().byName().forEach((type, fact) -> {
            List<Column> columns = fact.fields().values().stream()
                    .filter(f -> !(f.type() instanceof FieldType.FactType || f.type() instanceof FieldType.CodeType))
                    .map(f -> new Column(type + "." + f.name(), f.label(), question(type, f)))
                    .filter(c -> !there.contains(c.name()))
                    .toList();
            if (!columns.isEmpty()) {
                byThing.merge(thing(type), columns, (a, b) -> {
                    List<Column> both = new ArrayList<>(a);
                    both.addAll(b);
                    return both;
                });
            }
        });
        List<Offer> out = new ArrayList<>();
        List<Column> said = TableVerbs.columns(verb).stream()
                .filter(c -> !there.contains(c))
                .map(c -> new Column(c, argument(c).label(), argument(c).help()))
                .toList();
        if (!said.isEmpty()) {
            out.add(new Offer("what a row says", said));
        }
        new TreeMap<>(byThing).forEach((thing, columns) -> out.add(new Offer(thing, columns)));
        return out;
    }

    private static String question(String type, Field field) {
        return Group.byFactType(type)
                .flatMap(g -> g.attribute(field.attribute()))
                .map(Attribute::question)
                .orElse("");
    }
}
