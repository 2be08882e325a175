package org.washwright.rule.check;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.catalogue.Parameter;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Similar;
import org.washwright.rule.Effect;
import org.washwright.rule.Effect.Bound;
import org.washwright.rule.Effect.Role;
import org.washwright.rule.Effect.StageRef;
import org.washwright.rule.Effect.Target;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Reason;
import org.washwright.rule.syntax.SyntaxCall;
import org.washwright.rule.syntax.SyntaxCall.Argument;
import org.washwright.task.Group;

/** Gives the consequences of one rule their meaning. */
final class EffectChecker {

    private static final Map<String, String> FORMS = Map.of(
            "conclude", "conclude(\"conclusion\", $fact, \"reason\") or conclude(\"conclusion\", \"reason\")",
            "ruleOut", "ruleOut(target, \"main\", \"reason\")",
            "support", "support(target, \"criterion\", 2, \"reason\")",
            "oppose", "oppose(target, \"criterion\", 2, \"reason\")",
            "require", "require(target, \"stage\", after(\"main\"), \"reason\")",
            "limit", "limit(target, \"main\", \"parameter\", max(\"10.5\"), \"reason\")",
            "caution", "caution(\"hazard\", \"reason\") or caution(\"hazard\", target, \"reason\")",
            "ask", "ask(\"Material.hardness\", \"reason\")",
            "verify", "verify(\"test-method\", \"reason\")");

    private final Terms terms;
    private final Diagnostics diagnostics;
    private final Scope scope;
    private final ReasonChecker reasons;
    private final ReferenceChecker references;

    EffectChecker(Terms terms, Diagnostics diagnostics, Scope scope) {
        this.terms = terms;
        this.diagnostics = diagnostics;
        this.scope = scope;
        this.reasons = new ReasonChecker(diagnostics, scope);
        this.references = new ReferenceChecker(terms, diagnostics, scope, this::bad);
    }

    /** Checks one consequence; empty after an error. */
    Optional<Effect> check(SyntaxCall call) {
        if (!FORMS.containsKey(call.verb())) {
            diagnostics.add(
                    Message.UNKNOWN_VERB, call.place(), call.verb(), Similar.advice(call.verb(), FORMS.keySet()));
            return Optional.empty();
        }
        List<Argument> a = call.arguments();
        Optional<Reason> reason = !a.isEmpty() && a.get(a.size() - 1) instanceof Argument.Text t
                ? reasons.check(t.text(), call.verb(), call.place())
                : bad(call);
        if (reason.isEmpty()) {
            return Optional.empty();
        }
        Reason r = reason.get();
        return switch (call.verb()) {
            case "conclude" -> conclude(call, a, r);
            case "ruleOut" -> ruleOut(call, a, r);
            case "support", "oppose" -> score(call, a, r);
            case "require" -> require(call, a, r);
            case "limit" -> limit(call, a, r);
            case "caution" -> caution(call, a, r);
            case "ask" -> ask(call, a, r);
            default -> verify(call, a, r);
        };
    }

    private Optional<Effect> conclude(SyntaxCall call, List<Argument> a, Reason reason) {
        if (a.size() == 2 && a.get(0) instanceof Argument.Text id) {
            return references
                    .term("conclusion", id.text(), call.place())
                    .map(c -> new Effect.Conclude(c, Optional.empty(), reason));
        }
        if (a.size() == 3 && a.get(0) instanceof Argument.Text id && a.get(1) instanceof Argument.Variable v) {
            Optional<Scope.Bound> bound = scope.get(v.name());
            if (bound.isEmpty() || !v.field().isEmpty() || !scope.isConclusionSubject(bound.get())) {
                diagnostics.add(Message.UNKNOWN_VARIABLE, call.place(), v.name());
                return Optional.empty();
            }
            return references
                    .term("conclusion", id.text(), call.place())
                    .map(c -> new Effect.Conclude(c, Optional.of(bound.get().pattern()), reason));
        }
        return bad(call);
    }

    private Optional<Effect> ruleOut(SyntaxCall call, List<Argument> a, Reason reason) {
        if (a.size() != 3 || !(a.get(1) instanceof Argument.Text roleText)) {
            return bad(call);
        }
        Optional<Target> target = references.target(call, a.get(0));
        Optional<Role> role = Arrays.stream(Role.values())
                .filter(x -> x.word().equals(roleText.text()))
                .findFirst();
        if (role.isEmpty()) {
            references.unknown(
                    call.place(),
                    roleText.text(),
                    "role",
                    Arrays.stream(Role.values()).map(Role::word).toList());
        }
        return target.isPresent() && role.isPresent()
                ? Optional.of(new Effect.RuleOut(target.get(), role.get(), reason))
                : Optional.empty();
    }

