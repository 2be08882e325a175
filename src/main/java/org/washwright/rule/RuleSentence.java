package org.washwright.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.quantity.Quantities;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/**
 * A rule as one would say it, with the names of the catalogue. Nothing is left out, so that who can't read the rule
 * language can still judge the rule.
 *
 * @param when what has to hold, one clause a pattern
 * @param then what the rule says then
 */
public record RuleSentence(List<String> when, List<Said> then) {

    private static final int DIGITS = 6;

    /** Keeps copies. */
    public RuleSentence {
        when = List.copyOf(when);
        then = List.copyOf(then);
    }

    /** Something the rule says, and why. */
    public record Said(String what, String because) {}

    /** A comparison with a literal, as a table shows it: what is looked at, and what it must be. */
    public record Cell(String column, String value) {}

    /** The sentence of a rule. */
    public static RuleSentence of(Edition edition, Rule rule) {
        return new Writer(edition, rule).sentence();
    }

    /**
     * The comparisons of a rule one by one; empty when it holds more than a row of a table can (alternatives, what must
     * not be, references between facts).
     */
    public static Optional<List<Cell>> cells(Edition edition, Rule rule) {
        return new Writer(edition, rule).cells();
    }

    /** The conditions on one line. */
    public String condition() {
        return when.isEmpty() ? "Always" : "When " + String.join("; and ", when);
    }

    /** The whole, as running text. */
    public String words() {
        StringBuilder out = new StringBuilder(condition()).append(". Then ");
        for (int i = 0; i < then.size(); i++) {
            out.append(i == 0 ? "" : " And ").append(then.get(i).what());
            out.append(", because: ").append(then.get(i).because());
        }
        return out.toString();
    }

    private record Writer(Edition edition, Rule rule) {

        RuleSentence sentence() {
            List<String> when = new ArrayList<>();
            for (int i = 0; i < rule.patterns().size(); i++) {
                when.add(pattern(i));
            }
            return new RuleSentence(
                    when,
                    rule.effects().stream()
                            .map(e -> new Said(effect(e), reason(e)))
                            .toList());
        }

        Optional<List<Cell>> cells() {
            List<Cell> cells = new ArrayList<>();
            for (int i = 0; i < rule.patterns().size(); i++) {
                Pattern p = rule.patterns().get(i);
                Condition c = p.condition();
                List<Condition> parts = c instanceof Condition.All all ? all.parts() : List.of(c);
                for (Condition part : parts) {
                    if (p.sign() != Sign.POSITIVE || !(part instanceof Condition.Test t) || !isLiteral(t)) {
                        return Optional.empty();
                    }
                    cells.add(new Cell(column(i, t.field()), demand(t)));
                }
            }
            return Optional.of(cells);
        }

        private static boolean isLiteral(Condition.Test t) {
            return t.operand() instanceof Condition.Operand.Number || t.operand() instanceof Condition.Operand.Terms;
        }

        private String column(int pattern, Field field) {
            String thing = thing(pattern);
            String label = label(pattern, field);
            return thing.isEmpty() || thing.equals(label) ? label : thing + ": " + label;
        }

        /** The label of a field without naming again the thing it belongs to. */
        private String label(int pattern, Field field) {
            String thing = " of the " + word(rule.patterns().get(pattern).type().name());
            return field.label().endsWith(thing)
                    ? field.label().substring(0, field.label().length() - thing.length())
                    : field.label();
        }

        private String pattern(int i) {
            Pattern p = rule.patterns().get(i);
            String type = p.type().name();
            boolean bare =
                    p.condition() instanceof Condition.All all && all.parts().isEmpty();
            boolean concluded = type.equals(FactTypes.CONCLUSION);
            String head = concluded ? "it is concluded" : thing(i);
            String start = switch (p.sign()) {
                case POSITIVE -> head;
                case EXISTS -> concluded ? head : "at least one " + head;
                case NOT -> concluded ? "it is not concluded" : "no " + head;
            };
            if (isAnyProcess(p)) {
                return "any " + head;
            }
            if (bare) {
                return p.sign() == Sign.POSITIVE && !concluded ? "any " + head : start;
            }
            String demanded = condition(i, single(p.condition()));
            return start.isEmpty() ? demanded : start + ": " + demanded;
        }

