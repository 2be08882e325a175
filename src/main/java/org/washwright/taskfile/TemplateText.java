package org.washwright.taskfile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.rule.Edition;
import org.washwright.task.Group;

/** The templates that are text: nothing is said in them but the title, and everything can be. */
final class TemplateText {

    private static final int WORDS_A_LINE = 12;

    private final TaskForms forms;
    private final StringBuilder out = new StringBuilder();

    private TemplateText(TaskForms forms) {
        this.forms = forms;
    }

    /** Every attribute as a line that is taken in by removing its mark. */
    static String yaml(TaskForms forms, Edition edition) {
        TemplateText text = new TemplateText(forms);
        text.all(edition);
        return text.out.toString();
    }

    private void all(Edition edition) {
        out.append(
                        "# A cleaning task. Take out the mark \"#\" before what you know, and write the value behind the colon.\n")
                .append(
                        "# What is left out is not known. A value may be a range (30..40 HRC, >= 30 HRC), one of several\n")
                .append("# words ([a, b]), unknown, or not applicable.\n")
                .append("title: \"\"\n#notes: \"\"\n");
        for (Group group : Group.values()) {
            out.append("\n# ")
                    .append(group.heading())
                    .append('\n')
                    .append('#')
                    .append(group.key())
                    .append(":\n");
            if (group.isList()) {
                out.append("#  open: yes            # there may be more than those listed\n#  list:\n");
            }
            boolean first = true;
            for (TaskForms.Line line : forms.entry(group, "")) {
                String start = !group.isList() ? "#  " : first ? "#    - " : "#      ";
                line(start, line.path(), line);
                first = false;
            }
        }
        if (!edition.declaredAttributes().isEmpty()) {
            out.append("\n# Asked by this rulebook\n#attributes:\n");
            forms.single().stream()
                    .filter(l -> l.path().startsWith("attributes/"))
                    .forEach(l -> line("#  ", l.path().substring("attributes/".length()), l));
        }
    }

    private void line(String start, String name, TaskForms.Line line) {
        String words = line.mayBe().split(", ").length > WORDS_A_LINE
                ? String.join(", ", List.of(line.mayBe().split(", ")).subList(0, WORDS_A_LINE)) + " ..."
                : line.mayBe();
        out.append(start)
                .append(name)
                .append(": unknown   # ")
                .append(line.question())
                .append(" (")
                .append(words)
                .append(")\n");
    }

    /** Every group with every attribute unknown, and every list open and empty. */
    static Map<String, Object> json(Edition edition) {
        Map<String, Object> task = new LinkedHashMap<>();
        task.put("title", "");
        task.put("notes", "");
        for (Group group : Group.values()) {
            if (group.isList()) {
                task.put(group.key(), Map.of("open", true, "list", List.of()));
            } else {
                String nothing = group.appliesOnlyWhenGiven() ? "not applicable" : "unknown";
                Map<String, Object> entry = new LinkedHashMap<>();
                group.attributes().stream().filter(a -> !a.computed()).forEach(a -> entry.put(a.name(), nothing));
                task.put(group.key(), entry);
            }
        }
        Map<String, Object> declared = new LinkedHashMap<>();
        edition.declaredAttributes().keySet().forEach(id -> declared.put(id, "unknown"));
        task.put("attributes", declared);
        return task;
    }
}
