package org.washwright.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.task.FieldType;

/**
 * Writes a rule as text: in canonical form (numbers in SI to the last bit, for hashes) or for readers (numbers with their
 * usual unit). Tables and rule text come out alike.
 */
public final class RuleText {

    private final boolean canonical;
    private final List<String> variables = new ArrayList<>();

    private RuleText(boolean canonical, Rule rule) {
        this.canonical = canonical;
        Map<String, Integer> seen = new HashMap<>();
        for (Pattern p : rule.patterns()) {
            String type = p.type().name();
            String name = type.substring(0, 1).toLowerCase(Locale.ROOT)
                    + type.replaceAll("/.*", "").substring(1);
            int n = seen.merge(name, 1, Integer::sum);
            variables.add("$" + name + (n == 1 ? "" : n));
        }
    }

    /** The canonical form: equal exactly when two rules mean the same and are cited the same. */
    public static String canonical(Rule rule) {
        return new RuleText(true, rule).write(rule);
    }

    /** The form for readers. */
    public static String readable(Rule rule) {
        return new RuleText(false, rule).write(rule);
    }

    private String write(Rule rule) {
        StringBuilder out = new StringBuilder();
        out.append("rule ").append(quote(rule.title())).append('\n');
        out.append("  @id(")
                .append(quote(rule.id()))
                .append(") @basis(")
                .append(quote(rule.basis().word()))
                .append(")\n");
        if (!rule.sources().isEmpty()) {
            List<String> cites = rule.sources().stream()
                    .map(c -> c.locator().isEmpty() ? c.source() : c.source() + ", " + c.locator())
                    .toList();
            out.append("  @source(").append(quote(String.join("; ", cites))).append(")\n");
        }
        annotation(out, "since", rule.since());
        annotation(out, "note", rule.note());
        out.append("when\n");
        for (int i = 0; i < rule.patterns().size(); i++) {
            Pattern p = rule.patterns().get(i);
            String variable =
                    p.sign() == Sign.POSITIVE ? variable(i) + " : " : p.sign().word();
            out.append("  ").append(variable).append(pattern(p)).append('\n');
        }
        out.append("then\n");
        rule.effects().forEach(e -> out.append("  ").append(effect(e)).append(";\n"));
        return out.append("end\n").toString();
    }

    private static void annotation(StringBuilder out, String name, String text) {
        if (!text.isEmpty()) {
            out.append("  @").append(name).append('(').append(quote(text)).append(")\n");
        }
    }

    private String variable(int pattern) {
        return variables.get(pattern);
    }

    private String pattern(Pattern p) {
        String name = p.type().name();
        if (name.startsWith(FactTypes.ATTRIBUTE + "/")) {
            String rest = top(p.condition());
            return "Attribute(id == " + quote(name.substring(name.indexOf('/') + 1))
                    + (rest.isEmpty() ? "" : ", " + rest) + ")";
        }
        return name + "(" + top(p.condition()) + ")";
    }

    private String top(Condition condition) {
        return condition instanceof Condition.All all
                ? String.join(", ", all.parts().stream().map(this::inner).toList())
                : inner(condition);
    }

    private String inner(Condition condition) {
        if (condition instanceof Condition.Test t) {
            return t.field().name() + " " + t.op().sign() + " " + operand(t);
        }
        boolean all = condition instanceof Condition.All;
        List<Condition> parts = all ? ((Condition.All) condition).parts() : ((Condition.Any) condition).parts();
        return "("
                + String.join(
                        all ? " && " : " || ", parts.stream().map(this::inner).toList()) + ")";
    }

    private String operand(Condition.Test t) {
        if (t.operand() instanceof Condition.Operand.Number n) {
            return quote(number(n.si(), ((FieldType.NumberType) t.field().type()).dimension()));
        }
        if (t.operand() instanceof Condition.Operand.FactOf f) {
            return variable(f.pattern());
        }
        if (t.operand() instanceof Condition.Operand.FieldOf f) {
            return variable(f.pattern()) + "." + f.field().name();
        }
        List<String> ids = new ArrayList<>(((Condition.Operand.Terms) t.operand()).ids());
        boolean flag = t.field().type() instanceof FieldType.TermType type && type.isFlag();
        if (flag && ids.size() == 1) {
            return String.valueOf(ids.get(0).equals(FieldType.YES));
        }
        boolean list = t.op() == Op.IN || t.op() == Op.NOT_IN;
        String joined = String.join(", ", ids.stream().map(RuleText::quote).toList());
        return list ? "(" + joined + ")" : joined;
    }

