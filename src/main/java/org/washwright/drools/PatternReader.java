package org.washwright.drools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.AnnotatedBaseDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.SourceText;
import org.washwright.rule.Sign;
import org.washwright.rule.syntax.ConstraintParser;
import org.washwright.rule.syntax.SyntaxConstraint;
import org.washwright.rule.syntax.SyntaxPattern;

/** Reads the conditions of one rule: plain patterns, and {@code not} and {@code exists} over one plain pattern. */
final class PatternReader {

    private final SourceText source;
    private final Place rule;
    private final Diagnostics diagnostics;

    PatternReader(SourceText source, Place rule, Diagnostics diagnostics) {
        this.source = source;
        this.rule = rule;
        this.diagnostics = diagnostics;
    }

    List<SyntaxPattern> read(AndDescr conditions) {
        List<SyntaxPattern> patterns = new ArrayList<>();
        for (BaseDescr descr : conditions.getDescrs()) {
            if (descr instanceof PatternDescr p) {
                pattern(p, Sign.POSITIVE).ifPresent(patterns::add);
            } else if (descr instanceof NotDescr n && only(n.getDescrs()) instanceof PatternDescr p) {
                pattern(p, Sign.NOT).ifPresent(patterns::add);
            } else if (descr instanceof ExistsDescr e && only(e.getDescrs()) instanceof PatternDescr p) {
                pattern(p, Sign.EXISTS).ifPresent(patterns::add);
            } else {
                refuse(
                        descr,
                        "this kind of condition",
                        descr.getClass().getSimpleName().replace("Descr", "").toLowerCase(java.util.Locale.ROOT));
            }
        }
        return patterns;
    }

    private static Object only(List<?> descrs) {
        return descrs.size() == 1 ? descrs.get(0) : "several";
    }

    private Optional<SyntaxPattern> pattern(PatternDescr p, Sign sign) {
        boolean plain = true;
        plain &= allow(p.getSource() == null, p, "from, accumulate or collect", p.getObjectType());
        plain &= allow(p.getBehaviors() == null || p.getBehaviors().isEmpty(), p, "a window", p.getObjectType());
        plain &= allow(!p.isQuery() && !p.isUnification(), p, "a query call or unification", p.getObjectType());
        plain &= allow(annotations(p).isEmpty(), p, "an annotation on a pattern", p.getObjectType());
        List<SyntaxConstraint> constraints = new ArrayList<>();
        for (Object c : p.getConstraint().getDescrs()) {
            if (c instanceof ExprConstraintDescr e && e.getType() == ExprConstraintDescr.Type.NAMED) {
                Optional<SyntaxConstraint> constraint =
                        ConstraintParser.parse(e.getExpression(), place(e, place(p, rule)), diagnostics);
                plain &= constraint.isPresent();
                constraint.ifPresent(constraints::add);
            } else {
                plain = allow(false, p, "a positional argument or another kind of constraint", p.getObjectType());
            }
        }
        String variable = p.getIdentifier() == null ? "" : p.getIdentifier();
        plain &= allow(
                variable.isEmpty() || variable.matches("\\$[A-Za-z][A-Za-z0-9_]*"),
                p,
                "a variable without a dollar sign and plain letters",
                variable);
        return plain
                ? Optional.of(new SyntaxPattern(
                        sign, variable, String.valueOf(p.getObjectType()), constraints, place(p, rule)))
                : Optional.empty();
    }

    private static java.util.Collection<?> annotations(AnnotatedBaseDescr descr) {
        return descr.getAnnotations();
    }

    private boolean allow(boolean fine, BaseDescr descr, String what, String value) {
        if (!fine) {
            refuse(descr, what, value);
        }
        return fine;
    }

    private void refuse(BaseDescr descr, String what, String value) {
        diagnostics.add(
                Message.REFUSED,
                place(descr, rule),
                value == null || value.isBlank()
                        ? source.line(place(descr, rule).line())
                        : value,
                what,
                "Use patterns, \"not\" and \"exists\" over one pattern, and \"||\" inside a pattern");
    }

    /** Where something stands; some things of Drools' parser don't know, and then it is where they are part of. */
    private Place place(BaseDescr descr, Place whole) {
        return descr.getLine() < 1 ? whole : source.at(descr.getLine(), descr.getColumn() + 1);
    }
}
