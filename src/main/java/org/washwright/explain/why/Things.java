package org.washwright.explain.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.explain.AnswerIndex;

/** Reads any place of an answer as a thing that rests on other things. */
final class Things {

    /** Step to what is said of a process besides what decides. */
    static final String ELSE = "/else";

    private final AnswerIndex index;
    private final Answer answer;
    private final GroundThings ground;
    private final LineThings lines;

    Things(AnswerIndex index) {
        this.index = index;
        this.answer = index.answer();
        this.ground = new GroundThings(index);
        this.lines = new LineThings(index);
    }

    /** The thing at a place; empty when the answer holds nothing there that can be explained. */
    Thing at(String place) {
        Pointer p = Pointer.of(place);
        return switch (p.step(0)) {
            case "" -> p.size() == 0 ? whole() : nothing(p);
            case "candidates" -> lines.at(p).orElseGet(() -> nothing(p));
            case "ruledOut" -> ruledOut(p);
            case "firings", "facts", "sources", "inputs", "request" ->
                ground.at(p).orElseGet(() -> nothing(p));
            default -> statement(p);
        };
    }

    private static Thing nothing(Pointer p) {
        throw new NothingThere(p.text());
    }

    /** Everything that the answer says. */
    private Thing whole() {
        List<String> on = new ArrayList<>(List.of("/headline"));
        answer.intended().ifPresent(i -> on.add("/intended"));
        each("/candidates", answer.candidates(), on);
        each("/ruledOut", answer.ruledOut(), on);
        each("/cautions", answer.cautions(), on);
        each("/questions", answer.questions(), on);
        each("/doubts", answer.doubts(), on);
        each("/verifications", answer.verifications(), on);
        return new Thing("answer", Kind.SAID, answer.headline().summary(), "the whole answer", "", on);
    }

    private static void each(String place, List<?> list, List<String> on) {
        for (int i = 0; i < list.size(); i++) {
            on.add(place + "/" + i);
        }
    }

    private Thing statement(Pointer p) {
        if (p.is("headline")) {
            // The rules that placed the stages stand under the status of the process whose line it tells.
            List<String> on = new ArrayList<>();
            if (answer.candidates().isEmpty()) {
                each("/ruledOut", answer.ruledOut(), on);
            } else {
                on.add("/candidates/0/status");
            }
            return new Thing("headline", Kind.SAID, answer.headline().sentence(), "the first sentence", p.text(), on);
        }
        if (p.is("intended") && answer.intended().isPresent()) {
            return intended(p);
        }
        if (p.is("questions", "#")) {
            Answer.Question q = p.in(answer.questions(), 1);
            List<String> on = new ArrayList<>(index.at(q.attribute()).stream().toList());
            on.addAll(firings(q.firings()));
            return new Thing(
                    "question/" + q.attribute(),
                    Kind.SAID,
                    q.question() + " " + q.consequence(),
                    "to find out",
                    p.text(),
                    on);
        }
        Optional<List<Answer.Sentence>> list = switch (p.step(0)) {
            case "cautions" -> Optional.of(answer.cautions());
            case "doubts" -> Optional.of(answer.doubts());
            case "verifications" -> Optional.of(answer.verifications());
            default -> Optional.empty();
        };
        if (list.isPresent() && p.is(p.step(0), "#")) {
            String what = switch (p.step(0)) {
                case "cautions" -> "caution";
                case "doubts" -> "doubt";
                default -> "proof of cleanliness";
            };
            return sentence(index, p.in(list.get(), 1), what, p.text());
        }
        return nothing(p);
    }

    private Thing intended(Pointer p) {
        var verdict = answer.intended().orElseThrow();
        List<String> on = new ArrayList<>();
        verdict.reasons().forEach(s -> on.addAll(firings(s.firings())));
        verdict.settings().forEach(s -> on.addAll(firings(s.firings())));
        for (int i = 0; i < answer.candidates().size(); i++) {
            if (answer.candidates().get(i).process().equals(verdict.process())) {
                on.add("/candidates/" + i + "/status");
            }
        }
        on.add(index.at("intended/process").orElse("/request/task/intended"));
        return new Thing("intended", Kind.SAID, verdict.text(), "the intended process", p.text(), on);
    }

    private Thing ruledOut(Pointer p) {
        if (p.is("ruledOut", "#")) {
            Answer.RuledOut out = p.in(answer.ruledOut(), 1);
            List<String> on = new ArrayList<>();
            each(p.text() + "/reasons", out.reasons(), on);
            on.add(p.text() + ELSE);
            return new Thing(
                    "status/" + out.process(),
                    Kind.SAID,
                    Why.capital(out.name()) + " is ruled out.",
                    "status",
                    p.text(),
                    on);
        }
        if (p.is("ruledOut", "#", "else")) {
            Answer.RuledOut out = p.in(answer.ruledOut(), 1);
            return whatElse(index, out.process(), out.name(), p.text());
        }
        if (p.is("ruledOut", "#", "reasons", "#")) {
            Answer.RuledOut out = p.in(answer.ruledOut(), 1);
            Answer.Sentence reason = p.in(out.reasons(), 3);
            Thing said = sentence(index, reason, "reason against " + out.name(), p.text());
            return new Thing(
                    out.process() + "/" + said.id(), said.kind(), said.text(), said.detail(), said.at(), said.on());
        }
        return nothing(p);
    }

    private List<String> firings(List<Integer> numbers) {
        return numbers.stream().map(index::firingAt).toList();
    }

    /** Everything that rules say of a process, whether it decided or not. */
    static Thing whatElse(AnswerIndex index, String process, String name, String at) {
        List<String> on = index.answer().firings().stream()
                .filter(f -> f.findings().stream().anyMatch(x -> x.targets().contains(process)))
                .flatMap(f -> index.findingsAt(f.n(), process, x -> true).stream())
                .toList();
        String text = on.isEmpty() ? "No rule says anything else of " + name : "All that rules say of " + name;
        return new Thing("said/" + process, on.isEmpty() ? Kind.LIST : Kind.SAID, text, "", at, on);
    }

    /** A sentence with the firings it rests on; it is known by these, as its words may hold figures. */
    static Thing sentence(AnswerIndex index, Answer.Sentence s, String what, String at) {
        List<String> by = s.firings().stream()
                .map(n -> GroundThings.identity(index.firing(n)))
                .toList();
        return new Thing(
                what + "(" + String.join(", ", by) + ")",
                Kind.SAID,
                s.text(),
                what,
                at,
                s.firings().stream().map(index::firingAt).toList());
    }
}