    private String effect(Effect e) {
        List<String> arguments = new ArrayList<>();
        if (e instanceof Effect.Conclude c) {
            arguments.add(quote(c.conclusion()));
            c.subject().ifPresent(s -> arguments.add(variable(s)));
        } else if (e instanceof Effect.RuleOut r) {
            arguments.add(target(r.target()));
            arguments.add(quote(r.role().word()));
        } else if (e instanceof Effect.Score s) {
            arguments.add(target(s.target()));
            arguments.add(quote(s.criterion()));
            arguments.add(String.valueOf(s.points()));
        } else if (e instanceof Effect.Require r) {
            arguments.add(target(r.target()));
            arguments.add(quote(r.stage()));
            arguments.add(placement(r));
        } else if (e instanceof Effect.Limit l) {
            arguments.add(target(l.target()));
            arguments.add(stage(l.stage()));
            arguments.add(quote(l.parameter()));
            arguments.add((l.max() ? "max(" : "min(") + bound(l) + ")");
        } else if (e instanceof Effect.Caution c) {
            arguments.add(quote(c.hazard()));
            c.target().ifPresent(t -> arguments.add(target(t)));
        } else if (e instanceof Effect.Ask a) {
            arguments.add(quote(a.attribute().isEmpty() ? a.type() : a.type() + "." + a.attribute()));
        } else if (e instanceof Effect.Verify v) {
            arguments.add(quote(v.method()));
        }
        arguments.add(quote(reason(e.reason())));
        return e.verb() + "(" + String.join(", ", arguments) + ")";
    }

    private String target(Effect.Target target) {
        return target instanceof Effect.Target.Node n
                ? quote(n.id())
                : variable(((Effect.Target.Matched) target).pattern());
    }

    private String stage(Effect.StageRef stage) {
        return stage instanceof Effect.StageRef.Named n
                ? quote(n.id())
                : variable(((Effect.StageRef.Matched) stage).pattern());
    }

    private String placement(Effect.Require r) {
        Optional<String> after = r.after().map(this::stage);
        Optional<String> before = r.before().map(this::stage);
        if (after.isPresent() && before.isPresent()) {
            return "between(" + after.get() + ", " + before.get() + ")";
        }
        return after.map(a -> "after(" + a + ")").orElseGet(() -> "before(" + before.orElse("") + ")");
    }

    private String bound(Effect.Limit l) {
        return l.bound() instanceof Effect.Bound.Literal x
                ? quote(number(x.si(), l.dimension()))
                : variable(((Effect.Bound.FieldOf) l.bound()).pattern()) + "."
                        + ((Effect.Bound.FieldOf) l.bound()).field().name();
    }

    private String number(double si, Dimension dimension) {
        DoubleFunction<String> exact = dimension == Dimension.DATE ? RuleText::date : Double::toString;
        return canonical ? exact.apply(si) : Quantities.write(si, dimension, 6);
    }

    /** A date, which has no other exact form than its own. */
    public static String date(double days) {
        return Quantities.write(days, Dimension.DATE, 1);
    }

    /** A reason with its places as written. */
    private String reason(Reason reason) {
        StringBuilder out = new StringBuilder();
        for (Reason.Part part : reason.parts()) {
            if (part instanceof Reason.Part.Words w) {
                out.append(w.text());
            } else if (part instanceof Reason.Part.NameOf n) {
                out.append('{').append(variable(n.pattern())).append('}');
            } else if (part instanceof Reason.Part.ValueOf v) {
                out.append('{')
                        .append(variable(v.pattern()))
                        .append('.')
                        .append(v.field().name())
                        .append('}');
            } else {
                out.append("{$target}");
            }
        }
        return out.toString();
    }

    private static String quote(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