    private Optional<Effect> score(SyntaxCall call, List<Argument> a, Reason reason) {
        if (a.size() != 4
                || !(a.get(1) instanceof Argument.Text criterion)
                || !(a.get(2) instanceof Argument.Whole w)) {
            return bad(call);
        }
        Optional<Target> target = references.target(call, a.get(0));
        boolean known = terms.grading().criterion(criterion.text()).isPresent();
        if (!known) {
            references.unknown(
                    call.place(),
                    criterion.text(),
                    "criterion of grading.yaml",
                    terms.grading().areas().stream()
                            .flatMap(x -> x.criteria().stream())
                            .map(c -> c.id())
                            .toList());
        }
        if (w.value() < 1 || w.value() > 3) {
            diagnostics.add(Message.OUT_OF_RANGE, call.place(), String.valueOf(w.value()), "1 to 3 points");
            return Optional.empty();
        }
        return known && target.isPresent()
                ? Optional.of(new Effect.Score(
                        call.verb().equals("support"), target.get(), criterion.text(), w.value(), reason))
                : Optional.empty();
    }

    private Optional<Effect> require(SyntaxCall call, List<Argument> a, Reason reason) {
        if (a.size() != 4 || !(a.get(1) instanceof Argument.Text stage) || !(a.get(2) instanceof Argument.Nested n)) {
            return bad(call);
        }
        Optional<Target> target = references.target(call, a.get(0));
        Optional<String> id = references.stageTerm(stage.text(), call.place());
        List<Optional<StageRef>> ends =
                n.arguments().stream().map(x -> references.stageRef(call, x)).toList();
        boolean shape = n.name().equals("between") ? ends.size() == 2 : ends.size() == 1;
        if (!shape || !List.of("after", "before", "between").contains(n.name())) {
            return bad(call);
        }
        if (target.isEmpty() || id.isEmpty() || ends.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        Optional<StageRef> after = n.name().equals("before") ? Optional.empty() : ends.get(0);
        Optional<StageRef> before = n.name().equals("after") ? Optional.empty() : ends.get(ends.size() - 1);
        return Optional.of(new Effect.Require(target.get(), id.get(), after, before, reason));
    }

    private Optional<Effect> limit(SyntaxCall call, List<Argument> a, Reason reason) {
        if (a.size() != 5
                || !(a.get(2) instanceof Argument.Text parameterId)
                || !(a.get(3) instanceof Argument.Nested n)
                || n.arguments().size() != 1
                || !(n.name().equals("max") || n.name().equals("min"))) {
            return bad(call);
        }
        Optional<Target> target = references.target(call, a.get(0));
        Optional<StageRef> stage = references.stageRef(call, a.get(1));
        Parameter parameter = terms.catalogue().parameters().get(parameterId.text());
        if (parameter == null) {
            references.unknown(
                    call.place(),
                    parameterId.text(),
                    "parameter",
                    terms.catalogue().parameters().keySet());
            return Optional.empty();
        }
        Optional<Bound> bound = references.bound(call, n.arguments().get(0), parameter);
        if (target.isEmpty() || stage.isEmpty() || bound.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Effect.Limit(
                target.get(),
                stage.get(),
                parameter.id(),
                parameter.dimension(),
                n.name().equals("max"),
                bound.get(),
                reason));
    }

    private Optional<Effect> caution(SyntaxCall call, List<Argument> a, Reason reason) {
        if (a.size() < 2 || a.size() > 3 || !(a.get(0) instanceof Argument.Text hazard)) {
            return bad(call);
        }
        Optional<String> id = references.term("hazard", hazard.text(), call.place());
        Optional<Target> target = a.size() == 3 ? references.target(call, a.get(1)) : Optional.empty();
        if (id.isEmpty() || (a.size() == 3 && target.isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(new Effect.Caution(id.get(), target, reason));
    }

    private Optional<Effect> ask(SyntaxCall call, List<Argument> a, Reason reason) {
        if (a.size() != 2 || !(a.get(0) instanceof Argument.Text path)) {
            return bad(call);
        }
        int dot = path.text().indexOf('.');
        String type = dot < 0 ? path.text() : path.text().substring(0, dot);
        String attribute = dot < 0 ? "" : path.text().substring(dot + 1);
        boolean known = type.equals(FactTypes.ATTRIBUTE)
                ? terms.catalogue().attributes().containsKey(attribute)
                : Group.byFactType(type)
                        .map(g -> attribute.isEmpty()
                                ? g.isList()
                                : g.attribute(attribute).isPresent())
                        .orElse(false);
        if (!known) {
            diagnostics.add(
                    Message.UNKNOWN_REFERENCE,
                    call.place(),
                    path.text(),
                    "attribute of a task",
                    "Write Type.attribute, for instance Material.hardness, or a list such as Soil");
            return Optional.empty();
        }
        return Optional.of(new Effect.Ask(type, attribute, reason));
    }

    private Optional<Effect> verify(SyntaxCall call, List<Argument> a, Reason reason) {
        if (a.size() != 2 || !(a.get(0) instanceof Argument.Text method)) {
            return bad(call);
        }
        return references.term("test-method", method.text(), call.place()).map(m -> new Effect.Verify(m, reason));
    }

    private <T> Optional<T> bad(SyntaxCall call) {
        diagnostics.add(
                Message.BAD_ARGUMENTS,
                call.place(),
                call.verb(),
                call.verb(),
                "("
                        + String.join(
                                ", ",
                                call.arguments().stream()
                                        .map(Argument::describe)
                                        .toList()) + ")",
                FORMS.get(call.verb()));
        return Optional.empty();
    }
}
