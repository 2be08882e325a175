package org.washwright.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.explain.compare.Change;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;
import org.washwright.task.TaskReader;

/**
 * Reads changes of a task from the body of a request.
 *
 * @param title title of a variant; empty when the body holds none
 * @param changes what is set, in the order of the body
 */
record ChangesReader(String title, List<Change> changes) {

    /** From {@code {"set": {POINTER: VALUE, ...}}}; a title only where one is expected. */
    static ChangesReader read(byte[] body, boolean titled) {
        Diagnostics diagnostics = new Diagnostics();
        if (body.length > TaskReader.MAX_BYTES) {
            diagnostics.add(
                    Message.TOO_LARGE,
                    Place.ofFile(ProblemErrors.BODY),
                    body.length + " bytes",
                    TaskReader.MAX_BYTES + " bytes");
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        Optional<Node> node = DocumentReader.read(ProblemErrors.BODY, body, diagnostics);
        List<Change> changes = new ArrayList<>();
        String title = "";
        if (node.isPresent()) {
            MapReader map = MapReader.of(node.get(), "the request", diagnostics);
            map.entries("set").forEach(e -> changes.add(change(e)));
            title = titled ? map.required("title") : "";
            map.noMore();
        }
        if (diagnostics.hasErrors()) {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        return new ChangesReader(title, changes);
    }

    /** A value in text is read as one types it; lists and played question trees as in a task file. */
    private static Change change(Node.Entry entry) {
        if (!(entry.value() instanceof Node.ScalarNode scalar)) {
            return new Change(entry.key(), entry.value());
        }
        Change typed = Change.of(entry.key(), scalar.text(), scalar.place());
        // The place in the body, not in the task: that is what whoever sent it can look up.
        return typed.value() instanceof Node.ScalarNode ? new Change(entry.key(), scalar) : typed;
    }
}
