package org.washwright.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.Match;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.KnownEdition;
import org.washwright.generate.KnownTask;
import org.washwright.generate.RuleWriter;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;

/**
 * Where everything is known, rules mean what plain Drools takes them to mean. The text of the experts runs there by itself,
 * with no part of the canonical form in between; compiled canonical rules and the interpreter have to find the same matches
 * and conclusions. Editions are compiled some at a time, for compiling is what takes long, and run one by one.
 */
@Tag("slow")
class BareDroolsIT {

    private static final int EDITIONS = 200;
    private static final int TOGETHER = 20;
    private static final int RULES = 8;
    private static final int TASKS = 12;

    /** The first comparison of a pattern, joined to the rest by "and", so that its opposite matches other facts. */
    private static final Pattern FIRST_OPERATOR = Pattern.compile(
            "(  \\$p\\d : (?!Conclusion|Attribute)[A-Z][A-Za-z]+\\([a-z]+(?:\\.\\w+)? )(==|in|<=?|>=?)(?= )");

    private static final Map<String, String> OPPOSITE =
            Map.of("==", "!=", "in", "not in", "<", ">=", "<=", ">", ">", "<=", ">=", "<");

    /** An edition, and the text of its rules as an expert would write it. */
    private record Sample(String prefix, Edition edition, String drl, List<List<Fact>> tasks) {}

    /** Sums over editions. */
    private record Count(int editions, int rules, int pairs, int matches, int conclusions, int conclusive) {
        Count plus(Count o) {
            return new Count(
                    editions + o.editions,
                    rules + o.rules,
                    pairs + o.pairs,
                    matches + o.matches,
                    conclusions + o.conclusions,
                    conclusive + o.conclusive);
        }
    }

    @Test
    void whereAllIsKnownPlainDroolsTheCompiledRulesAndTheInterpreterAgree() {
        long start = System.nanoTime();
        Count sum = IntStream.range(0, EDITIONS / TOGETHER)
                .parallel()
                .mapToObj(BareDroolsIT::agreeing)
                .reduce(Count::plus)
                .orElseThrow();
        System.out.println(sum + " agree, in " + (System.nanoTime() - start) / 1_000_000_000 + " s");
        assertEquals(EDITIONS, sum.editions());
        assertEquals(EDITIONS * RULES, sum.rules());
        assertEquals(EDITIONS * RULES * TASKS, sum.pairs());
        // Own earlier output, half of it: there has to be something to agree on, and rules have to build on rules.
        assertTrue(sum.matches() > 2_500, sum.matches() + " matches");
        assertTrue(sum.conclusions() > 1_200, sum.conclusions() + " conclusions");
        assertTrue(sum.conclusive() > 250, sum.conclusive() + " matches of conclusions");
    }

    private static Count agreeing(int batch) {
        List<Sample> samples = samples(batch, TOGETHER);
        BareDrools bare = BareDrools.compile(
                samples.get(0).edition(),
                samples.stream()
                        .map(s -> BareText.plain(BareText.rules(s.drl())))
                        .toList());
        Inference compiled = compiled(samples);
        Count sum = new Count(0, 0, 0, 0, 0, 0);
        for (Sample s : samples) {
            Edition e = s.edition();
            Inference interpreted = interpreted(s);
            int matches = 0;
            int conclusions = 0;
            int conclusive = 0;
            for (List<Fact> facts : s.tasks()) {
                BareDrools.Found found = bare.run(facts, s.prefix());
                assertEquals(found, found(interpreted.run(facts), s), () -> "interpreted\n" + s.drl());
                assertEquals(found, found(compiled.run(facts), s), () -> "compiled\n" + s.drl());
                matches += found.matches().size();
                conclusions += found.conclusions().size();
                conclusive += (int) found.matches().stream()
                        .filter(m -> m.contains(" conclusions/"))
                        .count();
            }
            sum = sum.plus(new Count(
                    1, e.rules().size(), e.rules().size() * s.tasks().size(), matches, conclusions, conclusive));
        }
        return sum;
    }

