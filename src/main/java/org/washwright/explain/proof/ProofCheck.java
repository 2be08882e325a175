package org.washwright.explain.proof;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Asked;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Program;
import org.washwright.assessment.RefusedTask;
import org.washwright.document.Hashes;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.rule.Edition;

/**
 * Checks an answer: takes the task and the wishes out of its request, derives everything anew by the plain interpreter and
 * the formulas, and names what does not follow. Hashes play no part in it, so whoever changes an answer and computes its
 * hashes anew is found all the same. What it can't tell is whether the request itself was the one that somebody made.
 */
public final class ProofCheck {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int MOST_SHOWN = 400;

    private final Edition edition;
    private final Assessor assessor;

    /** A check by an edition; nothing is compiled. */
    public ProofCheck(Edition edition) {
        this.edition = edition;
        this.assessor = Assessor.of(edition, ReferenceInterpreter.factory());
    }

    /**
     * Checks the bytes of an answer.
     *
     * @param bytes an answer as it was written
     * @param most most breaches to list
     * @throws IOException when the bytes hold no JSON
     */
    public Verdict check(byte[] bytes, int most) throws IOException {
        String hash = Hashes.sha256(bytes);
        JsonNode stated = read(bytes);
        List<String> notes = new ArrayList<>();
        Optional<FrozenAnswer> derived;
        try {
            Answer answer = FrozenAnswer.read(bytes).answer();
            if (!isComplete(answer.request())) {
                return broken(hash, notes, "/request", "the request is missing or lacks a part");
            }
            notes.addAll(notes(answer.request()));
            derived = Optional.of(again(answer.request()));
        } catch (IOException e) {
            return broken(hash, notes, "/", "this is no answer that the program writes");
        } catch (Asked.UnreadableRequest e) {
            return broken(hash, notes, "/request/task", e.getMessage());
        } catch (RefusedTask e) {
            return broken(hash, notes, "/request", e.diagnostics().get(0).toString());
        }
        byte[] right = derived.get().bytes();
        List<Breach> breaches = breaches(stated, read(right));
        if (breaches.isEmpty() && !Arrays.equals(bytes, right)) {
            breaches.add(
                    new Breach(Step.BYTES, "", "the same content, written otherwise than in canonical JSON", "", ""));
        }
        breaches.sort(Comparator.comparing(Breach::step));
        List<Breach> shown = breaches.subList(0, Math.min(Math.max(0, most), breaches.size()));
        return new Verdict(
                breaches.isEmpty(), hash, derived.get().hash(), notes, shown, breaches.size() - shown.size());
    }

    /** What a reader of JSON leaves out where a name is missing. */
    private static boolean isComplete(Answer.Request request) {
        return request != null
                && request.task() != null
                && request.weights() != null
                && request.assumptions() != null
                && request.asOf() != null
                && request.meaningHash() != null
                && request.program() != null
                && Stream.of(request.weights(), request.comparisons(), request.assumptions())
                        .noneMatch(list -> list.stream().anyMatch(Objects::isNull))
                && request.weights().stream().allMatch(w -> w.area() != null)
                && request.comparisons().stream().allMatch(c -> c.pair() != null)
                && request.assumptions().stream().allMatch(a -> a.id() != null && a.value() != null);
    }

    private FrozenAnswer again(Answer.Request request) {
        Asked asked = Asked.of(request, edition.catalogue());
        return assessor.assess(asked.task(), asked.wishes());
    }

    private List<String> notes(Answer.Request request) {
        List<String> notes = new ArrayList<>();
        if (!edition.meaningHash().equals(request.meaningHash())) {
            notes.add("The answer names another edition than the one it is checked by: " + request.edition()
                    + ", meaning " + request.meaningHash() + ".");
        }
        if (!Program.text().equals(request.program())) {
            notes.add("The answer was given by " + request.program() + " and is checked by " + Program.text()
                    + "; where formulas were changed since, it differs for that reason.");
        }
        return notes;
    }

    private static Verdict broken(String hash, List<String> notes, String at, String about) {
        return new Verdict(false, hash, "", notes, List.of(new Breach(Step.REQUEST, at, about, "", "")), 0);
    }

    private static List<Breach> breaches(JsonNode stated, JsonNode derived) {
        List<Breach> out = new ArrayList<>();
        for (Differences.Place place : Differences.of(stated, derived)) {
            String at = place.pointer().isEmpty() ? "/" : place.pointer();
            out.add(new Breach(
                    Step.of(at),
                    at,
                    PlaceWords.of(at, place.stated().isMissingNode() ? derived : stated),
                    shown(place.stated()),
                    shown(place.derived())));
        }
        return out;
    }

    private static String shown(JsonNode node) {
        String text = node.isMissingNode() ? "" : node.toString();
        return text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN) + " …" : text;
    }

    private static JsonNode read(byte[] bytes) throws IOException {
        try {
            JsonNode node = JSON.readTree(bytes);
            if (node == null || !node.isObject()) {
                throw new IOException("The file holds no JSON object.");
            }
            return node;
        } catch (JsonProcessingException e) {
            throw new IOException("The file is no JSON: " + e.getOriginalMessage(), e);
        }
    }
}
