package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Similar;
import org.washwright.task.Attribute;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/**
 * The place in a task that a change names, whatever the task holds.
 *
 * @param kind what stands there
 * @param group its group; empty for an attribute that the edition declares
 * @param index which entry of a list, from 0; 0 otherwise
 * @param attribute the attribute; the first one for an entry in short form; empty for a group or its open end
 */
record Spot(Kind kind, Optional<Group> group, int index, Optional<Attribute> attribute) {

    /** What a place can be. */
    enum Kind {
        GROUP,
        OPEN,
        ENTRY,
        ATTRIBUTE
    }

    static final String DECLARED = "attributes";
    static final String OPEN = "open";

    /** The place; empty after an error. */
    static Optional<Spot> of(Change change, Vocabulary vocabulary, Diagnostics diagnostics) {
        String pointer = change.pointer();
        if (!pointer.startsWith("/")) {
            return nowhere(change, diagnostics, "Write a JSON pointer such as /following/operation");
        }
        List<String> steps = Arrays.asList(pointer.substring(1).split("/", -1));
        if (steps.get(0).equals(DECLARED)) {
            return declared(change, steps, vocabulary, diagnostics);
        }
        Optional<Group> group = Group.byKey(steps.get(0));
        if (group.isEmpty()) {
            List<String> keys = new ArrayList<>(List.of(DECLARED));
            Arrays.stream(Group.values()).map(Group::key).forEach(keys::add);
            return nowhere(change, diagnostics, Similar.advice(steps.get(0), keys));
        }
        if (steps.size() == 1) {
            return Optional.of(new Spot(Kind.GROUP, group, 0, Optional.empty()));
        }
        return group.get().isList()
                ? listed(change, group.get(), steps, diagnostics)
                : attribute(change, group.get(), 0, steps, 1, diagnostics);
    }

    private static Optional<Spot> declared(
            Change change, List<String> steps, Vocabulary vocabulary, Diagnostics diagnostics) {
        Optional<Attribute> known = steps.size() == 2
                ? Optional.ofNullable(vocabulary.declaredAttributes().get(steps.get(1)))
                : Optional.empty();
        return known.isPresent()
                ? Optional.of(new Spot(Kind.ATTRIBUTE, Optional.empty(), 0, known))
                : nowhere(
                        change,
                        diagnostics,
                        Similar.advice(
                                steps.size() > 1 ? steps.get(1) : "",
                                vocabulary.declaredAttributes().keySet()));
    }

    private static Optional<Spot> listed(Change change, Group group, List<String> steps, Diagnostics diagnostics) {
        String step = steps.get(1);
        if (step.equals(OPEN) && steps.size() == 2) {
            return Optional.of(new Spot(Kind.OPEN, Optional.of(group), 0, Optional.empty()));
        }
        if (!step.matches("0|[1-9][0-9]{0,8}")) {
            return nowhere(
                    change,
                    diagnostics,
                    "Count entries from 0, for instance /" + group.key() + "/0/"
                            + group.attributes().get(0).name());
        }
        int index = Integer.parseInt(step);
        if (index >= group.cap()) {
            diagnostics.add(
                    Message.OUT_OF_RANGE,
                    change.value().place(),
                    change.pointer(),
                    "entries 0 to " + (group.cap() - 1));
            return Optional.empty();
        }
        return steps.size() == 2
                ? Optional.of(new Spot(
                        Kind.ENTRY,
                        Optional.of(group),
                        index,
                        Optional.of(group.attributes().get(0))))
                : attribute(change, group, index, steps, 2, diagnostics);
    }

    private static Optional<Spot> attribute(
            Change change, Group group, int index, List<String> steps, int at, Diagnostics diagnostics) {
        String name = String.join("/", steps.subList(at, steps.size()));
        Optional<Attribute> attribute = group.attribute(name);
        if (attribute.isPresent() && attribute.get().computed()) {
            diagnostics.add(
                    Message.CHANGE_COMPUTED,
                    change.value().place(),
                    change.pointer(),
                    attribute.get().question());
            return Optional.empty();
        }
        return attribute.isPresent()
                ? Optional.of(new Spot(Kind.ATTRIBUTE, Optional.of(group), index, attribute))
                : nowhere(
                        change,
                        diagnostics,
                        Similar.advice(
                                name,
                                group.attributes().stream()
                                        .filter(a -> !a.computed())
                                        .map(Attribute::name)
                                        .toList()));
    }

    static Optional<Spot> nowhere(Change change, Diagnostics diagnostics, Object advice) {
        diagnostics.add(Message.CHANGE_POINTER, change.value().place(), change.pointer(), advice);
        return Optional.empty();
    }

    boolean isList() {
        return group.filter(Group::isList).isPresent();
    }

    /** How rules call what the attribute belongs to. */
    String factType() {
        return group.map(Group::factType).orElse("Attribute");
    }

    /** The place in a task's usual form. */
    String pointer() {
        return group.map(g -> "/" + g.key() + (g.isList() ? "/" + index : "")).orElse("/" + DECLARED) + "/"
                + attribute.orElseThrow().name();
    }
}