    @Test
    void aChangedOperatorInThePlainTextIsNoticed() {
        List<Sample> samples = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (Sample s : samples(1000, TOGETHER)) {
            Set<String> matching = new TreeSet<>();
            s.tasks()
                    .forEach(t -> interpreted(s)
                            .run(t)
                            .matches()
                            .forEach(m -> matching.add(m.rule().id())));
            List<BareText.Raw> rules = new ArrayList<>(BareText.rules(s.drl()));
            for (int i = 0; i < rules.size(); i++) {
                BareText.Raw r = rules.get(i);
                String when = FIRST_OPERATOR
                        .matcher(r.when())
                        .replaceFirst(m -> Matcher.quoteReplacement(m.group(1) + OPPOSITE.get(m.group(2))));
                if (matching.contains(r.id()) && !when.equals(r.when())) {
                    rules.set(i, new BareText.Raw(r.id(), when, r.then()));
                    samples.add(s);
                    texts.add(BareText.plain(rules));
                    break;
                }
            }
        }
        BareDrools bare = BareDrools.compile(samples.get(0).edition(), texts);
        for (Sample s : samples) {
            boolean noticed = s.tasks().stream()
                    .anyMatch(t ->
                            !bare.run(t, s.prefix()).equals(found(interpreted(s).run(t), s)));
            assertTrue(noticed, () -> "an operator was changed in " + s.drl());
        }
        System.out.println(samples.size() + " changed operators noticed");
        assertTrue(samples.size() >= 5, samples.size() + " operators changed");
    }

    @Test
    void aLostMatchIsNoticed() {
        int lost = 0;
        for (Sample s : samples(0, 5)) {
            for (List<Fact> facts : s.tasks()) {
                Inference.Inferred whole = interpreted(s).run(facts);
                for (int i = 0; i < whole.matches().size(); i++) {
                    List<Match> less = new ArrayList<>(whole.matches());
                    less.remove(i);
                    assertNotEquals(found(whole, s), found(new Inference.Inferred(less, whole.conclusions()), s));
                    lost++;
                }
            }
        }
        assertTrue(lost > 50, lost + " matches lost");
    }

    private static Inference interpreted(Sample s) {
        Edition e = s.edition();
        return ReferenceInterpreter.factory().prepare(e.taskRules(), e.levels(), e.types());
    }

    private static List<Sample> samples(int batch, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> sample(batch * TOGETHER + i))
                .toList();
    }

    private static Sample sample(int number) {
        Random random = new Random(number);
        Map<String, String> texts = KnownEdition.texts(number, random);
        String prefix = "E" + number + "-R-";
        String drl = RuleWriter.writePlain(random, KnownEdition.with(texts, ""), RULES, prefix);
        Edition edition = KnownEdition.with(texts, drl);
        return new Sample(
                prefix,
                edition,
                drl,
                IntStream.range(0, TASKS)
                        .mapToObj(i -> KnownTask.facts(random, edition))
                        .toList());
    }

    private static Inference compiled(List<Sample> samples) {
        List<Rule> rules = new ArrayList<>();
        Map<String, Integer> levels = new TreeMap<>();
        samples.forEach(s -> {
            rules.addAll(s.edition().taskRules());
            levels.putAll(s.edition().levels());
        });
        return DroolsInference.factory()
                .prepare(rules, levels, samples.get(0).edition().types());
    }

    /** Matches and conclusions of one edition as plain Drools tells them; whatever is not certain has no place here. */
    private static BareDrools.Found found(Inference.Inferred inferred, Sample sample) {
        List<String> matches = new ArrayList<>();
        inferred.matches().stream()
                .filter(m -> m.rule().id().startsWith(sample.prefix()))
                .forEach(m -> {
                    assertTrue(m.certain(), () -> m + " is not certain though all is known");
                    StringBuilder key = new StringBuilder(m.rule().id());
                    m.facts().forEach(f -> f.ifPresent(x -> key.append(' ').append(x.id())));
                    matches.add(key.toString());
                });
        String own =
                "conclusions/c" + sample.prefix().substring(1, sample.prefix().indexOf('-')) + "-";
        return new BareDrools.Found(
                matches.stream().sorted().toList(),
                inferred.conclusions().stream()
                        .map(Fact::id)
                        .filter(id -> id.startsWith(own))
                        .sorted()
                        .toList());
    }
}
