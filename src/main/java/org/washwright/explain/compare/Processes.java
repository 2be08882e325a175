package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.assessment.Answer;
import org.washwright.explain.compare.Comparison.Cause;
import org.washwright.explain.compare.Comparison.ProcessChange;
import org.washwright.explain.compare.Comparison.SentenceChange;
import org.washwright.explain.compare.Comparison.Standing;

/** What became of each process. */
final class Processes {

    private final Causes causes;
    private final Side before;
    private final Side after;
    private final Points points;

    Processes(Causes causes) {
        this.causes = causes;
        this.before = causes.before();
        this.after = causes.after();
        this.points = new Points(causes);
    }

    List<ProcessChange> changes() {
        Set<String> ids = new LinkedHashSet<>(after.standing());
        ids.addAll(before.standing());
        ids.addAll(after.processes());
        ids.addAll(before.processes());
        List<ProcessChange> out = new ArrayList<>();
        ids.forEach(id -> change(id).ifPresent(out::add));
        return List.copyOf(out);
    }

    private Optional<ProcessChange> change(String id) {
        Standing was = before.standing(id);
        Standing is = after.standing(id);
        Optional<Answer.Candidate> a = before.candidate(id);
        Optional<Answer.Candidate> b = after.candidate(id);
        List<SentenceChange> reasons = Passages.between(causes, reasons(before, id), reasons(after, id));
        String name = after.name(id).or(() -> before.name(id)).orElse(id);
        ProcessChange change = a.isPresent() && b.isPresent()
                ? stays(name, was, is, a.get(), b.get(), reasons)
                : new ProcessChange(
                        id,
                        name,
                        was,
                        is,
                        changed(was, is) ? entered(id, was, is) : List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        reasons,
                        List.of());
        return differs(change) ? Optional.of(change) : Optional.empty();
    }

    private static boolean differs(ProcessChange c) {
        return changed(c.before(), c.after())
                || !(c.areas().isEmpty()
                        && c.stages().isEmpty()
                        && c.windows().isEmpty()
                        && c.figures().isEmpty()
                        && c.conditions().isEmpty()
                        && c.reasons().isEmpty()
                        && c.cautions().isEmpty());
    }

    private static boolean changed(Standing a, Standing b) {
        return !a.status().equals(b.status())
                || a.place() != b.place()
                || (a.stands() && b.stands()) && !(Points.equal(a.low(), b.low()) && Points.equal(a.high(), b.high()));
    }

    private static List<Answer.Sentence> reasons(Side index, String id) {
        return index.ruledOut(id).map(Answer.RuledOut::reasons).orElse(List.of());
    }

    /** What lets a process come in or fall out: the rules that rule it out on the side where it is out. */
    private List<Cause> entered(String id, Standing was, Standing is) {
        Set<Cause> found = new LinkedHashSet<>();
        if (!is.stands()) {
            reasons(after, id).forEach(s -> found.addAll(causes.of(Causes.AFTER, s.firings())));
        }
        if (!was.stands()) {
            reasons(before, id).forEach(s -> found.addAll(causes.of(Causes.BEFORE, s.firings())));
        }
        return causes.orAsked(List.copyOf(found));
    }

    private ProcessChange stays(
            String name,
            Standing was,
            Standing is,
            Answer.Candidate a,
            Answer.Candidate b,
            List<SentenceChange> reasons) {
        Lines lines = new Lines(causes, a, b);
        List<Comparison.AreaChange> areas = points.of(a, b);
        List<SentenceChange> conditions = Passages.between(causes, a.conditions(), b.conditions());
        List<Cause> moved = changed(was, is) ? moved(a.process(), was, is, areas, conditions) : List.of();
        return new ProcessChange(
                a.process(),
                name,
                was,
                is,
                moved,
                areas,
                lines.stages(),
                lines.windows(),
                new Sizes(causes, a, b, lines.common()).changes(),
                conditions,
                reasons,
                Passages.between(causes, a.cautions(), b.cautions()));
    }

    private List<Cause> moved(
            String id, Standing was, Standing is, List<Comparison.AreaChange> areas, List<SentenceChange> conditions) {
        Set<Cause> found = new LinkedHashSet<>();
        if (!was.status().equals(is.status())) {
            conditions.forEach(s -> found.addAll(s.causes()));
        }
        areas.forEach(x -> found.addAll(x.causes()));
        if (was.place() != is.place() && found.isEmpty()) {
            // Nothing of its own moved it: others came between or went.
            found.addAll(others(id));
        }
        return causes.orAsked(List.copyOf(found));
    }

    /** Processes that stood behind it, or not at all, and stand before it now, and the other way round. */
    private List<Cause> others(String id) {
        List<String> ahead = ahead(before, id);
        List<String> now = ahead(after, id);
        List<Cause> out = new ArrayList<>();
        now.stream().filter(p -> !ahead.contains(p)).forEach(p -> out.add(process(p, Causes.AFTER)));
        ahead.stream().filter(p -> !now.contains(p)).forEach(p -> out.add(process(p, Causes.BEFORE)));
        return out;
    }

    private static List<String> ahead(Side index, String id) {
        return index.standing().subList(0, index.standing().indexOf(id));
    }

    private Cause process(String id, String side) {
        String name = after.name(id).or(() -> before.name(id)).orElse(id);
        return new Cause("process", id, name, side, 0, "");
    }
}
