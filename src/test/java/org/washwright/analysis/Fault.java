package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Op;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleText;
import org.washwright.rule.Sign;
import org.washwright.task.FieldType;

/** Faults that slip into rules: each makes one somewhere in a rule, chosen at random. */
enum Fault {
    DROP_CONDITION {
        @Override
        Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random) {
            return site(rule, random, t -> true).map(s -> {
                Rule faulty = Conditions.dropped(rule, s.pattern(), s.test());
                return Mutant.of(this, rule, faulty, "dropped " + TestWords.of(s.test(), edition), texts);
            });
        }
    },
    WIDEN {
        @Override
        Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random) {
            return site(rule, random, t -> widened(t, edition, random).isPresent())
                    .map(s -> {
                        Condition.Test wider =
                                widened(s.test(), edition, random).orElseThrow();
                        Rule faulty = Rewrites.replaced(rule, s.pattern(), s.test(), t -> wider);
                        String what = TestWords.of(s.test(), edition) + " made " + TestWords.of(wider, edition);
                        return Mutant.of(this, rule, faulty, what, texts);
                    });
        }
    },
    NEGATE {
        @Override
        Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random) {
            for (int i = 0; i < rule.patterns().size(); i++) {
                Sign sign = rule.patterns().get(i).sign();
                if (sign != Sign.POSITIVE && random.nextBoolean()) {
                    Sign other = sign == Sign.NOT ? Sign.EXISTS : Sign.NOT;
                    Rule faulty = Conditions.signed(rule, i, other);
                    return Optional.of(
                            Mutant.of(this, rule, faulty, sign + " made " + other + " in condition " + (i + 1), texts));
                }
            }
            return site(rule, random, t -> Rewrites.negated(t).isPresent()).map(s -> {
                Condition other = Rewrites.negated(s.test()).orElseThrow();
                Rule faulty = Rewrites.replaced(rule, s.pattern(), s.test(), t -> other);
                return Mutant.of(this, rule, faulty, "negated " + TestWords.of(s.test(), edition), texts);
            });
        }
    },
    DUPLICATE {
        @Override
        Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random) {
            String again = RuleText.readable(Conditions.named(rule, rule.id() + "-again"));
            return Optional.of(Mutant.of(this, rule, "written twice", texts, RuleText.readable(rule) + "\n" + again));
        }
    },
    SWAP_TERM {
        @Override
        Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random) {
            if (random.nextBoolean()) {
                Optional<Mutant> effect = Swaps.inEffect(rule, edition, random)
                        .map(s -> Mutant.of(this, rule, s.rule(), s.what(), texts));
                if (effect.isPresent()) {
                    return effect;
                }
            }
            return site(rule, random, t -> !swaps(t, edition).isEmpty()).map(s -> {
                List<Condition.Test> all = swaps(s.test(), edition);
                Condition.Test other = all.get(random.nextInt(all.size()));
                Rule faulty = Rewrites.replaced(rule, s.pattern(), s.test(), t -> other);
                String what = TestWords.of(s.test(), edition) + " made " + TestWords.of(other, edition);
                return Mutant.of(this, rule, faulty, what, texts);
            });
        }
    },
    REMOVE_SOURCE {
        @Override
        Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random) {
            boolean needed = rule.basis() != org.washwright.rule.Basis.COMMON_PRACTICE
                    && !rule.sources().isEmpty();
            return needed
                    ? Optional.of(Mutant.of(this, rule, Conditions.unsourced(rule), "source removed", texts))
                    : Optional.empty();
        }
    },
    CLASH_UNIT {
        private static final Pattern QUANTITY = Pattern.compile("\"([0-9.]+) ([^\" ]+)\"");

        @Override
        Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random) {
            String text = RuleText.readable(rule);
            Matcher m = QUANTITY.matcher(text);
            List<int[]> places = new ArrayList<>();
            while (m.find()) {
                if (m.start() > text.indexOf("\nwhen\n") && isUnit(m.group(2))) {
                    places.add(new int[] {m.start(2), m.end(2)});
                }
            }
            if (places.isEmpty()) {
                return Optional.empty();
            }
            int[] at = places.get(random.nextInt(places.size()));
            String unit = text.substring(at[0], at[1]);
            String other = Quantities.isUnitOf(unit, Dimension.VELOCITY) ? "kg" : "m/s";
            return Optional.of(Mutant.of(
                    this,
                    rule,
                    unit + " made " + other,
                    texts,
                    text.substring(0, at[0]) + other + text.substring(at[1])));
        }

        private boolean isUnit(String unit) {
            for (Dimension d : Dimension.values()) {
                if (Quantities.isUnitOf(unit, d)) {
                    return true;
                }
            }
            return false;
        }
    },
    SHADOW_ROW {
        @Override
        Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random) {
            return TableRow.of(rule, texts)
                    .flatMap(row -> row.widened(rule.id() + "-wide", random))
                    .map(more -> {
                        Map<String, String> all = new java.util.TreeMap<>(texts);
                        all.put(rule.place().file(), more);
                        return new Mutant(this, rule.id(), "a wider row added to its table", all);
                    });
        }
    };

    /** The edition with this fault in a rule; empty when the rule offers no place for it. */
    abstract Optional<Mutant> in(Rule rule, Edition edition, Map<String, String> texts, Random random);

    /** A comparison of a rule. */
    private record Site(int pattern, Condition.Test test) {}

    private static Optional<Site> site(Rule rule, Random random, java.util.function.Predicate<Condition.Test> fit) {
        List<Site> sites = new ArrayList<>();
        for (int i = 0; i < rule.patterns().size(); i++) {
            int pattern = i;
            rule.patterns().get(i).condition().tests().filter(fit).forEach(t -> sites.add(new Site(pattern, t)));
        }
        return sites.isEmpty() ? Optional.empty() : Optional.of(sites.get(random.nextInt(sites.size())));
    }

    /** The comparison with a looser bound or one term more. */
    private static Optional<Condition.Test> widened(Condition.Test t, Edition edition, Random random) {
        if (t.operand() instanceof Condition.Operand.Number n && t.op().isOrder()) {
            Dimension d = ((FieldType.NumberType) t.field().type()).dimension();
            if (d == Dimension.DATE) {
                return Optional.empty();
            }
            double amount = Quantities.fromSi(n.si(), d.defaultUnit(), d);
            double factor = t.op() == Op.LT || t.op() == Op.LE ? 1.1 : 0.9;
            String wider = amount == 0
                    ? (factor > 1 ? "1" : "-1")
                    : new java.math.BigDecimal(amount * factor)
                            .round(new java.math.MathContext(4))
                            .toPlainString();
            double si = Quantities.toSi(wider, d.defaultUnit(), d);
            return si < Quantities.lowest(d)
                    ? Optional.empty()
                    : Optional.of(new Condition.Test(t.field(), t.op(), new Condition.Operand.Number(si)));
        }
        if (!(t.operand() instanceof Condition.Operand.Terms terms)
                || t.op() == Op.NE
                || t.op() == Op.NOT_IN
                || isFlag(t)) {
            return Optional.empty();
        }
        List<String> others = others(t, terms, edition);
        if (others.isEmpty()) {
            return Optional.empty();
        }
        TreeSet<String> more = new TreeSet<>(terms.ids());
        more.add(others.get(random.nextInt(others.size())));
        return Optional.of(new Condition.Test(t.field(), Op.IN, new Condition.Operand.Terms(more)));
    }

    private static boolean isFlag(Condition.Test t) {
        return t.field().type() instanceof FieldType.TermType type && type.isFlag();
    }

    private static List<String> others(Condition.Test t, Condition.Operand.Terms terms, Edition edition) {
        String kind = ((FieldType.TermType) t.field().type()).kind();
        List<String> all = new ArrayList<>();
        if (kind.equals(FieldType.FLAG)) {
            all.addAll(List.of(FieldType.NO, FieldType.YES));
        } else if (kind.equals(FactTypes.LINE_STAGE)) {
            all.addAll(edition.catalogue().stages().keySet());
        } else {
            all.addAll(edition.terms(kind));
        }
        all.removeAll(terms.ids());
        return all.stream().sorted().toList();
    }

    /** The comparison with one term swapped for another. */
    private static List<Condition.Test> swaps(Condition.Test t, Edition edition) {
        List<Condition.Test> out = new ArrayList<>();
        if (t.operand() instanceof Condition.Operand.Terms terms) {
            for (String other : others(t, terms, edition)) {
                TreeSet<String> swapped = new TreeSet<>(terms.ids());
                swapped.remove(swapped.first());
                swapped.add(other);
                out.add(new Condition.Test(t.field(), t.op(), new Condition.Operand.Terms(swapped)));
            }
        }
        return out;
    }
}
