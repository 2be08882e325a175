package org.washwright.taskfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** What can be said of a task by the words of an edition, line by line: what templates and written tables list. */
final class TaskForms {

    private final Edition edition;

    TaskForms(Edition edition) {
        this.edition = edition;
    }

    /** A name with what is asked and what may be written. */
    record Line(String path, String question, String mayBe, Optional<FieldType> type) {}

    /** Everything of which a task says one thing. */
    List<Line> single() {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("title", "What do you call it?", "any text", Optional.empty()));
        lines.add(new Line("notes", "Anything else (no rule reads it)", "any text", Optional.empty()));
        for (Group group : Group.values()) {
            if (group.isList()) {
                lines.add(open(group));
            } else {
                attributes(group).forEach(a -> lines.add(line(group.key() + "/" + a.name(), a)));
            }
        }
        edition.declaredAttributes().values().forEach(a -> lines.add(line("attributes/" + a.name(), a)));
        return lines;
    }

    /** Whether there may be more entries of a list than those given. */
    Line open(Group group) {
        return new Line(
                group.key() + "/" + TaskPaths.OPEN,
                group.heading() + ": may there be more than those listed?",
                "yes or no; \"no\" and nothing listed says that there are none",
                Optional.of(FieldType.flag()));
    }

    /** The attributes of one entry of a group. */
    List<Line> entry(Group group, String prefix) {
        return attributes(group).stream().map(a -> line(prefix + a.name(), a)).toList();
    }

    private static List<Attribute> attributes(Group group) {
        return group.attributes().stream().filter(a -> !a.computed()).toList();
    }

    private Line line(String path, Attribute attribute) {
        return new Line(path, attribute.question(), mayBe(attribute.type()), Optional.of(attribute.type()));
    }

    String mayBe(FieldType type) {
        if (type instanceof FieldType.NumberType n) {
            return n.dimension().label() + ", for instance " + n.dimension().example();
        }
        if (type instanceof FieldType.TermType t) {
            return String.join(", ", words(t));
        }
        return type.describe();
    }

    /** The words that a term attribute takes, ids as files write them. */
    List<String> words(FieldType.TermType type) {
        return type.isFlag()
                ? List.of(FieldType.YES, FieldType.NO)
                : edition.catalogue().ofKind(type.kind()).values().stream()
                        .filter(t -> !t.isWithdrawn())
                        .map(t -> t.id())
                        .toList();
    }

    /** Words of every kind that a task can use, by kind. */
    Map<String, List<String>> words() {
        List<Line> all = new ArrayList<>(single());
        for (Group group : Group.values()) {
            all.addAll(entry(group, ""));
        }
        return all.stream()
                .flatMap(l -> l.type().stream())
                .filter(FieldType.TermType.class::isInstance)
                .map(FieldType.TermType.class::cast)
                .distinct()
                .collect(Collectors.toMap(FieldType.TermType::kind, this::words, (a, b) -> a, java.util.TreeMap::new));
    }
}
