package org.washwright.exchange;

import java.util.Map;
import org.washwright.catalogue.Term;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Similar;

/** Checks that a withdrawn term leads to one that stands: not to itself, nor round a circle, nor from one to the next. */
final class Successors {

    private Successors() {}

    static void check(Map<String, Term> ofKind, Diagnostics diagnostics) {
        for (Term term : ofKind.values()) {
            if (!term.isWithdrawn()) {
                continue;
            }
            Term next = ofKind.get(term.replacedBy());
            if (next == null) {
                diagnostics.add(
                        Message.UNKNOWN_TERM,
                        term.place(),
                        term.replacedBy(),
                        term.kind(),
                        Similar.advice(term.replacedBy(), ofKind.keySet()));
            } else if (next.isWithdrawn()) {
                diagnostics.add(Message.REPLACED_TWICE, term.place(), term.replacedBy());
            }
        }
    }
}
