package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.explain.compare.Comparison.AreaChange;
import org.washwright.explain.compare.Comparison.Cause;
import org.washwright.explain.compare.Comparison.CriterionChange;
import org.washwright.explain.compare.Comparison.PointChange;
import org.washwright.explain.compare.Comparison.Span;

/** Points of a process that stands in both answers: which areas differ, and what moved them. */
final class Points {

    /** Differences of points below this come from the order of sums and are none. */
    private static final double EQUAL = 1e-9;

    private final Causes causes;

    Points(Causes causes) {
        this.causes = causes;
    }

    /** A point told by what sets it: a firing without its number, or a figure. */
    private record Key(Optional<Side.FiringKey> firing, String figure) {}

    List<AreaChange> of(Answer.Candidate before, Answer.Candidate after) {
        Map<String, Answer.Area> old = new LinkedHashMap<>();
        before.areas().forEach(a -> old.put(a.area(), a));
        Map<String, Answer.Area> now = new LinkedHashMap<>();
        after.areas().forEach(a -> now.put(a.area(), a));
        Set<String> ids = new LinkedHashSet<>(now.keySet());
        ids.addAll(old.keySet());
        List<AreaChange> out = new ArrayList<>();
        for (String id : ids) {
            area(Optional.ofNullable(old.get(id)), Optional.ofNullable(now.get(id)), before, after)
                    .ifPresent(out::add);
        }
        return List.copyOf(out);
    }

    private Optional<AreaChange> area(
            Optional<Answer.Area> old, Optional<Answer.Area> now, Answer.Candidate before, Answer.Candidate after) {
        Span earlier = old.map(a -> new Span(a.weight(), a.low(), a.high())).orElse(new Span(0, 0, 0));
        Span later = now.map(a -> new Span(a.weight(), a.low(), a.high())).orElse(new Span(0, 0, 0));
        List<CriterionChange> criteria = criteria(
                old.map(Answer.Area::criteria).orElse(List.of()),
                now.map(Answer.Area::criteria).orElse(List.of()),
                before,
                after);
        if (equal(earlier, later) && criteria.isEmpty()) {
            return Optional.empty();
        }
        Set<Cause> found = new LinkedHashSet<>();
        criteria.forEach(c -> c.points().forEach(p -> found.add(p.cause())));
        Answer.Area named = now.or(() -> old).orElseThrow();
        return Optional.of(new AreaChange(
                named.area(), named.name(), earlier, later, criteria, causes.orAsked(List.copyOf(found))));
    }

    private List<CriterionChange> criteria(
            List<Answer.Criterion> before,
            List<Answer.Criterion> after,
            Answer.Candidate earlier,
            Answer.Candidate later) {
        Map<String, Answer.Criterion> old = new LinkedHashMap<>();
        before.forEach(c -> old.put(c.criterion(), c));
        Map<String, Answer.Criterion> now = new LinkedHashMap<>();
        after.forEach(c -> now.put(c.criterion(), c));
        Set<String> ids = new LinkedHashSet<>(now.keySet());
        ids.addAll(old.keySet());
        List<CriterionChange> out = new ArrayList<>();
        for (String id : ids) {
            Optional<Answer.Criterion> a = Optional.ofNullable(old.get(id));
            Optional<Answer.Criterion> b = Optional.ofNullable(now.get(id));
            Span left = a.map(Points::span).orElse(new Span(0, 0, 0));
            Span right = b.map(Points::span).orElse(new Span(0, 0, 0));
            double startLeft = a.map(Answer.Criterion::start).orElse(0.0);
            double startRight = b.map(Answer.Criterion::start).orElse(0.0);
            if (!equal(left, right) || !equal(startLeft, startRight)) {
                List<PointChange> points = points(
                        a.map(Answer.Criterion::points).orElse(List.of()),
                        b.map(Answer.Criterion::points).orElse(List.of()),
                        earlier,
                        later);
                out.add(new CriterionChange(
                        id, b.or(() -> a).orElseThrow().name(), left, right, startLeft, startRight, points));
            }
        }
        return List.copyOf(out);
    }

