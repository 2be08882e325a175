package org.washwright.explain.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.washwright.assessment.Answer;
import org.washwright.explain.replay.Step.Added;
import org.washwright.explain.replay.Step.Kind;
import org.washwright.explain.replay.Step.Read;

/** One step a firing. */
final class FiringSteps {

    private static final String CONCLUDE = "conclude";
    private static final int MOST_NAMED = 3;

    private final ToldAnswer index;
    private final Scope scope;
    private final Map<Integer, List<Answer.Fact>> conclusions = new HashMap<>();

    /** Steps that show what a walk is about: its findings, and the conclusions that it rests on. */
    FiringSteps(ToldAnswer index, Scope scope) {
        this.index = index;
        this.scope = scope;
        index.answer().facts().stream()
                .filter(f -> ToldAnswer.isConclusion(f) && scope.ref(f.id()))
                .forEach(f -> f.firings()
                        .forEach(n -> conclusions
                                .computeIfAbsent(n, k -> new ArrayList<>())
                                .add(f)));
    }

    /** What names a firing whatever else fires: its rule, the facts it matched, the line it looked at, and whether it may. */
    static String id(Answer.Firing f) {
        String line = f.line().isEmpty() ? "" : "@" + f.line();
        return "rule/" + f.rule() + "/" + String.join("+", f.matched()) + line + (f.certain() ? "" : "?");
    }

    /**
     * The step of a firing.
     *
     * @param placed stages of the line that it places
     */
    Step of(Answer.Firing f, List<Answer.Fact> placed) {
        List<Answer.Finding> shown = f.findings().stream()
                .filter(x -> x.targets().isEmpty() || x.targets().stream().anyMatch(scope::process))
                .toList();
        List<Added> adds = new ArrayList<>();
        for (Answer.Fact c : conclusions.getOrDefault(f.n(), List.of())) {
            adds.add(new Added("conclusion", c.id(), conclusion(c), f.certain() ? "" : "not certain yet"));
            c.attributes().forEach(a -> adds.add(new Added("value", a.ref(), index.name(a.ref()), a.value())));
        }
        shown.stream().filter(x -> !x.verb().equals(CONCLUDE)).forEach(x -> adds.add(finding(x)));
        placed.forEach(s -> adds.addAll(stage(s)));
        return new Step(
                id(f),
                Kind.FIRING,
                f.level(),
                f.certain(),
                f.line(),
                f.n(),
                f.rule(),
                index.ruleTitle(f.rule()),
                shown.stream().map(Answer.Finding::text).distinct().collect(Collectors.joining(" ")),
                reads(f),
                adds);
    }

    /** A stage that is there from here on, as a fact with what is known of it. */
    List<Added> stage(Answer.Fact stage) {
        List<Added> adds = new ArrayList<>();
        adds.add(new Added("stage", stage.id(), stage.name(), ""));
        stage.attributes().forEach(a -> adds.add(new Added("value", a.ref(), index.name(a.ref()), a.value())));
        return adds;
    }

    /** A conclusion with what it is about. */
    private String conclusion(Answer.Fact c) {
        String about = index.answer().facts().stream()
                .filter(f -> !ToldAnswer.isConclusion(f) && c.id().endsWith("/" + f.id()))
                .max((a, b) -> a.id().length() - b.id().length())
                .map(f -> ", about " + f.name())
                .orElse("");
        return c.name() + about;
    }

    private Added finding(Answer.Finding x) {
        // In the story of one process its name need not be said again.
        List<String> names = scope.isStory()
                ? List.of()
                : x.targets().stream().map(index::processName).toList();
        String of = names.size() > MOST_NAMED ? names.size() + " processes" : String.join(", ", names);
        String detail = x.detail().isEmpty() || of.isEmpty() ? x.detail() + of : of + ": " + x.detail();
        return new Added(x.verb(), "", detail, x.text());
    }

    private List<Read> reads(Answer.Firing f) {
        Map<String, Read> reads = new LinkedHashMap<>();
        for (String ref : f.matched()) {
            boolean silent = f.uses().stream().noneMatch(u -> u.startsWith(ref + "/"));
            if (silent) {
                reads.put(ref, index.read(ref));
            }
        }
        f.uses().forEach(ref -> reads.putIfAbsent(ref, index.read(ref)));
        for (String ref : f.held()) {
            Read read = index.read(ref);
            reads.put(ref, new Read(ref, read.name(), read.value(), false));
        }
        return List.copyOf(reads.values());
    }
}
