package org.washwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.engine.Firing;
import org.washwright.quantity.Dimension;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Tasks that differ in one attribute from a task on which a rule fires. */
final class Variants {

    private static final int MOST_SETTLED = 8;
    private static final int MOST_HALVINGS = 60;

    private final Edition edition;
    private final Choices choices;
    private final Rule rule;
    private final Probe probe;

    Variants(Edition edition, Choices choices, Rule rule, Probe probe) {
        this.edition = edition;
        this.choices = choices;
        this.rule = rule;
        this.probe = probe;
    }

    /**
     * A pair of tasks that differ in one attribute.
     *
     * @param edit the attribute
     * @param base the task on which the rule fires
     * @param changed the other task
     * @param seen what the other task made of the rule
     */
    record Variant(TaskEdit edit, CleaningTask base, CleaningTask changed, Probe.Seen seen) {}

    /** Every list closed: a rule that fires still fires, and one that does not is no longer left open by them. */
    static CleaningTask closed(CleaningTask task) {
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        lists.putAll(task.lists());
        for (Group group : Group.values()) {
            if (group.isList()) {
                lists.put(group, new CleaningTask.Entries(task.entries(group).entries(), false));
            }
        }
        return new CleaningTask(task.title(), task.notes(), lists, task.declared());
    }

    /** All variants on which the rule fires or is silent; what it leaves undecided is settled first where that can be done. */
    List<Variant> of(CleaningTask base) {
        List<Variant> out = new ArrayList<>();
        for (TaskEdit edit : TaskEdit.given(base, edition)) {
            Given now = edit.in(base).orElseThrow();
            for (Given other : choices.of(edit)) {
                if (!other.value().equals(now.value())) {
                    variant(edit, base, now, other).ifPresent(out::add);
                }
            }
        }
        return out;
    }

    private Optional<Variant> variant(TaskEdit edit, CleaningTask base, Given now, Given other) {
        CleaningTask changed = edit.set(base, other);
        Optional<Probe.Seen> seen = probe.see(changed);
        if (seen.isEmpty()) {
            return Optional.empty();
        }
        if (seen.get().fires(rule.id()) || seen.get().silent(rule.id())) {
            return Optional.of(new Variant(edit, base, changed, seen.get()));
        }
        return settled(changed, seen.get(), MOST_SETTLED).flatMap(found -> {
            CleaningTask back = edit.set(found.task(), now);
            // Knowing more takes back no firing, but values of several scales may contradict each other.
            return probe.see(back)
                    .filter(s -> s.fires(rule.id()))
                    .map(s -> new Variant(edit, back, found.task(), found.seen()));
        });
    }

    /** A task that knows more, so that the rule surely fails. */
    private Optional<WitnessSearch.Found> settled(CleaningTask task, Probe.Seen seen, int left) {
        if (seen.silent(rule.id())) {
            return Optional.of(new WitnessSearch.Found(task, seen));
        }
        Optional<TaskEdit> edit = seen.firings().stream()
                .sorted(Comparator.comparingInt((Firing f) -> f.held().size()))
                .flatMap(f -> f.held().stream())
                .map(ref -> TaskEdit.of(ref, edition))
                .flatMap(Optional::stream)
                .filter(e -> e.in(task).isEmpty())
                .findFirst();
        if (edit.isEmpty() || left == 0) {
            return Optional.empty();
        }
        Optional<WitnessSearch.Found> best = Optional.empty();
        for (Given given : choices.of(edit.get())) {
            CleaningTask more = edit.get().set(task, given);
            Optional<Probe.Seen> next = probe.see(more).filter(s -> !s.fires(rule.id()));
            boolean better = next.isPresent()
                    && (best.isEmpty()
                            || next.get().firings().size()
                                    < best.get().seen().firings().size());
            if (better) {
                best = Optional.of(new WitnessSearch.Found(more, next.get()));
            }
        }
        return best.flatMap(found -> settled(found.task(), found.seen(), left - 1));
    }

    /** The same pair with its numbers brought together until no value of four figures lies between them. */
    Variant tightened(Variant v) {
        if (!(v.edit().attribute().type() instanceof FieldType.NumberType type)) {
            return v;
        }
        Value fires = v.edit().in(v.base()).orElseThrow().value();
        Value fails = v.edit().in(v.changed()).orElseThrow().value();
        if (!(fires instanceof Value.Number a) || !(fails instanceof Value.Number b)) {
            return v;
        }
        return halved(v, a.span().low(), b.span().low(), type.dimension());
    }

    private Variant halved(Variant start, double from, double to, Dimension dimension) {
        double fires = from;
        double fails = to;
        Variant v = start;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double middle = Choices.snapped((fires + fails) / 2, dimension);
            if (middle == fires || middle == fails) {
                break;
            }
            Given given = Given.of(Value.number(middle), v.edit().pointer());
            CleaningTask base = v.edit().set(v.base(), given);
            CleaningTask changed = v.edit().set(v.changed(), given);
            Optional<Probe.Seen> onBase = probe.see(base);
            Optional<Probe.Seen> onChanged = probe.see(changed);
            if (onBase.isPresent() && onBase.get().fires(rule.id())) {
                v = new Variant(v.edit(), base, v.changed(), v.seen());
                fires = middle;
            } else if (onChanged.isPresent() && onChanged.get().silent(rule.id())) {
                v = new Variant(v.edit(), v.base(), changed, onChanged.get());
                fails = middle;
            } else {
                break;
            }
        }
        return v;
    }
}
