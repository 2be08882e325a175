package org.washwright.rule.check;

import java.util.Collection;
import java.util.Optional;
import java.util.function.Consumer;
import org.washwright.catalogue.Parameter;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Effect.Bound;
import org.washwright.rule.Effect.StageRef;
import org.washwright.rule.Effect.Target;
import org.washwright.rule.FactTypes;
import org.washwright.rule.syntax.SyntaxCall;
import org.washwright.rule.syntax.SyntaxCall.Argument;
import org.washwright.task.FieldType;

/** Resolves what the arguments of a consequence refer to: processes, stages, parameters, terms and bound values. */
final class ReferenceChecker {

    private final Terms terms;
    private final Diagnostics diagnostics;
    private final Scope scope;
    private final Consumer<SyntaxCall> badArguments;

    /**
     * A checker.
     *
     * @param badArguments reports that the arguments of a call are not of the verb's form
     */
    ReferenceChecker(Terms terms, Diagnostics diagnostics, Scope scope, Consumer<SyntaxCall> badArguments) {
        this.terms = terms;
        this.diagnostics = diagnostics;
        this.scope = scope;
        this.badArguments = badArguments;
    }

    Optional<Bound> bound(SyntaxCall call, Argument argument, Parameter parameter) {
        if (argument instanceof Argument.Text t) {
            return Quantities.read(t.text(), parameter.dimension(), call.place(), diagnostics)
                    .map(Bound.Literal::new);
        }
        if (argument instanceof Argument.Whole w && parameter.dimension().isPlain()) {
            return Optional.of(new Bound.Literal(w.value()));
        }
        if (argument instanceof Argument.Variable v) {
            Optional<Scope.Bound> bound = scope.field(v.name(), v.field());
            if (bound.isEmpty()) {
                diagnostics.add(Message.UNKNOWN_VARIABLE, call.place(), v.describe());
                return Optional.empty();
            }
            FieldType type = bound.get().field().orElseThrow().type();
            if (!type.equals(FieldType.number(parameter.dimension()))) {
                diagnostics.add(
                        Message.TYPE_MISMATCH,
                        call.place(),
                        v.describe(),
                        parameter.term().name(),
                        type.describe(),
                        "Bind a " + parameter.dimension().label());
                return Optional.empty();
            }
            return Optional.of(
                    new Bound.FieldOf(bound.get().pattern(), bound.get().field().orElseThrow()));
        }
        return bad(call);
    }

    Optional<Target> target(SyntaxCall call, Argument argument) {
        if (argument instanceof Argument.Text t) {
            if (terms.catalogue().processes().containsKey(t.text())) {
                return Optional.of(new Target.Node(t.text()));
            }
            unknown(
                    call.place(),
                    t.text(),
                    "node of the process tree",
                    terms.catalogue().processes().keySet());
            return Optional.empty();
        }
        if (argument instanceof Argument.Variable v && v.field().isEmpty()) {
            Optional<Integer> pattern = scope.pattern(v.name(), FactTypes.PROCESS);
            if (pattern.isEmpty()) {
                diagnostics.add(Message.UNKNOWN_VARIABLE, call.place(), v.name());
            }
            return pattern.map(Target.Matched::new);
        }
        return bad(call);
    }

    Optional<StageRef> stageRef(SyntaxCall call, Argument argument) {
        if (argument instanceof Argument.Text t) {
            return t.text().equals(StageRef.MAIN)
                    ? Optional.of(new StageRef.Named(StageRef.MAIN))
                    : stageTerm(t.text(), call.place()).map(StageRef.Named::new);
        }
        if (argument instanceof Argument.Variable v && v.field().isEmpty()) {
            Optional<Integer> pattern = scope.pattern(v.name(), FactTypes.STAGE);
            if (pattern.isEmpty()) {
                diagnostics.add(Message.UNKNOWN_VARIABLE, call.place(), v.name());
            }
            return pattern.map(StageRef.Matched::new);
        }
        return bad(call);
    }

    Optional<String> stageTerm(String id, Place place) {
        if (terms.catalogue().stages().containsKey(id)) {
            return Optional.of(id);
        }
        unknown(place, id, "stage", terms.catalogue().stages().keySet());
        return Optional.empty();
    }

    Optional<String> term(String kind, String id, Place place) {
        Optional<String> found = terms.id(kind, id);
        if (found.isEmpty()) {
            unknown(place, id, kind.replace('-', ' '), terms.all(kind));
        }
        return found;
    }

    void unknown(Place place, String value, String what, Collection<String> known) {
        diagnostics.add(Message.UNKNOWN_REFERENCE, place, value, what, Similar.advice(value, known));
    }

    private <T> Optional<T> bad(SyntaxCall call) {
        badArguments.accept(call);
        return Optional.empty();
    }
}
