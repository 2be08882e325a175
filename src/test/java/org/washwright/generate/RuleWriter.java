package org.washwright.generate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.rule.check.RuleChecker;
import org.washwright.task.FieldType;

/**
 * Writes rules at random, in the language of experts: over all fact types but stages, with every form of condition, and with
 * conclusions that build on conclusions. Levels are kept by drawing only conclusions later in the alphabet than those
 * matched.
 */
public final class RuleWriter {

    private final Random random;
    private final Catalogue catalogue;
    private final List<String> conclusions;
    private final boolean plainJoins;
    private final List<FactType> types = new ArrayList<>();

    /** A pattern already written: its variable and type. */
    record Bound(String variable, FactType type) {}

    private final List<Bound> bound = new ArrayList<>();
    private int nextConclusion;
    private long ways;

    private RuleWriter(Random random, Edition edition, boolean plainJoins) {
        this.random = random;
        this.catalogue = edition.catalogue();
        this.conclusions = List.copyOf(edition.catalogue()
                .ofKind(FactTypes.CONCLUSION.toLowerCase(Locale.ROOT))
                .keySet());
        this.plainJoins = plainJoins;
        edition.types().byName().values().stream()
                .filter(t -> !t.name().equals(FactTypes.STAGE))
                .forEach(types::add);
    }

    /** Text of this many rules over an edition's words. */
    public static String write(Random random, Edition edition, int count) {
        return write(random, edition, count, "R-", false);
    }

    /**
     * Text of rules whose ids start with a prefix and that join facts by single values only: a field that holds all groups
     * of a process at once is compared with literals, for plain DRL knows no comparison that would mean the same.
     */
    public static String writePlain(Random random, Edition edition, int count, String prefix) {
        return write(random, edition, count, prefix, true);
    }