        private static Condition single(Condition condition) {
            return condition instanceof Condition.All all && all.parts().size() == 1
                    ? all.parts().get(0)
                    : condition;
        }

        private static boolean isAnyProcess(Pattern p) {
            List<Condition.Test> tests = p.condition().tests().toList();
            return p.sign() == Sign.POSITIVE
                    && p.type().name().equals(FactTypes.PROCESS)
                    && tests.size() == 1
                    && tests.get(0).op() == Op.EQ
                    && tests.get(0).operand() instanceof Condition.Operand.Terms terms
                    && tests.get(0).field().name().equals("node")
                    && terms.ids().contains(Catalogue.ROOT);
        }

        private String condition(int i, Condition condition) {
            if (condition instanceof Condition.Test t) {
                return test(i, t);
            }
            boolean concluded = rule.patterns().get(i).type().name().equals(FactTypes.CONCLUSION);
            if (condition instanceof Condition.All all) {
                return String.join(
                        concluded ? ", " : " and ",
                        all.parts().stream().map(part -> nested(i, part)).toList());
            }
            return String.join(
                    " or ",
                    ((Condition.Any) condition)
                            .parts().stream().map(part -> nested(i, part)).toList());
        }

        private String nested(int i, Condition part) {
            return part instanceof Condition.Test ? condition(i, part) : "(" + condition(i, part) + ")";
        }

        private String test(int i, Condition.Test t) {
            String type = rule.patterns().get(i).type().name();
            String field = t.field().name();
            if (type.equals(FactTypes.CONCLUSION)) {
                return field.equals("subject") ? "about " + demand(t).replaceFirst("^is ", "") : plain(demand(t));
            }
            if (field.equals("node")) {
                return demand(t).replaceFirst("^is", "belongs to");
            }
            return field.equals("id") ? "it " + demand(t) : label(i, t.field()) + " " + demand(t);
        }

        private static String plain(String demand) {
            return demand.startsWith("is not ") ? demand : demand.replaceFirst("^is ", "");
        }

        private String demand(Condition.Test t) {
            String sign = switch (t.op()) {
                case EQ, IN -> "is ";
                case NE, NOT_IN -> "is not ";
                case LT -> "is below ";
                case LE -> "is at most ";
                case GT -> "is above ";
                case GE -> "is at least ";
            };
            return sign + operand(t);
        }

        private String operand(Condition.Test t) {
            if (t.operand() instanceof Condition.Operand.Number n) {
                return t.field().type() instanceof FieldType.NumberType type
                        ? Quantities.write(n.si(), type.dimension(), DIGITS)
                        : Quantities.number(n.si(), DIGITS);
            }
            if (t.operand() instanceof Condition.Operand.FactOf f) {
                return the(f.pattern());
            }
            if (t.operand() instanceof Condition.Operand.FieldOf f) {
                return "the " + label(f.pattern(), f.field()) + " of " + the(f.pattern());
            }
            String kind = t.field().type() instanceof FieldType.TermType type ? type.kind() : "";
            return String.join(
                    " or ",
                    ((Condition.Operand.Terms) t.operand())
                            .ids().stream().map(id -> name(kind, id)).toList());
        }

        private String name(String kind, String id) {
            return FactTypes.name(edition.catalogue(), kind, id);
        }

        /** What a pattern is about, numbered when a rule has several of a type; empty for a declared attribute. */
        private String thing(int pattern) {
            String type = rule.patterns().get(pattern).type().name();
            if (type.startsWith(FactTypes.ATTRIBUTE + "/")) {
                return "";
            }
            long same = count(type, rule.patterns().size());
            return same > 1 ? word(type) + " " + count(type, pattern + 1) : word(type);
        }

        private static String word(String type) {
            return Group.byFactType(type).map(Group::label).orElseGet(() -> type.toLowerCase(Locale.ROOT));
        }

        private long count(String type, int upTo) {
            return rule.patterns().subList(0, upTo).stream()
                    .filter(p -> p.type().name().equals(type))
                    .count();
        }

