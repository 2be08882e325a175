package org.washwright.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.ExactText;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Value;

/** Values worth trying for an attribute: every term, and of numbers those at and around what rules ask for. */
public final class Choices {

    private static final List<String> SIZE_CLASSES =
            List.of("B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L", "M", "N");

    /** Levels of particles and of residue across their usual range, from IEST-STD-CC1246. */
    private static final List<String> PRODUCT_LEVELS = List.of(
            "1", "5", "25", "50", "100", "200", "300", "500", "750", "1000", "A/10", "A/2", "A", "B", "C", "200B");

    /** Steps from a usual value of a quantity that starts at zero. */
    private static final double[] FACTORS = {1, 3, 0.3, 10, 0.1, 100, 0.01, 1e4, 1e-4};

    /** Steps from a usual value of a scale. */
    private static final double[] STEPS = {0, -5, 10, -20, 40, -60, 120, 400, -400};

    /** How far beyond the last threshold of a scale one tries, in its unit, and into how many parts a larger number is cut. */
    private static final double BEYOND_SCALE = 10;

    private static final double BEYOND_DAYS = 365;

    private final Edition edition;
    private final Map<String, TreeSet<Double>> thresholds = new TreeMap<>();

    /** Choices by the rules of an edition. */
    public Choices(Edition edition) {
        this.edition = edition;
        edition.rules()
                .forEach(r -> r.patterns()
                        .forEach(p -> p.condition().tests().forEach(t -> {
                            if (t.operand() instanceof Condition.Operand.Number n) {
                                thresholds
                                        .computeIfAbsent(
                                                p.type().name() + "/"
                                                        + t.field().name(),
                                                k -> new TreeSet<>())
                                        .add(n.si());
                            }
                        })));
    }

    /** Values for a place in a task, the most telling first. */
    public List<Given> of(TaskEdit edit) {
        Attribute attribute = edit.attribute();
        List<Given> out = new ArrayList<>();
        if (attribute.type() instanceof FieldType.TermType t) {
            List<String> terms = t.isFlag()
                    ? List.of(FieldType.YES, FieldType.NO)
                    : List.copyOf(new TreeSet<>(edition.terms(t.kind())));
            terms.forEach(id -> out.add(Given.of(Value.term(id), edit.pointer())));
        } else if (attribute.type() instanceof FieldType.NumberType n) {
            numbers(edit, n.dimension()).forEach(v -> out.add(Given.of(Value.number(v), edit.pointer())));
        } else {
            codes(attribute.type())
                    .forEach(code -> out.add(new Given(Value.term(code), edit.pointer(), "", false, code)));
        }
        out.add(Given.of(Value.NOT_APPLICABLE, edit.pointer()));
        return out;
    }

    /**
     * Numbers that rules tell apart at a place, in SI and rising: one between each two neighbouring thresholds and one beyond
     * each end, as one would write them. Empty when no rule compares that attribute itself with a number.
     */
    public List<Double> between(TaskEdit edit) {
        if (!(edit.attribute().type() instanceof FieldType.NumberType n)) {
            return List.of();
        }
        List<Double> tested = List.copyOf(thresholds.getOrDefault(key(edit), new TreeSet<>()));
        Set<Double> out = new TreeSet<>();
        for (int i = 0; i < tested.size(); i++) {
            double here = tested.get(i);
            if (i == 0) {
                out.add(beyond(here, n.dimension(), -1));
            }
            out.add(
                    i + 1 < tested.size()
                            ? middle(here, tested.get(i + 1), n.dimension())
                            : beyond(here, n.dimension(), 1));
        }
        out.removeIf(v -> !writable(v, n.dimension()));
        return List.copyOf(out);
    }

    /** The number between two others with as few figures as tell it from both. */
    private static double middle(double low, double high, Dimension dimension) {
        double rough = snapped((low + high) / 2, dimension);
        return low < rough && rough < high ? rough : (low + high) / 2;
    }

    private static double beyond(double si, Dimension dimension, int direction) {
        if (dimension == Dimension.DATE) {
            return si + direction * BEYOND_DAYS;
        }
        double amount = Quantities.fromSi(si, dimension.defaultUnit(), dimension);
        boolean scale = amount <= 0 || Quantities.lowest(dimension) != 0;
        double step = Math.max(BEYOND_SCALE, Math.abs(amount) / BEYOND_SCALE);
        return toSi(scale ? amount + direction * step : direction > 0 ? amount * 2 : amount / 2, dimension);
    }

    private static boolean writable(double si, Dimension dimension) {
        return si >= Quantities.lowest(dimension) && !(dimension == Dimension.TEMPERATURE && si < 0);
    }

    private static List<String> codes(FieldType type) {
        if (!(type instanceof FieldType.CodeType code)) {
            return List.of();
        }
        return switch (code.code()) {
            case COMPONENT_CLEANLINESS ->
                SIZE_CLASSES.stream().map(c -> "A(" + c + "00)").toList();
            case PRODUCT_CLEANLINESS -> PRODUCT_LEVELS;
        };
    }

    private static String key(TaskEdit edit) {
        return edit.group()
                .map(g -> g.factType() + "/" + edit.attribute().name())
                .orElse(FactTypes.declared(edit.attribute().name()) + "/value");
    }

    private Set<Double> numbers(TaskEdit edit, Dimension dimension) {
        Map<Double, Boolean> out = new LinkedHashMap<>();
        for (double t : thresholds.getOrDefault(key(edit), new TreeSet<>())) {
            out.put(t, true);
            out.put(beside(t, dimension, 1), true);
            out.put(beside(t, dimension, -1), true);
        }
        double usual = read(dimension.example(), dimension);
        boolean fromZero = Quantities.lowest(dimension) == 0;
        double unit = fromZero ? 0 : read(ExactText.of(usual, dimension), dimension);
        for (int i = 0; i < FACTORS.length; i++) {
            out.put(fromZero ? usual * FACTORS[i] : unit + STEPS[i], true);
        }
        out.keySet().removeIf(v -> !writable(v, dimension));
        // Only what can be written and read back is worth trying.
        Set<Double> written = new java.util.LinkedHashSet<>();
        out.keySet().forEach(v -> written.add(snapped(v, dimension)));
        return written;
    }

    /** The next value above or below that one would write: a step in its third figure. */
    static double beside(double si, Dimension dimension, int direction) {
        if (dimension == Dimension.DATE) {
            return si + direction;
        }
        double amount = Quantities.fromSi(si, dimension.defaultUnit(), dimension);
        double step = amount == 0 ? 0.01 : Math.pow(10, Math.floor(Math.log10(Math.abs(amount))) - 2);
        return toSi(amount + direction * step, dimension);
    }

    /** The value with four figures. */
    static double snapped(double si, Dimension dimension) {
        return dimension == Dimension.DATE
                ? Math.rint(si)
                : toSi(Quantities.fromSi(si, dimension.defaultUnit(), dimension), dimension);
    }

    private static double toSi(double amount, Dimension dimension) {
        java.math.BigDecimal rounded = new java.math.BigDecimal(amount).round(new java.math.MathContext(4));
        return Quantities.toSi(rounded.toPlainString(), dimension.defaultUnit(), dimension) + 0.0;
    }

    private static double read(String text, Dimension dimension) {
        return Quantities.read(text, dimension, Place.ofFile("-"), new Diagnostics())
                .orElseThrow();
    }
}
