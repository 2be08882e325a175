package org.washwright.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Term;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.engine.Firing;
import org.washwright.line.Evidence;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/**
 * How cleanliness is proven: for each thing that is demanded, or that the soil leaves, the methods that rules name and that can
 * see it; where none of them sees little enough, the first other one that does.
 */
final class ProofPlan {

    private static final String KIND = "test-method";
    private static final String DEMAND = "demand";
    private static final int FIGURES = 3;
    private static final int MOST_POOLED = 200;

    /** How many times its detection limit a method is asked to see [common practice, no source]. */
    private static final double MARGIN = 3;

    private final Catalogue catalogue;
    private final FactBase facts;
    private final Map<String, List<Integer>> named = new TreeMap<>();

    ProofPlan(Edition edition, FactBase facts, List<Firing> firings) {
        this.catalogue = edition.catalogue();
        this.facts = facts;
        for (Evidence<Effect.Verify> e : Evidence.general(firings, Effect.Verify.class)) {
            if (e.certain()) {
                named.computeIfAbsent(e.effect().method(), k -> new ArrayList<>())
                        .add(e.n());
            }
        }
    }

    /** What has to be proven: the flag of methods that see it, in words, and what is accepted. */
    private record Target(String flag, String sees, String acceptance, String reference, Optional<Double> limit) {}

    /** How well a method sees a target. */
    private record Sight(Term method, boolean enough, String sampling, String limit) {}

    /** The plan; empty when the edition says of no method what it sees. */
    List<Design.Proof> proofs() {
        Map<String, Design.Proof> plan = new LinkedHashMap<>();
        for (Target target : targets()) {
            List<Sight> sights = catalogue.ofKind(KIND).values().stream()
                    .filter(m -> !m.isWithdrawn() && yes(m.property(target.flag())))
                    .map(m -> sight(m, target))
                    .sorted(Comparator.comparing((Sight s) -> !s.enough())
                            .thenComparing(s -> s.method().id()))
                    .toList();
            List<Sight> chosen = new ArrayList<>(sights.stream()
                    .filter(s -> named.containsKey(s.method().id()))
                    .toList());
            if (chosen.stream().noneMatch(Sight::enough)) {
                sights.stream().filter(Sight::enough).findFirst().ifPresent(chosen::add);
            }
            chosen.forEach(s -> plan.putIfAbsent(target.flag() + s.method().id(), proof(s, target)));
        }
        return List.copyOf(plan.values());
    }

    private Design.Proof proof(Sight sight, Target target) {
        Term m = sight.method();
        return new Design.Proof(
                m.id(),
                m.name(),
                target.sees(),
                target.acceptance(),
                target.reference(),
                sight.sampling(),
                sight.limit(),
                m.property("every") instanceof Value.Number n
                        ? Intervals.words(n.span().low())
                        : "as agreed",
                catalogue.blindSpots().getOrDefault(m.id(), ""),
                sight.enough(),
                named.getOrDefault(m.id(), List.of()));
    }

    private List<Target> targets() {
        List<Target> targets = new ArrayList<>();
        film().ifPresent(targets::add);
        particles().ifPresent(targets::add);
        number("ionic")
                .ifPresent(v -> targets.add(
                        new Target("seesSalts", "salts", "at most " + film(v), DEMAND + "/ionic", Optional.of(v))));
        if (yes(value("waterBreakFree"))) {
            targets.add(new Target(
                    "seesWetting",
                    "wetting",
                    "the film of water holds for a minute",
                    DEMAND + "/waterBreakFree",
                    Optional.empty()));
        } else {
            number("contactAngle")
                    .ifPresent(v -> targets.add(new Target(
                            "seesWetting",
                            "wetting",
                            atMost(v, Dimension.ANGLE),
                            DEMAND + "/contactAngle",
                            Optional.empty())));
        }
        if (yes(value("biological.counted"))) {
            targets.add(new Target(
                    "seesGerms", "germs", "as the buyer's limit says", DEMAND + "/biological", Optional.empty()));
        }
        return targets;
    }

    private Optional<Target> film() {
        Optional<Double> limit = number("strictestResidue").or(() -> number("residue"));
        if (limit.isPresent()) {
            String ref = number("residue").isPresent() ? DEMAND + "/residue" : DEMAND + "/strictestResidue";
            return Optional.of(new Target("seesFilm", "film", "at most " + film(limit.get()), ref, limit));
        }
        return soil("kind.oily")
                .map(f -> new Target(
                        "seesFilm", "film", "no limit is demanded; agree on one", f.id() + "/kind", Optional.empty()));
    }

