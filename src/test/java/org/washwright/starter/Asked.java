package org.washwright.starter;

import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.generate.Starter;

/** The starter's answer to a task in a few lines, with the questions that tests ask of it. */
record Asked(Answer answer) {

    /** A plain steel part, fully described, in a place that permits everything; {@code more} adds to it. */
    static Asked of(String materials, String features, String soils, String operation) {
        return of(complete(materials), complete(features), complete(soils), operation, "");
    }

    /** Entries of which nothing more is to be said than what stands there. */
    private static String complete(String entries) {
        return entries.replace("}", ", rest: not applicable}");
    }

    private static Asked of(String materials, String features, String soils, String operation, String more) {
        return new Asked(Starter.answer("title: t\n"
                        + "part: {rate: 100 1/h, mass: 200 g, wettedArea: 100 cm2, shape: block, rest: not applicable}\n"
                        + "materials: [" + materials + "]\n"
                        + "features: [" + features + "]\n"
                        + "soils: [" + soils + "]\n"
                        + "lot: {charging: basket, place: central, rest: not applicable}\n"
                        + "preceding: {rest: not applicable}\n"
                        + "following: {operation: " + operation + ", rest: not applicable}\n"
                        + "demand: {residue: 500 mg/m2, waterBreakFree: no, rest: not applicable}\n"
                        + "jurisdictions: [uk]\n"
                        + "components: []\nplants: []\n"
                        + "site: {waterDischarge: yes, rest: not applicable}\n"
                        + "permittedSolvents: [hydrocarbon, chlorinated]\n"
                        + "attributes: {food-contact: no}\n"
                        + more)
                .answer());
    }

    /** {@code recommended}, {@code conditional} or {@code ruled out}. */
    String status(String process) {
        return candidate(process).map(Answer.Candidate::status).orElse("ruled out");
    }

    Optional<Answer.Candidate> candidate(String process) {
        return answer.candidates().stream()
                .filter(c -> c.process().equals(process))
                .findFirst();
    }

    /** Sentences that say why a process is out, joined; empty when it stands. */
    String whyOut(String process) {
        return String.join(
                " ",
                answer.ruledOut().stream()
                        .filter(r -> r.process().equals(process))
                        .flatMap(r -> r.reasons().stream())
                        .map(Answer.Sentence::text)
                        .toList());
    }

    /** Ids of the rules that put a process out. */
    List<String> outBy(String process) {
        return answer.ruledOut().stream()
                .filter(r -> r.process().equals(process))
                .flatMap(r -> r.reasons().stream())
                .flatMap(s -> s.firings().stream())
                .map(n -> answer.firings().stream()
                        .filter(f -> f.n() == n)
                        .findFirst()
                        .orElseThrow()
                        .rule())
                .distinct()
                .toList();
    }

    /** Stages of a line in order. */
    List<String> stages(String process) {
        return candidate(process).orElseThrow().stages().stream()
                .map(Answer.Stage::stage)
                .toList();
    }

    /** True when these stages stand in this order, others between them or not. */
    boolean inOrder(String process, String... wanted) {
        List<String> stages = stages(process);
        int at = -1;
        for (String stage : wanted) {
            int next = stages.subList(at + 1, stages.size()).indexOf(stage);
            if (next < 0) {
                return false;
            }
            at += next + 1;
        }
        return true;
    }

    Answer.Window window(String process, String stage, String parameter) {
        return candidate(process).orElseThrow().stages().stream()
                .filter(s -> s.stage().equals(stage))
                .flatMap(s -> s.windows().stream())
                .filter(w -> w.parameter().equals(parameter))
                .findFirst()
                .orElseThrow();
    }

    /** Cautions on a process, joined. */
    String cautions(String process) {
        return String.join(
                " ",
                candidate(process).orElseThrow().cautions().stream()
                        .map(Answer.Sentence::text)
                        .toList());
    }

    /** Counted and certain points of one criterion, added up. */
    double points(String process, String criterion) {
        return candidate(process).orElseThrow().areas().stream()
                .flatMap(a -> a.criteria().stream())
                .filter(c -> c.criterion().equals(criterion))
                .flatMap(c -> c.points().stream())
                .filter(p -> p.counted() && p.certain())
                .mapToDouble(Answer.Point::points)
                .sum();
    }

    boolean asks(String attribute) {
        return answer.questions().stream().anyMatch(q -> q.attribute().equals(attribute));
    }
}