    private List<PointChange> points(
            List<Answer.Point> before, List<Answer.Point> after, Answer.Candidate earlier, Answer.Candidate later) {
        Map<Key, List<Answer.Point>> old = byKey(before, causes.before());
        Map<Key, List<Answer.Point>> now = byKey(after, causes.after());
        Set<Key> keys = new LinkedHashSet<>(now.keySet());
        keys.addAll(old.keySet());
        List<PointChange> out = new ArrayList<>();
        for (Key key : keys) {
            List<Answer.Point> left = old.getOrDefault(key, List.of());
            List<Answer.Point> right = now.getOrDefault(key, List.of());
            for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
                Optional<Answer.Point> a = i < left.size() ? Optional.of(left.get(i)) : Optional.empty();
                Optional<Answer.Point> b = i < right.size() ? Optional.of(right.get(i)) : Optional.empty();
                change(key, a, b, earlier, later).ifPresent(out::add);
            }
        }
        return List.copyOf(out);
    }

    private Optional<PointChange> change(
            Key key,
            Optional<Answer.Point> a,
            Optional<Answer.Point> b,
            Answer.Candidate earlier,
            Answer.Candidate later) {
        boolean countedBefore = a.map(Answer.Point::counted).orElse(false);
        boolean countedAfter = b.map(Answer.Point::counted).orElse(false);
        double left = a.map(Answer.Point::points).orElse(0.0);
        double right = b.map(Answer.Point::points).orElse(0.0);
        // What counted in neither answer moved nothing.
        boolean moved = countedBefore != countedAfter || countedAfter && !equal(left, right);
        if (!moved) {
            return Optional.empty();
        }
        Answer.Point named = b.or(() -> a).orElseThrow();
        return Optional.of(new PointChange(
                named.text(),
                a.map(Answer.Point::points).orElse(null),
                b.map(Answer.Point::points).orElse(null),
                countedBefore,
                countedAfter,
                key.firing().isPresent() ? rule(a, b) : figure(key.figure(), a, b, earlier, later)));
    }

    private Cause rule(Optional<Answer.Point> a, Optional<Answer.Point> b) {
        String side = a.isEmpty() ? Causes.AFTER : b.isEmpty() ? Causes.BEFORE : Causes.BOTH;
        int n = b.or(() -> a).orElseThrow().firing();
        Cause cause = causes.of(b.isPresent() ? Causes.AFTER : Causes.BEFORE, List.of(n))
                .get(0);
        return new Cause(cause.kind(), cause.id(), cause.name(), side, n, cause.detail());
    }

    private Cause figure(
            String ref,
            Optional<Answer.Point> a,
            Optional<Answer.Point> b,
            Answer.Candidate earlier,
            Answer.Candidate later) {
        String old = a.isEmpty() ? "" : value(ref, causes.before(), earlier);
        String now = b.isEmpty() ? "" : value(ref, causes.after(), later);
        String side = a.isEmpty() ? Causes.AFTER : b.isEmpty() ? Causes.BEFORE : Causes.BOTH;
        String detail = side.equals(Causes.BOTH) && !Objects.equals(old, now) ? old + " → " + now : old + now;
        return new Cause("figure", ref, name(ref), side, 0, side.equals(Causes.BOTH) && old.equals(now) ? now : detail);
    }

    private String name(String ref) {
        String[] parts = ref.split("/");
        if (parts[0].equals("figure")) {
            return causes.after()
                    .kind(parts[1])
                    .or(() -> causes.before().kind(parts[1]))
                    .map(Design.Kind::label)
                    .orElse(parts[1]);
        }
        return causes.after()
                .attribute(ref)
                .or(() -> causes.before().attribute(ref))
                .map(Answer.Attribute::label)
                .orElse(ref);
    }

    private static String value(String ref, Side index, Answer.Candidate candidate) {
        String[] parts = ref.split("/");
        if (!parts[0].equals("figure")) {
            return index.attribute(ref).map(Answer.Attribute::value).orElse("");
        }
        int stage = parts.length > 2 ? Integer.parseInt(parts[2]) : 0;
        return candidate.design().stream()
                .flatMap(d -> d.figures().stream())
                .filter(f -> f.figure().equals(parts[1]) && f.stage() == stage)
                .map(Design.Figure::text)
                .findFirst()
                .orElse("");
    }

    private static Map<Key, List<Answer.Point>> byKey(List<Answer.Point> points, Side index) {
        Map<Key, List<Answer.Point>> out = new LinkedHashMap<>();
        for (Answer.Point p : points) {
            Optional<Side.FiringKey> firing = p.firing() > 0 ? Optional.of(index.key(p.firing())) : Optional.empty();
            out.computeIfAbsent(new Key(firing, firing.isPresent() ? "" : p.figure()), k -> new ArrayList<>())
                    .add(p);
        }
        return out;
    }

    private static Span span(Answer.Criterion c) {
        return new Span(c.weight(), c.low(), c.high());
    }

    private static boolean equal(Span a, Span b) {
        return equal(a.weight(), b.weight()) && equal(a.low(), b.low()) && equal(a.high(), b.high());
    }

    static boolean equal(double a, double b) {
        return Math.abs(a - b) <= EQUAL;
    }
}