    private Optional<Target> particles() {
        Optional<Double> largest = number("largestParticle");
        if (largest.isPresent()) {
            return Optional.of(new Target(
                    "seesParticles",
                    "particles",
                    "none of " + Quantities.write(largest.get(), Dimension.FINE_LENGTH, FIGURES)
                            + " and more, and within the code given",
                    DEMAND + "/largestParticle",
                    number("finestParticle").or(() -> largest)));
        }
        return soil("kind.particulate")
                .map(f -> new Target(
                        "seesParticles",
                        "particles",
                        "no limit is demanded; agree on one",
                        f.id() + "/kind",
                        Optional.empty()));
    }

    private Sight sight(Term method, Target target) {
        if (target.limit().isEmpty()) {
            return new Sight(method, true, "one part of a load", "");
        }
        double limit = target.limit().get();
        if (method.property("detects") instanceof Value.Number least) {
            return pooled(method, limit, least.span().high());
        }
        if (method.property("detectsOnArea") instanceof Value.Number least) {
            double smallest = least.span().high();
            return new Sight(
                    method,
                    smallest * MARGIN <= limit,
                    "three places on one part of a load",
                    "sees " + film(smallest) + " where " + film(limit) + " are allowed");
        }
        if (method.property("detectsSize") instanceof Value.Number least) {
            double smallest = least.span().high();
            return new Sight(
                    method,
                    smallest <= limit,
                    "one part of a load",
                    "counts from " + Quantities.write(smallest, Dimension.FINE_LENGTH, FIGURES)
                            + " where particles from " + Quantities.write(limit, Dimension.FINE_LENGTH, FIGURES)
                            + " count");
        }
        return new Sight(method, true, "one part of a load", "");
    }

    /** A method that sees so much in a batch needs as many parts together as hold that much. */
    private Sight pooled(Term method, double limit, double least) {
        Value area = facts.fact("part")
                .flatMap(f -> f.type().field("wettedArea").map(f::value))
                .orElse(Value.NOT_APPLICABLE);
        String sees = "sees " + mass(least) + " in a batch";
        if (!(area instanceof Value.Number n) || n.span().low() <= 0) {
            return new Sight(method, true, "as many parts together as hold enough; their area is not known", sees);
        }
        double allowed = limit * n.span().low();
        int parts = (int) Math.min(MOST_POOLED + 1.0, Math.ceil(MARGIN * least / allowed));
        String one = "; one part may hold " + mass(allowed);
        if (parts > MOST_POOLED) {
            return new Sight(method, false, "more than " + MOST_POOLED + " parts together would be needed", sees + one);
        }
        return new Sight(method, true, parts <= 1 ? "one part of a load" : parts + " parts together", sees + one);
    }

    private Value value(String field) {
        return facts.fact(DEMAND)
                .flatMap(f -> f.type().field(field).map(f::value))
                .orElse(Value.NOT_APPLICABLE);
    }

    private Optional<Double> number(String field) {
        if (value(field) instanceof Value.Number n) {
            Span span = n.span();
            // Of a range of limits the strictest end is proven.
            return Optional.of(span.low() > 0 ? span.low() : span.high()).filter(Double::isFinite);
        }
        return Optional.empty();
    }

    private Optional<Fact> soil(String flag) {
        return facts.all().stream()
                .filter(f -> f.id().startsWith("soils/") && f.sure())
                .filter(f -> f.type().field(flag).map(x -> yes(f.value(x))).orElse(false))
                .findFirst();
    }

    private static String film(double si) {
        return small(si, Dimension.AREAL_MASS, "mg/m²", "g/m²");
    }

    private static String mass(double si) {
        return small(si, Dimension.MASS, "mg", "g");
    }

    /** Residues are spoken of in milligrams. */
    private static String small(double si, Dimension dimension, String fine, String coarse) {
        double inFine = Quantities.fromSi(si, fine, dimension);
        String unit = inFine < 10_000 ? fine : coarse;
        return Quantities.number(Quantities.fromSi(si, unit, dimension), FIGURES) + " " + unit;
    }

    private static String atMost(double si, Dimension dimension) {
        return "at most " + Quantities.write(si, dimension, FIGURES);
    }

    private static boolean yes(Value value) {
        return value instanceof Value.OneOf o
                && o.terms().size() == 1
                && o.terms().contains(FieldType.YES);
    }
}
