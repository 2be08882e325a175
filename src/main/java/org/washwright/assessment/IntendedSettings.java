package org.washwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.IntendedVerdict.Setting;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Parameter;
import org.washwright.engine.Words;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;
import org.washwright.line.Window;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.task.Attribute;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Holds what was said of temperature, time and so on against the windows of a main stage. */
final class IntendedSettings {

    static final String WITHIN = "within";
    static final String PARTLY = "partly outside";
    static final String OUTSIDE = "outside";
    static final String NOT_GIVEN = "not given";
    static final String NO_WINDOW = "no window";

    private static final int FIGURES = 4;

    private final Catalogue catalogue;
    private final Words words;
    private final Entry entry;

    IntendedSettings(Catalogue catalogue, Entry entry) {
        this.catalogue = catalogue;
        this.words = new Words(catalogue);
        this.entry = entry;
    }

    /** What was given, each as name and value; nothing of what is unknown or does not apply. */
    List<String> given() {
        return numbers().stream()
                .filter(a -> entry.value(a.name()) instanceof Value.Number)
                .map(a -> name(a) + " " + text(a))
                .toList();
    }

    /** Everything given, and everything not known for which the main stage has a window; what does not apply is left out. */
    List<Setting> of(ProcessLine line) {
        Map<String, Window> windows = line.steps().stream()
                .filter(s -> s.stage().isEmpty())
                .findFirst()
                .map(PlacedStage::windows)
                .orElse(Map.of());
        List<Setting> out = new ArrayList<>();
        for (Attribute a : numbers()) {
            Optional<Window> window = parameter(a).map(p -> windows.get(p.id()));
            Value value = entry.value(a.name());
            boolean known = value instanceof Value.Number;
            if (known || (value instanceof Value.Unknown && window.isPresent())) {
                out.add(new Setting(
                        a.name(),
                        name(a),
                        text(a),
                        state(value, window),
                        window.map(w -> text(w, dimension(a))).orElse(""),
                        window.map(Window::by).orElse(List.of())));
            }
        }
        return out;
    }

    /** One condition for each setting that is not wholly within its window. */
    static List<Answer.Sentence> conditions(List<Setting> settings) {
        return settings.stream()
                .filter(s -> s.state().equals(PARTLY) || s.state().equals(OUTSIDE))
                .map(s -> new Answer.Sentence(
                        s.name() + " " + s.given() + ": keep it " + place(s.window()) + ".", s.firings()))
                .toList();
    }

    private static String place(String window) {
        return window.startsWith("at ") ? window : (window.contains(" to ") ? "within " : "at ") + window;
    }

    private static String state(Value value, Optional<Window> window) {
        if (!(value instanceof Value.Number n)) {
            return NOT_GIVEN;
        }
        if (window.isEmpty()) {
            return NO_WINDOW;
        }
        Span given = n.span();
        Window w = window.get();
        if (w.low() <= given.low() && given.high() <= w.high()) {
            return WITHIN;
        }
        return given.low() <= w.high() && w.low() <= given.high() ? PARTLY : OUTSIDE;
    }

    /** The parameter of the edition that an attribute speaks of: the same word, and of the same dimension. */
    private Optional<Parameter> parameter(Attribute a) {
        String id = a.name().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
        return Optional.ofNullable(catalogue.parameters().get(id)).filter(p -> p.dimension() == dimension(a));
    }

    private String name(Attribute a) {
        return parameter(a).map(p -> p.term().name()).orElse(a.label());
    }

    private String text(Attribute a) {
        return words.value(entry.value(a.name()), a.type(), Words.GIVEN);
    }

    /** A window that is closed belongs to a process that is out or hangs on why it is closed. */
    private static String text(Window w, Dimension dimension) {
        return w.isClosed() ? "none" : Quantities.write(new Span(w.low(), w.high()), dimension, FIGURES);
    }

    private static Dimension dimension(Attribute a) {
        return ((FieldType.NumberType) a.type()).dimension();
    }

    private static List<Attribute> numbers() {
        return Group.INTENDED.attributes().stream()
                .filter(a -> a.type() instanceof FieldType.NumberType)
                .toList();
    }
}
