package org.washwright.library;

import java.util.List;
import org.washwright.document.Diagnostic;

/** An edition that nothing can be answered by, with everything that is wrong with it. */
public final class UnusableEdition extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Diagnostic> diagnostics;

    UnusableEdition(List<Diagnostic> diagnostics) {
        super("the edition can't be used: "
                + diagnostics.stream().limit(3).map(Diagnostic::toString).toList());
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** What is wrong. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