        private String the(int pattern) {
            String thing = thing(pattern);
            boolean numbered = thing.matches(".* [0-9]+");
            return numbered ? thing : "the " + (thing.isEmpty() ? "answer" : thing);
        }

        private String effect(Effect effect) {
            Catalogue catalogue = edition.catalogue();
            if (effect instanceof Effect.Conclude c) {
                return "conclude " + catalogue.name("conclusion", c.conclusion())
                        + c.subject().map(s -> ", about " + the(s)).orElse("");
            }
            if (effect instanceof Effect.RuleOut r) {
                return "rule out " + target(r.target()) + " " + r.role().phrase();
            }
            if (effect instanceof Effect.Score s) {
                double step = edition.grading().steps().getOrDefault(s.points(), 0.0);
                return (s.support() ? "give " : "take from ")
                        + target(s.target()) + " " + Quantities.number(step, DIGITS) + " points for "
                        + edition.grading()
                                .criterion(s.criterion())
                                .map(Grading.Criterion::name)
                                .orElse(s.criterion());
            }
            if (effect instanceof Effect.Require r) {
                String place = r.after().isPresent() && r.before().isPresent()
                        ? " between " + stage(r.after().get()) + " and "
                                + stage(r.before().get())
                        : r.after().map(a -> " after " + stage(a)).orElse("")
                                + r.before().map(b -> " before " + stage(b)).orElse("");
                return "the line of " + target(r.target()) + " needs the stage " + catalogue.name("stage", r.stage())
                        + place;
            }
            if (effect instanceof Effect.Limit l) {
                return "keep the " + catalogue.name("parameter", l.parameter()) + " of " + stage(l.stage()) + " in "
                        + target(l.target()) + (l.max() ? " at or below " : " at or above ") + bound(l);
            }
            if (effect instanceof Effect.Caution c) {
                return "warn of " + catalogue.name("hazard", c.hazard())
                        + c.target().map(t -> " with " + target(t)).orElse("");
            }
            if (effect instanceof Effect.Verify v) {
                return "prove cleanliness by " + catalogue.name("test-method", v.method());
            }
            return ask((Effect.Ask) effect);
        }

        private String ask(Effect.Ask ask) {
            Optional<Attribute> attribute = ask.type().equals(FactTypes.ATTRIBUTE)
                    ? Optional.ofNullable(edition.catalogue().attributes().get(ask.attribute()))
                    : Group.byFactType(ask.type()).flatMap(g -> g.attribute(ask.attribute()));
            return "find out: "
                    + attribute
                            .map(Attribute::question)
                            .orElseGet(() -> Group.byFactType(ask.type())
                                    .map(Group::label)
                                    .orElse(ask.type()));
        }

        private String target(Effect.Target target) {
            return target instanceof Effect.Target.Node n
                    ? edition.catalogue().name("process", n.id())
                    : the(((Effect.Target.Matched) target).pattern());
        }

        private String stage(Effect.StageRef ref) {
            if (ref instanceof Effect.StageRef.Named n) {
                return n.id().equals(Effect.StageRef.MAIN)
                        ? "the main cleaning"
                        : edition.catalogue().name("stage", n.id());
            }
            return the(((Effect.StageRef.Matched) ref).pattern());
        }

        private String bound(Effect.Limit l) {
            if (l.bound() instanceof Effect.Bound.Literal x) {
                return Quantities.write(x.si(), l.dimension(), DIGITS);
            }
            Effect.Bound.FieldOf of = (Effect.Bound.FieldOf) l.bound();
            return "the " + label(of.pattern(), of.field()) + " of " + the(of.pattern());
        }

        /** The reason with its places as words in brackets: what stands there depends on the task. */
        private String reason(Effect effect) {
            StringBuilder out = new StringBuilder();
            for (Reason.Part part : effect.reason().parts()) {
                if (part instanceof Reason.Part.Words w) {
                    out.append(w.text());
                } else if (part instanceof Reason.Part.NameOf n) {
                    out.append('[').append(the(n.pattern())).append(']');
                } else if (part instanceof Reason.Part.ValueOf v) {
                    out.append('[').append(v.field().label()).append(']');
                } else {
                    out.append("[the process]");
                }
            }
            return out.toString();
        }
    }
}