    private static String write(Random random, Edition edition, int count, String prefix, boolean plainJoins) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < count; i++) {
            out.append(new RuleWriter(random, edition, plainJoins).rule(prefix + (1000 + i)));
        }
        return out.toString();
    }

    private String rule(String id) {
        StringBuilder when = new StringBuilder();
        int patterns = 1 + random.nextInt(4);
        ways = 1;
        for (int i = 0; i < patterns; i++) {
            when.append("  ").append(pattern()).append('\n');
        }
        EffectWriter effects = new EffectWriter(random, bound, conclusions.subList(nextConclusion, conclusions.size()));
        StringBuilder then = new StringBuilder();
        then.append("  ").append(effects.effect()).append(";\n");
        if (random.nextBoolean()) {
            then.append("  ").append(effects.effect()).append(";\n");
        }
        return "rule \"" + id + "\"\n  @id(\"" + id + "\") @basis(\"common practice\")\nwhen\n" + when + "then\n" + then
                + "end\n\n";
    }

    private String pattern() {
        int form = random.nextInt(10);
        boolean positive = bound.isEmpty() || form < 6;
        FactType type = types.get(random.nextInt(types.size()));
        // There are as many meetings as processes times entries, and what is computed of them mostly does not apply:
        // they
        // come up, but seldom.
        while (Contact.byFactType(type.name()).isPresent() && random.nextInt(8) > 0) {
            type = types.get(random.nextInt(types.size()));
        }
        // Conclusions are what rules hang together by, so they come up more often than their turn.
        if (random.nextInt(5) == 0) {
            type = types.stream()
                    .filter(t -> t.name().equals(FactTypes.CONCLUSION))
                    .findFirst()
                    .orElseThrow();
        }
        String join = !bound.isEmpty() && random.nextInt(3) == 0 ? equalJoin(type) : "";
        // A conclusion about a fact that is bound is one of the two that its id may name; nothing else makes ways
        // fewer.
        long factor = join.startsWith("subject") ? 2 : positive ? type.cap() : 1;
        if (ways * factor > RuleChecker.MAX_COMBINATIONS) {
            positive = false;
            factor = 1;
        }
        ways *= factor;
        List<String> parts = new ArrayList<>();
        String name = type.name();
        if (name.startsWith(FactTypes.ATTRIBUTE + "/")) {
            parts.add("id == \"" + name.substring(name.indexOf('/') + 1) + "\"");
            name = FactTypes.ATTRIBUTE;
        }
        if (name.equals(FactTypes.CONCLUSION)) {
            parts.add(conclusions());
        }
        if (!join.isEmpty()) {
            parts.add(join);
        }
        int constraints = random.nextInt(3);
        for (int i = 0; i < constraints; i++) {
            constraint(type, 0).ifPresent(parts::add);
        }
        String variable = "$p" + bound.size();
        List<String> bindings = new ArrayList<>();
        if (positive && random.nextInt(3) == 0) {
            Field field = field(type);
            if (!(field.type() instanceof FieldType.CodeType) && joins(field)) {
                String b = "$b0x" + bound.size();
                bindings.add(b + " : " + field.name());
                pending.add(new BoundField(b, field.type()));
            }
        }
        parts.addAll(bindings);
        String body = name + "(" + String.join(", ", parts) + ")";
        if (positive) {
            bound.add(new Bound(variable, type));
            boundFields.addAll(pending);
            pending.clear();
            return variable + " : " + body;
        }
        return (form % 2 == 0 ? "not " : "exists ") + body;
    }

    private record BoundField(String variable, FieldType type) {}

    private final List<BoundField> boundFields = new ArrayList<>();
    private final List<BoundField> pending = new ArrayList<>();

    private String conclusions() {
        TreeSet<String> ids = new TreeSet<>();
        for (int i = 0; i <= random.nextInt(2); i++) {
            ids.add(conclusions.get(random.nextInt(conclusions.size() - 1)));
        }
        nextConclusion = Math.max(nextConclusion, conclusions.indexOf(ids.last()) + 1);
        return ids.size() == 1
                ? "id == \"" + ids.first() + "\""
                : "id in ("
                        + String.join(
                                ", ", ids.stream().map(i -> "\"" + i + "\"").toList()) + ")";
    }

    /** Equality with an earlier pattern, so that the checker counts the pattern as joined; empty when there is none. */
    private String equalJoin(FactType type) {
        Bound other = bound.get(random.nextInt(bound.size()));
        if (type.name().equals(FactTypes.CONCLUSION)) {
            return "subject == " + other.variable();
        }
        for (int i = 0; i < 6; i++) {
            Field own = field(type);
            List<Field> alike = other.type().fields().values().stream()
                    .filter(f -> f.type().equals(own.type()) && joins(f) && joins(own))
                    .filter(f -> !(f.type() instanceof FieldType.CodeType) && !(f.type() instanceof FieldType.FactType))
                    .toList();
            if (!alike.isEmpty()) {
                return own.name() + " == " + other.variable() + "."
                        + alike.get(random.nextInt(alike.size())).name();
            }
        }
        return "";
    }

    private Optional<String> constraint(FactType type, int depth) {
        int form = random.nextInt(depth < 2 ? 6 : 4);
        if (form < 4) {
            return comparison(type);
        }
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            constraint(type, depth + 1).ifPresent(parts::add);
        }
        return parts.size() < 2
                ? Optional.empty()
                : Optional.of("(" + String.join(form == 4 ? " || " : " && ", parts) + ")");
    }

    private Optional<String> comparison(FactType type) {
        Field field = field(type);
        if (field.type() instanceof FieldType.CodeType || field.type() instanceof FieldType.FactType) {
            return Optional.empty();
        }
        if (type.name().equals(FactTypes.CONCLUSION)) {
            // Another condition on the id could name a conclusion that this rule draws.
            return Optional.empty();
        }
        if (random.nextInt(3) == 0 && joins(field)) {
            List<String> others = new ArrayList<>();
            boundFields.stream().filter(b -> b.type().equals(field.type())).forEach(b -> others.add(b.variable()));
            for (Bound b : bound) {
                b.type().fields().values().stream()
                        .filter(f -> f.type().equals(field.type()) && joins(f))
                        .forEach(f -> others.add(b.variable() + "." + f.name()));
            }
            if (!others.isEmpty()) {
                return Optional.of(field.name() + " " + op(field) + " " + others.get(random.nextInt(others.size())));
            }
        }
        if (field.type() instanceof FieldType.NumberType n) {
            List<String> grid = Grid.of(n.dimension());
            return Optional.of(field.name() + " " + op(field) + " \""
                    + Grid.text(n.dimension(), grid.get(random.nextInt(grid.size()))) + "\"");
        }
        return Optional.of(terms(field, (FieldType.TermType) field.type()));
    }

    private String terms(Field field, FieldType.TermType type) {
        if (type.isFlag() && random.nextInt(4) > 0) {
            return field.name() + (random.nextInt(4) == 0 ? " != " : " == ") + random.nextBoolean();
        }
        List<String> ids = type.isFlag()
                ? List.of("yes", "no")
                : List.copyOf(catalogue.ofKind(type.kind()).keySet());
        TreeSet<String> some = new TreeSet<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            some.add(ids.get(random.nextInt(Math.min(ids.size(), type.kind().equals("process") ? 7 : 3))));
        }
        if (some.size() == 1 && random.nextBoolean()) {
            return field.name() + (random.nextInt(3) == 0 ? " != " : " == ") + "\"" + some.first() + "\"";
        }
        return field.name() + (random.nextInt(3) == 0 ? " not in (" : " in (")
                + String.join(", ", some.stream().map(t -> "\"" + t + "\"").toList()) + ")";
    }

    private boolean joins(Field field) {
        return !plainJoins || !field.name().equals("node");
    }

    private String op(Field field) {
        List<String> ops = field.type() instanceof FieldType.NumberType
                ? List.of("<", "<=", ">", ">=", "==", "!=")
                : List.of("==", "!=");
        return ops.get(random.nextInt(ops.size()));
    }

    private Field field(FactType type) {
        List<Field> all = List.copyOf(type.fields().values());
        return all.get(random.nextInt(all.size()));
    }
}
