package org.washwright.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.task.FieldType;

/**
 * A rule as one would say it, with the names of the catalogue. Nothing is left out, so that who can't read the rule
 * language can still judge the rule.
 *
 * @param when what has to hold, one clause a pattern
 * @param then what the rule says then
 */
public record RuleSentence(List<String> when, List<Said> then) {

    static final int DIGITS = 6;

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

    /**
     * One condition of a rule as a clause, for instance "the substrate of the material is carbon steel".
     *
     * @param pattern number of the pattern
     * @param tests comparisons of that pattern; none for the whole of it
     */
    public static String clause(Edition edition, Rule rule, int pattern, List<Condition.Test> tests) {
        return new Writer(edition, rule).clause(pattern, tests);
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

    private record Writer(Edition edition, Rule rule, RuleThings things, TestPhrase phrase) {

        Writer(Edition edition, Rule rule) {
            this(edition, rule, new RuleThings(rule));
        }

        private Writer(Edition edition, Rule rule, RuleThings things) {
            this(edition, rule, things, new TestPhrase(edition, rule, things));
        }

        RuleSentence sentence() {
            EffectWords effects = new EffectWords(edition, things);
            List<String> when = new ArrayList<>();
            for (int i = 0; i < rule.patterns().size(); i++) {
                when.add(pattern(i));
            }
            return new RuleSentence(
                    when,
                    rule.effects().stream()
                            .map(e -> new Said(effects.effect(e), effects.reason(e)))
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
                    cells.add(new Cell(column(i, t.field()), phrase.demand(t)));
                }
            }
            return Optional.of(cells);
        }

        private static boolean isLiteral(Condition.Test t) {
            return t.operand() instanceof Condition.Operand.Number || t.operand() instanceof Condition.Operand.Terms;
        }

        private String column(int pattern, Field field) {
            String thing = things.thing(pattern);
            String label = things.label(pattern, field);
            return thing.isEmpty() || thing.equals(label) ? label : thing + ": " + label;
        }

        private String pattern(int i) {
            Pattern p = rule.patterns().get(i);
            String type = p.type().name();
            boolean bare =
                    p.condition() instanceof Condition.All all && all.parts().isEmpty();
            boolean concluded = type.equals(FactTypes.CONCLUSION);
            String head = concluded ? "it is concluded" : things.thing(i);
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
            if (Contact.byFactType(type).isPresent()) {
                return meeting(i, Contact.byFactType(type).get());
            }
            String demanded = condition(i, single(p.condition()));
            return start.isEmpty() ? demanded : start + ": " + demanded;
        }

        /** A meeting is called by the two that meet; what is left are the figures that it demands. */
        private String meeting(int i, Contact contact) {
            Pattern p = rule.patterns().get(i);
            String process = met(p.condition(), "process").orElse("any process");
            String other = met(p.condition(), contact.field())
                    .orElse("any " + contact.group().label());
            String start = p.sign() == Sign.NOT ? "not so: " : "";
            String head = start + process + " " + contact.preposition() + " " + other;
            List<Condition> parts = p.condition() instanceof Condition.All all ? all.parts() : List.of(p.condition());
            List<String> figures = parts.stream()
                    .filter(c -> !(c instanceof Condition.Test t) || !(t.field().type() instanceof FieldType.FactType))
                    .map(c -> nested(i, c))
                    .toList();
            return figures.isEmpty() ? head : head + ": " + String.join(" and ", figures);
        }

        /** Who is named in a field of a meeting. */
        private Optional<String> met(Condition condition, String field) {
            return condition
                    .tests()
                    .filter(t -> t.field().name().equals(field))
                    .map(t -> t.operand() instanceof Condition.Operand.FactOf f ? things.the(f.pattern()) : "")
                    .findFirst();
        }

        String clause(int i, List<Condition.Test> tests) {
            Pattern p = rule.patterns().get(i);
            String type = p.type().name();
            if (type.equals(FactTypes.CONCLUSION)) {
                return pattern(i).replaceFirst("^(it is (?:not )?concluded): ", "$1 that there is ");
            }
            if (!tests.isEmpty()) {
                return String.join(
                        " and ", tests.stream().map(t -> phrase.about(i, t)).toList());
            }
            List<Condition.Test> all = p.condition().tests().toList();
            boolean simple = p.sign() == Sign.POSITIVE && p.condition() instanceof Condition.All && !all.isEmpty();
            if (simple && !type.equals(FactTypes.PROCESS) && !things.thing(i).isEmpty()) {
                return "there is a " + RuleThings.word(type) + " whose "
                        + String.join(
                                " and whose ",
                                all.stream().map(t -> phrase.test(i, t)).toList());
            }
            return "this holds: " + pattern(i);
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
                return phrase.test(i, t);
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
    }
}
