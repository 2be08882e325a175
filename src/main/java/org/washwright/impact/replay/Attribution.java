package org.washwright.impact.replay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.explain.compare.Comparison;
import org.washwright.impact.meaning.Difference;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.impact.meaning.Subject;

/**
 * Finds the parts of a change behind the differences of an answer: rules that the comparison of both answers names, and
 * assumptions, terms and criteria among its causes.
 */
final class Attribution {

    private final Map<String, Difference> changed = new TreeMap<>();

    Attribution(MeaningComparison change) {
        change.differences().stream()
                .filter(Difference::meaning)
                .forEach(d -> changed.put(d.subject() + " " + d.id(), d));
    }

    /** Everything of the change by which answers may differ. */
    List<Difference> all() {
        return changed.values().stream().filter(Difference::answers).toList();
    }

    static By by(Difference d) {
        return new By(d.subject(), d.id(), d.name());
    }

    /** What made this answer differ; where something of the change can, wording is left out. */
    List<Difference> of(Comparison c) {
        Set<Difference> found = new LinkedHashSet<>();
        c.rules().forEach(r -> find(Subject.RULE, r.id()).ifPresent(found::add));
        c.processes().forEach(p -> {
            find(Subject.TERM, "process/" + p.process()).ifPresent(found::add);
            causes(p).forEach(cause -> find(Subject.ASSUMPTION, cause.id()).ifPresent(found::add));
            p.areas().forEach(area -> {
                find(Subject.GRADING, area.area()).ifPresent(found::add);
                area.criteria()
                        .forEach(k -> find(Subject.GRADING, area.area() + "/" + k.criterion())
                                .ifPresent(found::add));
            });
            if (!p.areas().isEmpty()) {
                find(Subject.GRADING, "steps").ifPresent(found::add);
            }
            p.stages().forEach(s -> find(Subject.TERM, "stage/" + s.stage()).ifPresent(found::add));
            p.windows().forEach(w -> find(Subject.TERM, "stage/" + w.stage()).ifPresent(found::add));
        });
        List<Difference> weighty = found.stream().filter(Difference::answers).toList();
        return weighty.isEmpty() ? List.copyOf(found) : weighty;
    }

    private static List<Comparison.Cause> causes(Comparison.ProcessChange p) {
        List<Comparison.Cause> out = new ArrayList<>(p.causes());
        p.areas().forEach(a -> out.addAll(a.causes()));
        p.stages().forEach(s -> out.addAll(s.causes()));
        p.windows().forEach(w -> out.addAll(w.causes()));
        p.figures().forEach(f -> out.addAll(f.causes()));
        return out;
    }

    private Optional<Difference> find(Subject subject, String id) {
        return Optional.ofNullable(changed.get(subject + " " + id));
    }
}
