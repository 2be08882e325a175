package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.explain.compare.Comparison.Cause;
import org.washwright.explain.compare.Comparison.FigureChange;

/** Figures of one process in two answers, those that differ as they are shown, each with what of its inputs differs. */
final class Sizes {

    private final Causes causes;
    private final Answer.Candidate before;
    private final Answer.Candidate after;

    /** Place of a stage in the earlier line by its place in the later one; the line itself is 0 in both. */
    private final Map<Integer, Integer> places = new LinkedHashMap<>();

    private final Map<Integer, Integer> back = new LinkedHashMap<>();

    Sizes(Causes causes, Answer.Candidate before, Answer.Candidate after, Map<Integer, Integer> common) {
        this.causes = causes;
        this.before = before;
        this.after = after;
        places.put(0, 0);
        places.putAll(common);
        places.forEach((is, was) -> back.put(was, is));
    }

    private record Key(String figure, int stage) {}

    List<FigureChange> changes() {
        Map<Key, Design.Figure> old = figures(before);
        Map<Key, Design.Figure> now = figures(after);
        List<FigureChange> out = new ArrayList<>();
        now.forEach((key, figure) -> {
            // Of a stage that is new everything is new; that it is there is said once.
            Integer was = places.get(key.stage());
            if (was != null) {
                change(Optional.ofNullable(old.get(new Key(key.figure(), was))), Optional.of(figure))
                        .ifPresent(out::add);
            }
        });
        old.forEach((key, figure) -> {
            Integer is = back.get(key.stage());
            if (is != null && !now.containsKey(new Key(key.figure(), is))) {
                change(Optional.of(figure), Optional.empty()).ifPresent(out::add);
            }
        });
        return List.copyOf(out);
    }

    private static Map<Key, Design.Figure> figures(Answer.Candidate candidate) {
        Map<Key, Design.Figure> out = new LinkedHashMap<>();
        candidate.design().ifPresent(d -> d.figures().forEach(f -> out.put(new Key(f.figure(), f.stage()), f)));
        return out;
    }

    private Optional<FigureChange> change(Optional<Design.Figure> a, Optional<Design.Figure> b) {
        String was = a.map(Design.Figure::text).orElse("");
        String is = b.map(Design.Figure::text).orElse("");
        if (was.equals(is)) {
            return Optional.empty();
        }
        Design.Figure named = b.or(() -> a).orElseThrow();
        Optional<Design.Kind> kind =
                causes.after().kind(named.figure()).or(() -> causes.before().kind(named.figure()));
        List<Answer.Stage> stages = b.isPresent() ? after.stages() : before.stages();
        return Optional.of(new FigureChange(
                named.figure(),
                kind.map(Design.Kind::label).orElse(named.figure()),
                kind.map(Design.Kind::group).orElse(""),
                named.stage() == 0 ? "" : stages.get(named.stage() - 1).name(),
                was,
                is,
                causes.orAsked(inputs(a, b))));
    }

    /** Inputs whose values differ, or that only one of the two was computed from. */
    private List<Cause> inputs(Optional<Design.Figure> a, Optional<Design.Figure> b) {
        Map<String, String> old = new LinkedHashMap<>();
        Map<String, String> own = new LinkedHashMap<>();
        a.ifPresent(f -> f.inputs().forEach(ref -> {
            old.put(later(ref), value(ref, before, causes.before()));
            own.put(later(ref), ref);
        }));
        Map<String, String> now = new LinkedHashMap<>();
        b.ifPresent(f -> f.inputs().forEach(ref -> now.put(ref, value(ref, after, causes.after()))));
        Set<String> refs = new LinkedHashSet<>(now.keySet());
        refs.addAll(old.keySet());
        List<Cause> out = new ArrayList<>();
        for (String ref : refs) {
            String was = old.getOrDefault(ref, "");
            String is = now.getOrDefault(ref, "");
            if (!was.equals(is)) {
                String side =
                        !old.containsKey(ref) ? Causes.AFTER : !now.containsKey(ref) ? Causes.BEFORE : Causes.BOTH;
                String detail = side.equals(Causes.BOTH) ? was + " → " + is : was + is;
                boolean later = now.containsKey(ref);
                String named = later ? ref : own.get(ref);
                out.add(new Cause(kind(named), named, name(named, later), side, 0, detail));
            }
        }
        return out;
    }

    /** A reference of the earlier line as the later one would write it, where the stage stands in both. */
    private String later(String ref) {
        String[] parts = ref.split("/");
        int at = parts[0].equals("figure") ? 2 : parts[0].equals("window") ? 1 : -1;
        if (at < 0) {
            return ref;
        }
        Integer is = back.get(Integer.parseInt(parts[at]));
        parts[at] = is == null ? "-" + parts[at] : String.valueOf(is);
        return String.join("/", parts);
    }

    private static String kind(String ref) {
        return switch (ref.substring(0, Math.max(0, ref.indexOf('/')))) {
            case "figure" -> "figure";
            case "window" -> "window";
            case "assumption" -> "assumption";
            case "part", "lot", "site", "demand", "materials", "features", "soils" -> "task";
            default -> "catalogue";
        };
    }

    private String name(String ref, boolean later) {
        Side index = later ? causes.after() : causes.before();
        String[] parts = ref.split("/");
        if (parts[0].equals("figure")) {
            return index.kind(parts[1]).map(Design.Kind::label).orElse(parts[1]);
        }
        if (parts[0].equals("window")) {
            int place = Integer.parseInt(parts[1]);
            Answer.Stage stage = (later ? after : before).stages().get(place - 1);
            return stage.windows().stream()
                            .filter(w -> w.parameter().equals(parts[2]))
                            .map(Answer.Window::name)
                            .findFirst()
                            .orElse(parts[2])
                    + " of " + stage.name();
        }
        return index.input(ref)
                .map(Design.Input::label)
                .or(() -> index.attribute(ref).map(Answer.Attribute::label))
                .orElse(ref);
    }

    private static String value(String ref, Answer.Candidate candidate, Side index) {
        String[] parts = ref.split("/");
        if (parts[0].equals("figure")) {
            int stage = Integer.parseInt(parts[2]);
            return candidate.design().stream()
                    .flatMap(d -> d.figures().stream())
                    .filter(f -> f.figure().equals(parts[1]) && f.stage() == stage)
                    .map(Design.Figure::text)
                    .findFirst()
                    .orElse("");
        }
        if (parts[0].equals("window")) {
            return candidate.stages().get(Integer.parseInt(parts[1]) - 1).windows().stream()
                    .filter(w -> w.parameter().equals(parts[2]))
                    .map(Answer.Window::text)
                    .findFirst()
                    .orElse("");
        }
        return index.input(ref)
                .map(Design.Input::value)
                .or(() -> index.attribute(ref).map(Answer.Attribute::value))
                .orElse("");
    }
}
