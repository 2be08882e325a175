package org.washwright.explain.replay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.assessment.Answer;
import org.washwright.explain.replay.Step.Added;
import org.washwright.explain.replay.Step.Kind;
import org.washwright.explain.replay.Step.Read;

/** The steps of one process once the rules over the task have spoken: its line, what follows for it, and where it stands. */
final class LineSteps {

    private final ToldAnswer index;
    private final FiringSteps firings;

    LineSteps(ToldAnswer index, FiringSteps firings) {
        this.index = index;
        this.firings = firings;
    }

    List<Step> of(String process) {
        List<Step> steps = new ArrayList<>();
        composed(process, steps);
        index.candidate(process).ifPresent(c -> {
            ResultSteps results = new ResultSteps(index, c);
            results.windows().ifPresent(steps::add);
            results.figures().ifPresent(steps::add);
            steps.add(results.points());
        });
        steps.add(status(process));
        return steps;
    }

    /** The stages that stand before any rule looks at the line, then those rules, each once the stages it reads are there. */
    private void composed(String process, List<Step> steps) {
        List<Answer.Fact> stages = index.answer().facts().stream()
                .filter(f -> f.id().startsWith(ToldAnswer.LINES + process + "/"))
                .toList();
        List<Answer.Firing> open = new ArrayList<>(index.answer().firings().stream()
                .filter(f -> f.line().equals(process))
                .toList());
        LineOrder order = LineOrder.of(stages, open);
        Optional<Answer.Candidate> candidate = index.candidate(process);
        if (!order.first().isEmpty() || candidate.isPresent()) {
            steps.add(line(process, order.first(), candidate));
        }
        order.firings().forEach((firing, placed) -> steps.add(firings.of(firing, placed)));
    }

    private Step line(String process, List<Answer.Fact> first, Optional<Answer.Candidate> candidate) {
        List<Added> adds = new ArrayList<>();
        Map<String, Read> reads = new LinkedHashMap<>();
        Set<String> there = new HashSet<>();
        for (Answer.Fact stage : first) {
            there.add(stage.name());
            adds.addAll(firings.stage(stage));
            stage.firings().forEach(n -> cite(n, "places " + stage.name(), reads));
        }
        for (Answer.Stage s : candidate.map(Answer.Candidate::stages).orElse(List.of())) {
            boolean byLineRule =
                    s.firings().stream().anyMatch(n -> !index.firing(n).line().isEmpty());
            if (!byLineRule) {
                if (there.add(s.name())) {
                    adds.add(new Added("stage", "", s.name(), s.certain() ? "" : "not decided yet"));
                }
                s.firings().forEach(n -> cite(n, "places " + s.name(), reads));
            }
        }
        return step(
                "line/" + process,
                Kind.LINE,
                process,
                "The line of " + index.processName(process) + " is put together",
                "",
                List.copyOf(reads.values()),
                adds);
    }

    private void cite(int n, String value, Map<String, Read> reads) {
        Read read = index.read(index.firing(n), value);
        reads.putIfAbsent(read.ref() + value, read);
    }

    private Step status(String process) {
        String name = index.processName(process);
        Optional<Answer.Candidate> candidate = index.candidate(process);
        String status = candidate.map(Answer.Candidate::status).orElse("ruled out");
        List<Answer.Sentence> because = candidate
                .map(Answer.Candidate::conditions)
                .orElseGet(() -> index.answer().ruledOut().stream()
                        .filter(r -> r.process().equals(process))
                        .flatMap(r -> r.reasons().stream())
                        .toList());
        Map<String, Read> reads = new LinkedHashMap<>();
        because.forEach(s -> s.firings().forEach(n -> cite(n, s.text(), reads)));
        String says = because.isEmpty()
                ? "Nothing rules it out, and nothing that is open could."
                : String.join(" ", because.stream().map(Answer.Sentence::text).toList());
        return step(
                "status/" + process,
                Kind.STATUS,
                process,
                Titles.capital(name) + ": " + status,
                says,
                List.copyOf(reads.values()),
                List.of(new Added("status", "", name, status)));
    }

    /** The last step: which comes first; for a walk about one process, where that one stands. */
    Step ranking(String process) {
        List<Added> adds = new ArrayList<>();
        List<Read> reads = new ArrayList<>();
        List<Answer.Candidate> candidates = index.answer().candidates();
        for (int i = 0; i < candidates.size(); i++) {
            Answer.Candidate c = candidates.get(i);
            if (process.isEmpty() || c.process().equals(process)) {
                adds.add(new Added("place", "", c.name(), "place " + (i + 1) + " of " + candidates.size()));
                reads.add(new Read("status/" + c.process(), c.name(), c.status(), true));
            }
        }
        if (!process.isEmpty() && adds.isEmpty()) {
            adds.add(new Added("place", "", index.processName(process), "no place: it is ruled out"));
            reads.add(new Read("status/" + process, index.processName(process), "ruled out", true));
        }
        String reason = index.answer()
                .ranking()
                .map(r -> r.reason())
                .filter(r -> !r.isEmpty())
                .map(r -> " " + r)
                .orElse("");
        return step(
                "ranking",
                Kind.RANKING,
                "",
                "The answer",
                index.answer().headline().sentence() + reason,
                reads,
                adds);
    }

    static Step step(
            String id, Kind kind, String process, String title, String says, List<Read> reads, List<Added> adds) {
        return new Step(id, kind, Step.NO_LEVEL, true, process, 0, "", title, says, reads, adds);
    }
}
