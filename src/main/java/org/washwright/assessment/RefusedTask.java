package org.washwright.assessment;

import java.util.List;
import org.washwright.document.Diagnostic;

/** A task that can't be assessed as it is, with everything that is wrong with it. */
public final class RefusedTask extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Diagnostic> diagnostics;

    /** Refuses a task. */
    public RefusedTask(List<Diagnostic> diagnostics) {
        super("the task has " + diagnostics.size() + " errors");
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** What is wrong. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
