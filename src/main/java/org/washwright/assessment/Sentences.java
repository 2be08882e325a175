package org.washwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.washwright.engine.Firing;
import org.washwright.line.Evidence;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;

/** Writes cautions and proofs of cleanliness; equal sentences become one with all their firings. */
final class Sentences {

    private final Edition edition;
    private final List<Firing> firings;

    Sentences(Edition edition, List<Firing> firings) {
        this.edition = edition;
        this.firings = firings;
    }

    /** Verdicts as sentences. */
    static List<Answer.Sentence> of(List<ProcessLine.Verdict> verdicts) {
        Map<String, TreeSet<Integer>> byText = new LinkedHashMap<>();
        verdicts.forEach(
                v -> byText.computeIfAbsent(v.text(), k -> new TreeSet<>()).addAll(v.firings()));
        return sentences(byText);
    }

    /** Cautions that concern the task as a whole. */
    List<Answer.Sentence> cautions() {
        return cautions(Evidence.general(firings, Effect.Caution.class));
    }

    /** Cautions that concern one process. */
    List<Answer.Sentence> cautions(String process) {
        return cautions(Evidence.about(process, firings, Effect.Caution.class));
    }

    private List<Answer.Sentence> cautions(List<Evidence<Effect.Caution>> evidence) {
        Map<String, TreeSet<Integer>> byText = new LinkedHashMap<>();
        for (Evidence<Effect.Caution> e : evidence) {
            String usual =
                    edition.catalogue().cautions().getOrDefault(e.effect().hazard(), "");
            String text = (e.certain() ? "" : "Possibly: ") + e.finding().text() + (usual.isEmpty() ? "" : " " + usual);
            byText.computeIfAbsent(text, k -> new TreeSet<>()).add(e.n());
        }
        return sentences(byText);
    }

    /** How cleanliness is proven, and what each method can't see. */
    List<Answer.Sentence> verifications() {
        Map<String, TreeSet<Integer>> byText = new LinkedHashMap<>();
        for (Evidence<Effect.Verify> e : Evidence.general(firings, Effect.Verify.class)) {
            String method = Headlines.capital(
                    edition.catalogue().name("test-method", e.effect().method()));
            String blind =
                    edition.catalogue().blindSpots().getOrDefault(e.effect().method(), "");
            String text = method
                    + (e.certain() ? ": " : ", if it applies: ")
                    + e.finding().text()
                    + (blind.isEmpty() ? "" : " It can't see " + blind + ".");
            byText.computeIfAbsent(text, k -> new TreeSet<>()).add(e.n());
        }
        return sentences(byText);
    }

    private static List<Answer.Sentence> sentences(Map<String, TreeSet<Integer>> byText) {
        List<Answer.Sentence> out = new ArrayList<>();
        byText.forEach((text, numbers) -> out.add(new Answer.Sentence(text, List.copyOf(numbers))));
        return out;
    }
}
