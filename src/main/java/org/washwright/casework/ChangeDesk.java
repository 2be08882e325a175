package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.assessment.Wanted;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Hashes;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.explain.compare.Change;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.TaskWriter;

/**
 * The task form for a few attributes at a time. Field names are those of the task form; {@code change} names the fields that
 * are being changed, {@code set} holds changes that need no typing.
 */
@ApplicationScoped
public class ChangeDesk {
    /** Field that names an attribute being changed. */
    public static final String CHANGE = "change";

    /** Field, and query parameter, that holds a change as it is written. */
    public static final String SET = "set";

    private static final int MOST = 60;

    private final Tasks tasks;
    private final UnitChoices units;

    ChangeDesk(Tasks tasks, UnitChoices units) {
        this.tasks = tasks;
        this.units = units;
    }

    /** The fields as these changes would have been typed; places that are none are left out. */
    public Map<String, List<String>> typed(KeptAnswer kept, List<Change> changes) {
        FormFields fields = FormFields.empty();
        List<String> names = new ArrayList<>();
        List<String> steps = new ArrayList<>();
        for (Change change : changes) {
            String name = fieldName(change.pointer());
            Optional<Attribute> attribute = attribute(name, kept.edition());
            if (attribute.isPresent() && isTyped(change)) {
                names.add(name);
                fields = FormReader.value(
                        fields.silent(name), name, attribute.get().type(), Optional.of(change.value()), kept.edition());
            } else {
                steps.add(change.text());
            }
        }
        return fields.with(CHANGE, names).with(SET, steps).values();
    }

    private static boolean isTyped(Change change) {
        return change.value() instanceof Node.ScalarNode || change.value() instanceof Node.ListNode;
    }

    /** The fields with one more attribute, which starts with what the task says, or one more step. */
    public Map<String, List<String>> picked(
            UUID workspace, KeptAnswer kept, Map<String, List<String>> posted, String pick) {
        FormFields fields = FormFields.of(posted);
        if (pick.startsWith("/")) {
            return with(fields, SET, pick).values();
        }
        if (attribute(pick, kept.edition()).isEmpty() || fields.all(CHANGE).contains(pick)) {
            return fields.values();
        }
        FormFields said = said(workspace, kept);
        for (Map.Entry<String, List<String>> e : said.values().entrySet()) {
            if (e.getKey().equals(pick)
                    || e.getKey().startsWith(pick + ".") && !e.getKey().endsWith(".tree")) {
                fields = fields.with(e.getKey(), e.getValue());
            }
        }
        return with(fields, CHANGE, pick).values();
    }

    /** The fields without an attribute or a step. */
    public Map<String, List<String>> dropped(Map<String, List<String>> posted, String drop) {
        FormFields fields = FormFields.of(posted);
        String list = drop.startsWith("/") ? SET : CHANGE;
        List<String> left =
                fields.all(list).stream().filter(x -> !x.equals(drop)).toList();
        return (list.equals(CHANGE) ? fields.silent(drop) : fields)
                .with(list, left)
                .values();
    }

    private static FormFields with(FormFields fields, String list, String one) {
        Set<String> all = new LinkedHashSet<>(fields.all(list));
        all.add(one);
        return fields.with(list, all.stream().limit(MOST).toList());
    }

    /** What was typed as changes, in the order of the form. */
    public List<Change> changes(KeptAnswer kept, Map<String, List<String>> posted, Diagnostics diagnostics) {
        FormFields fields = FormFields.of(posted);
        Place here = Place.ofFile(ProblemErrors.BODY);
        List<Change> out = new ArrayList<>();
        for (String name : fields.all(CHANGE)) {
            attribute(name, kept.edition())
                    .ifPresent(a -> out.add(Change.of(pointer(name), text(fields, name, a.type()), here)));
        }
        fields.all(SET).forEach(s -> Change.parse(s, here, diagnostics).ifPresent(out::add));
        return out;
    }

