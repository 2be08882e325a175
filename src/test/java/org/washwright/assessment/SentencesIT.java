package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rule.Levels;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * No link is decoration: every sentence of the demo answers leads to rules and given facts that exist, and it changes when
 * they are taken away, unless another listed origin holds it.
 */
@Tag("slow")
class SentencesIT {

    /**
     * Every third process, and each that leads an answer: thousands of answers are asked for, and each sentence is made the same
     * way for every process.
     */
    private static final Edition EDITION = some();

    private static final Assessor SOME = Assessor.of(EDITION, SweepInference.factory());

    private static Edition some() {
        Edition whole = Starter.edition();
        Set<String> ids = new TreeSet<>();
        int n = 0;
        for (ProcessTerm leaf : whole.catalogue().leaves()) {
            if (n++ % 3 == 0) {
                ids.add(leaf.id());
            }
        }
        Starter.demoTasks()
                .values()
                .forEach(task -> Starter.swept().assess(task, Starter.WISHES).answer().candidates().stream()
                        .limit(1)
                        .forEach(c -> ids.add(c.process())));
        return whole.with(whole.rules(), whole.catalogue().withProcesses(ids));
    }

    static Stream<String> demoTasks() {
        return Starter.demoTasks().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void everyCitationLeadsToSomethingThatIsThere(String name) {
        Said said = said(task(name));
        assertEquals(List.of(), said.faults());
        // Own earlier output: the shortest of the demo answers, where one process stands, says 25 things.
        assertTrue(said.sentences().size() > 20, said.sentences().size() + " sentences");
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void theHeadlineCitesTheFiringsThatPlacedItsStages(String name) {
        Answer answer = SOME.assess(task(name), Starter.WISHES).answer();
        Set<Integer> placing = new TreeSet<>();
        answer.candidates().stream()
                .limit(1)
                .flatMap(c -> c.stages().stream())
                .filter(Answer.Stage::certain)
                .forEach(s -> placing.addAll(s.firings()));
        assertEquals(List.copyOf(placing), answer.headline().firings());
        for (int n : placing) {
            Answer.Firing firing = answer.firings().stream()
                    .filter(f -> f.n() == n)
                    .findFirst()
                    .orElseThrow();
            assertTrue(
                    firing.findings().stream()
                            .anyMatch(f -> Set.of("require", "limit").contains(f.verb())),
                    firing.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void aSentenceGoesWithEveryRuleBehindIt(String name) {
        Said before = said(task(name));
        List<String> kept = new ArrayList<>();
        Map<String, Said> without = new TreeMap<>();
        for (String sentence : before.sentences().keySet()) {
            for (String rule : before.rulesBehind(sentence)) {
                Said after = without.computeIfAbsent(
                        rule,
                        r -> new Said(Assessor.of(without(r), SweepInference.factory())
                                .assess(task(name), Starter.WISHES)
                                .answer()));
                if (after.sentences().containsKey(sentence)) {
                    Set<String> listed = new TreeSet<>(before.rules(sentence));
                    listed.remove(rule);
                    listed.retainAll(after.rules(sentence));
                    if (listed.isEmpty()) {
                        kept.add("without " + rule + " it still says by " + after.rules(sentence) + ": " + sentence);
                    }
                }
            }
        }
        assertEquals(List.of(), kept);
        assertTrue(without.size() > 10, without.size() + " rules taken away");
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void aSentenceGoesWithTheGivenFactsBehindIt(String name) {
        CleaningTask task = task(name);
        Said before = said(task);
        Map<Set<String>, List<Said>> without = new HashMap<>();
        List<String> kept = new ArrayList<>();
        int tried = 0;
        for (String sentence : before.sentences().keySet()) {
            Set<String> given = before.given(sentence);
            for (String one : given) {
                tried++;
                // Where it stays without one of them, the others hold it: it has to go without them all.
                if (said(sentence, Set.of(one), task, without) && said(sentence, given, task, without)) {
                    kept.add("without all of " + given + " it still says: " + sentence);
                }
            }
        }
        assertEquals(List.of(), kept);
        assertTrue(tried > 20, tried + " facts taken away");
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void everyGivenFactBehindAFiringDecidesOnIt(String name) {
        CleaningTask task = task(name);
        Map<String, Set<String>> firings = said(task).firings();
        Map<Set<String>, List<Said>> without = new HashMap<>();
        Map<String, List<Said>> changed = new HashMap<>();
        List<String> decoration = new ArrayList<>();
        // Undecided firings over a line hang on where every other unsure stage stands, which no single fact decides.
        firings.keySet().removeIf(f -> f.endsWith("perhaps") && f.contains(" in the line of "));
        firings.forEach((firing, given) -> {
            for (String one : given) {
                Set<String> others = new TreeSet<>(given);
                others.remove(one);
                // Others that hold the firing as well, as far as they can go without it, go first.
                Set<String> gone = new TreeSet<>();
                for (String other : others) {
                    gone.add(other);
                    if (!fired(firing, gone, task, without)) {
                        gone.remove(other);
                    }
                }
                boolean decides = changed
                        .computeIfAbsent(
                                gone + " and " + one,
                                k -> variants(task, gone).stream()
                                        .flatMap(t -> changes(t, one).stream())
                                        .map(SentencesIT::saidIfNotRefused)
                                        .flatMap(Optional::stream)
                                        .toList())
                        .stream()
                        .anyMatch(s -> !s.firings().containsKey(firing));
                if (!decides && !decidesWhereOthersDiffer(task, firing, one, others)) {
                    decoration.add(one + " decides nothing in " + firing + " " + given);
                }
            }
        });
        assertEquals(List.of(), decoration);
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void theChecksNoticeALinkThatIsDecoration(String name) {
        Answer honest = SOME.assess(task(name), Starter.WISHES).answer();
        Answer.Headline wrong = new Answer.Headline(
                honest.headline().sentence(), honest.headline().summary(), List.of(9999));
        Answer answer = new Answer(
                honest.format(),
                honest.request(),
                honest.requestHash(),
                wrong,
                honest.intended(),
                honest.facts(),
                honest.firings(),
                honest.candidates(),
                honest.ruledOut(),
                honest.cautions(),
                honest.questions(),
                honest.doubts(),
                honest.verifications(),
                honest.ranking(),
                honest.figures(),
                honest.inputs(),
                honest.rules(),
                List.of());
        List<String> faults = new Said(answer).faults();
        assertTrue(faults.stream().anyMatch(f -> f.contains("9999")), faults.toString());
        assertTrue(faults.stream().anyMatch(f -> f.contains("is not listed")), faults.toString());
        assertFalse(faults.stream().anyMatch(f -> f.contains("cites nothing")), faults.toString());
    }

    /** True when the sentence is still said, whichever way these facts are taken away. */
    private static boolean said(
            String sentence, Set<String> refs, CleaningTask task, Map<Set<String>, List<Said>> without) {
        return without(refs, task, without).stream().allMatch(s -> s.sentences().containsKey(sentence));
    }

    private static boolean fired(
            String firing, Set<String> refs, CleaningTask task, Map<Set<String>, List<Said>> without) {
        return without(refs, task, without).stream().allMatch(s -> s.firings().containsKey(firing));
    }

    private static List<Said> without(Set<String> refs, CleaningTask task, Map<Set<String>, List<Said>> without) {
        return without.computeIfAbsent(
                Set.copyOf(refs),
                k -> variants(task, refs).stream()
                        .map(SentencesIT::saidIfNotRefused)
                        .flatMap(Optional::stream)
                        .toList());
    }

    /** Ways in which one given fact can be another one: not applicable, or for a number far below or far above. */
    private static List<CleaningTask> changes(CleaningTask task, String ref) {
        List<CleaningTask> out = new ArrayList<>(variants(task, ref));
        if (!ref.contains("/")) {
            Group list = Group.byKey(ref).orElseThrow();
            out.add(task.with(list, new CleaningTask.Entries(List.of(), false)));
            // What must not be there decides by being there: one entry of every term.
            if (list.attributes().get(0).type() instanceof FieldType.TermType first) {
                List<Entry> every = EDITION.terms(first.kind()).stream()
                        .map(term -> new Entry(
                                Map.of(list.attributes().get(0).name(), Given.of(Value.term(term), "/" + list.key()))))
                        .toList();
                out.add(task.with(list, new CleaningTask.Entries(every, false)));
            }
            return out;
        }
        if (ref.startsWith("attributes/")) {
            return out;
        }
        String[] parts = ref.split("/");
        Group group = Group.byKey(parts[0]).orElseThrow();
        int index = group.isList() ? Integer.parseInt(parts[1]) : 0;
        String attribute = parts[parts.length - 1];
        if (group.attribute(attribute).orElseThrow().type() instanceof FieldType.NumberType) {
            out.add(task.with(group, index, attribute, Value.number(1e-9)));
            out.add(task.with(group, index, attribute, Value.number(1e9)));
        }
        return out;
    }

    /** Where another fact holds the firing as well and can't be left out, it is changed to each of its terms instead. */
    private static boolean decidesWhereOthersDiffer(
            CleaningTask task, String firing, String one, Collection<String> others) {
        for (String other : others) {
            String[] parts = other.split("/");
            Optional<Group> group = Group.byKey(parts[0]).filter(g -> parts.length > 1);
            if (group.isEmpty()) {
                continue;
            }
            String attribute = parts[parts.length - 1];
            int index = group.get().isList() ? Integer.parseInt(parts[1]) : 0;
            if (!(group.get().attribute(attribute).orElseThrow().type() instanceof FieldType.TermType type)) {
                continue;
            }
            for (String term : EDITION.terms(type.kind())) {
                CleaningTask changed = task.with(group.get(), index, attribute, Value.term(term));
                boolean fires = saidIfNotRefused(changed)
                        .map(s -> s.firings().containsKey(firing))
                        .orElse(false);
                if (fires
                        && changes(changed, one).stream()
                                .map(SentencesIT::saidIfNotRefused)
                                .flatMap(Optional::stream)
                                .anyMatch(s -> !s.firings().containsKey(firing))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<CleaningTask> variants(CleaningTask task, Collection<String> refs) {
        List<CleaningTask> out = new ArrayList<>(List.of(task));
        for (String ref : refs) {
            List<CleaningTask> next = new ArrayList<>();
            for (CleaningTask t : out) {
                next.addAll(variants(t, ref));
            }
            out = next;
        }
        return out;
    }

    private static List<CleaningTask> variants(CleaningTask task, String ref) {
        Optional<Group> list = Group.byKey(ref).filter(Group::isList);
        if (list.isPresent()) {
            // What holds by a list is held by what it lacks or has, or by whether it is complete.
            CleaningTask.Entries entries = task.entries(list.get());
            return List.of(task.with(list.get(), new CleaningTask.Entries(entries.entries(), !entries.open())));
        }
        String[] parts = ref.split("/");
        if (parts[0].equals("attributes")) {
            Map<String, Given> declared = new TreeMap<>(task.declared());
            declared.put(parts[1], Given.of(Value.NOT_APPLICABLE, "/attributes/" + parts[1]));
            return List.of(new CleaningTask(task.title(), task.notes(), task.lists(), declared));
        }
        Group group = Group.byKey(parts[0]).orElseThrow();
        int index = group.isList() ? Integer.parseInt(parts[1]) : 0;
        String attribute = parts[parts.length - 1];
        List<Entry> entries = new ArrayList<>(task.entries(group).entries());
        if (entries.isEmpty()) {
            entries.add(Entry.EMPTY);
        }
        Map<String, Given> given = new TreeMap<>(entries.get(index).given());
        given.put(attribute, Given.of(Value.NOT_APPLICABLE, "/" + String.join("/", parts)));
        entries.set(index, new Entry(given));
        return List.of(task.with(
                group, new CleaningTask.Entries(entries, task.entries(group).open())));
    }

    private static CleaningTask task(String name) {
        return Starter.demoTasks().get(name);
    }

    private static Said said(CleaningTask task) {
        return new Said(SOME.assess(task, Starter.WISHES).answer());
    }

    private static Optional<Said> saidIfNotRefused(CleaningTask task) {
        try {
            return Optional.of(said(task));
        } catch (RefusedTask e) {
            return Optional.empty();
        }
    }

    private static Edition without(String rule) {
        Edition e = EDITION;
        var rules = e.rules().stream().filter(r -> !r.id().equals(rule)).toList();
        return new Edition(
                e.name(),
                e.title(),
                e.language(),
                e.licence(),
                e.sources(),
                e.catalogue(),
                e.types(),
                rules,
                Levels.of(rules).levels(),
                e.trees(),
                e.grading(),
                e.assumptions(),
                e.meaningHash(),
                e.textHash());
    }
}
