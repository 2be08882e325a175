package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;
import java.util.ArrayList;
import java.util.List;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Candidate;
import org.washwright.assessment.Answer.Sentence;
import org.washwright.assessment.Answer.Stage;

/** Every sentence of an answer with the firings it rests on: the index of the trace. */
@TemplateExtension
public final class Sentences {

    private Sentences() {}

    /** Sentences of one part of the answer. */
    public record Part(String name, List<Sentence> sentences) {}

    /** The parts of an answer in the order of the page; parts that say nothing are left out. */
    public static List<Part> sentenceIndex(Answer answer) {
        List<Part> parts = new ArrayList<>();
        add(
                parts,
                "In one sentence",
                List.of(new Sentence(
                        answer.headline().sentence(), answer.headline().firings())));
        answer.intended().ifPresent(verdict -> add(parts, "The intended process", verdict.reasons()));
        for (Candidate candidate : answer.candidates()) {
            List<Sentence> own = new ArrayList<>();
            for (Stage stage : candidate.stages()) {
                if (!stage.firings().isEmpty()) {
                    own.add(new Sentence("Stage: " + stage.name(), stage.firings()));
                }
            }
            own.addAll(candidate.conditions());
            own.addAll(candidate.cautions());
            add(parts, candidate.name(), own);
        }
        answer.ruledOut().forEach(out -> add(parts, out.name() + ", ruled out", out.reasons()));
        add(parts, "Take care", answer.cautions());
        add(
                parts,
                "Find out first",
                answer.questions().stream()
                        .map(question -> new Sentence(question.question(), question.firings()))
                        .toList());
        add(parts, "Prove it clean", answer.verifications());
        return List.copyOf(parts);
    }

    private static void add(List<Part> parts, String name, List<Sentence> sentences) {
        if (!sentences.isEmpty()) {
            parts.add(new Part(name, List.copyOf(sentences)));
        }
    }
}