    private static String text(FormFields fields, String name, FieldType type) {
        Object value = FormDocument.value(fields, name, type).orElse(FormDocument.UNKNOWN);
        if (value instanceof List<?> terms) {
            return "[" + String.join(", ", terms.stream().map(String::valueOf).toList()) + "]";
        }
        return String.valueOf(value);
    }

    /** The form with what was typed and what is wrong with it. */
    public ChangeForm form(
            UUID workspace, Person by, KeptAnswer kept, Map<String, List<String>> posted, List<Diagnostic> wrong) {
        FormFields fields = FormFields.of(posted);
        Edition edition = kept.edition();
        Map<String, String> errors = new LinkedHashMap<>();
        wrong.forEach(d -> errors.merge(
                FormNames.ofPointer(d.place().pointer()),
                ProblemErrors.sentence(d.text()) + " " + ProblemErrors.sentence(d.advice()),
                (a, b) -> a + " " + b));
        FieldDrawer drawer = new FieldDrawer(fields, edition, units.of(by), errors, Wanted.NOTHING);
        List<FormView.Field> drawn = new ArrayList<>();
        for (String name : fields.all(CHANGE)) {
            attribute(name, edition).ifPresent(a -> drawn.add(drawer.field(name, a, "-")));
        }
        ChangeOffers offers = new ChangeOffers(kept);
        List<ChangeForm.Step> steps = fields.all(SET).stream()
                .map(s -> new ChangeForm.Step(s, offers.words(s)))
                .toList();
        List<FormView.FieldError> told = errors.entrySet().stream()
                .map(e -> new FormView.FieldError(
                        fields.all(CHANGE).contains(e.getKey()) ? e.getKey() : "changes",
                        FormNames.label(e.getKey()) + e.getValue()))
                .toList();
        return new ChangeForm(drawn, steps, offers.all(), told);
    }

    /** What the task says, in the units it was typed in where it was not changed since. */
    private FormFields said(UUID workspace, KeptAnswer kept) {
        Node document = kept.isOutdated()
                ? DocumentReader.read(
                                ProblemErrors.BODY,
                                Hashes.canonical(TaskWriter.data(kept.asked().task(), kept.edition())),
                                new Diagnostics())
                        .orElseThrow()
                : GivenTask.nodes(tasks.document(workspace, kept.task().id()));
        return FormReader.read(document, kept.edition());
    }

    private static String fieldName(String pointer) {
        return pointer.startsWith("/") ? pointer.substring(1).replace('/', '.') : "";
    }

    private static String pointer(String name) {
        return "/" + name.replace('.', '/');
    }

    /** The attribute of a field, labelled with its entry; empty when nobody can type there. */
    private static Optional<Attribute> attribute(String name, Edition edition) {
        String[] steps = name.split("\\.", -1);
        if (steps[0].equals(FormNames.DECLARED)) {
            return steps.length == 2
                    ? Optional.ofNullable(edition.declaredAttributes().get(steps[1]))
                    : Optional.empty();
        }
        Optional<Group> group = Group.byKey(steps[0]);
        boolean list = group.filter(Group::isList).isPresent();
        boolean entry = !list || steps.length == 3 && steps[1].matches("0|[1-9][0-9]?");
        if (group.isEmpty() || !entry || steps.length != (list ? 3 : 2)) {
            return Optional.empty();
        }
        return group.get()
                .attribute(steps[steps.length - 1])
                .filter(a -> !a.computed())
                .map(a -> list ? labelled(a, group.get(), Integer.parseInt(steps[1])) : a);
    }

    private static Attribute labelled(Attribute a, Group group, int index) {
        String entry = group.label() + " " + (index + 1);
        String label = a.label().equals(group.label()) ? entry : a.label() + " of " + entry;
        return Attribute.further(a.name(), label, a.question(), a.type());
    }
}
