package org.washwright.explain;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;

/** Finds the parts of an answer by what the answer itself calls them. Made once for an answer; never changes. */
public final class AnswerIndex {

    private final Answer answer;
    private final Map<Integer, Integer> firings = new HashMap<>();
    private final Map<String, String> refs = new HashMap<>();
    private final Map<String, Answer.Fact> facts = new LinkedHashMap<>();
    private final Map<String, Answer.Fact> owners = new HashMap<>();
    private final Map<String, Answer.Attribute> attributes = new LinkedHashMap<>();
    private final Map<String, Answer.Rule> rules = new HashMap<>();
    private final Map<String, Integer> sources = new HashMap<>();
    private final Map<String, Integer> inputs = new HashMap<>();
    private final Map<String, Design.Kind> kinds = new HashMap<>();
    private final Map<String, String> processes = new LinkedHashMap<>();
    private final Map<String, Answer.Candidate> candidates = new LinkedHashMap<>();
    private final Map<String, Answer.RuledOut> ruledOut = new LinkedHashMap<>();

    /** An index of an answer. */
    public AnswerIndex(Answer answer) {
        this.answer = answer;
        for (int i = 0; i < answer.firings().size(); i++) {
            firings.put(answer.firings().get(i).n(), i);
        }
        for (int i = 0; i < answer.facts().size(); i++) {
            Answer.Fact fact = answer.facts().get(i);
            facts.put(fact.id(), fact);
            refs.put(fact.id(), "/facts/" + i);
            for (int j = 0; j < fact.attributes().size(); j++) {
                Answer.Attribute attribute = fact.attributes().get(j);
                refs.put(attribute.ref(), "/facts/" + i + "/attributes/" + j);
                attributes.put(attribute.ref(), attribute);
                owners.put(attribute.ref(), fact);
            }
        }
        answer.rules().forEach(r -> rules.put(r.id(), r));
        for (int i = 0; i < answer.sources().size(); i++) {
            sources.put(answer.sources().get(i).id(), i);
        }
        for (int i = 0; i < answer.inputs().size(); i++) {
            inputs.put(answer.inputs().get(i).ref(), i);
        }
        answer.figures().forEach(k -> kinds.put(k.id(), k));
        answer.candidates().forEach(c -> {
            candidates.put(c.process(), c);
            processes.put(c.process(), c.name());
        });
        answer.ruledOut().forEach(r -> {
            ruledOut.put(r.process(), r);
            processes.put(r.process(), r.name());
        });
    }

    /** The answer. */
    public Answer answer() {
        return answer;
    }

    /** The firing of a number; an answer that names one that it does not hold is none that this program writes. */
    public Answer.Firing firing(int n) {
        Integer place = firings.get(n);
        if (place == null) {
            throw new IllegalArgumentException("the answer names a firing " + n + " that it does not hold");
        }
        return answer.firings().get(place);
    }

    /** JSON pointer of the firing of a number. */
    public String firingAt(int n) {
        return "/firings/" + firings.get(n);
    }

    /** The fact of an id. */
    public Optional<Answer.Fact> fact(String id) {
        return Optional.ofNullable(facts.get(id));
    }

    /** JSON pointer of a fact or of an attribute of one, by the reference that firings use; empty when there is none. */
    public Optional<String> at(String ref) {
        return Optional.ofNullable(refs.get(ref));
    }

    /** The attribute of a reference. */
    public Optional<Answer.Attribute> attribute(String ref) {
        return Optional.ofNullable(attributes.get(ref));
    }

    /** The fact that an attribute belongs to, by the attribute's reference. */
    public Optional<Answer.Fact> owner(String ref) {
        return Optional.ofNullable(owners.get(ref));
    }

    /** The rule of an id, if the answer cites it. */
    public Optional<Answer.Rule> rule(String id) {
        return Optional.ofNullable(rules.get(id));
    }

    /** The source of an id, if the answer lists it. */
    public Optional<Answer.Source> source(String id) {
        return Optional.ofNullable(sources.get(id)).map(answer.sources()::get);
    }

    /** Something that figures were computed from, by its reference. */
    public Optional<Design.Input> input(String ref) {
        return Optional.ofNullable(inputs.get(ref)).map(answer.inputs()::get);
    }

    /** The process of an id that may clean. */
    public Optional<Answer.Candidate> candidate(String process) {
        return Optional.ofNullable(candidates.get(process));
    }

    /** The process of an id that is ruled out. */
    public Optional<Answer.RuledOut> ruledOut(String process) {
        return Optional.ofNullable(ruledOut.get(process));
    }

    /** Ids of all processes, those that may clean first and in order. */
    public List<String> processes() {
        return List.copyOf(processes.keySet());
    }

    /** Ids of the processes that may clean, the first first. */
    public List<String> standing() {
        return List.copyOf(candidates.keySet());
    }

    /** JSON pointer of a source, by its id; empty when the answer lists no such source. */
    public Optional<String> sourceAt(String id) {
        return Optional.ofNullable(sources.get(id)).map(i -> "/sources/" + i);
    }

    /** JSON pointer of something a figure was computed from, by its reference; empty when it is no such thing. */
    public Optional<String> inputAt(String ref) {
        return Optional.ofNullable(inputs.get(ref)).map(i -> "/inputs/" + i);
    }

    /** What a figure is, by the id of its kind. */
    public Optional<Design.Kind> kind(String figure) {
        return Optional.ofNullable(kinds.get(figure));
    }

    /** What a reader calls a process; its id when the answer does not hold it. */
    public String process(String id) {
        return processes.getOrDefault(id, id);
    }

    /** A citation without the ids of sources that the answer lists by name: the places in them, and what is no source. */
    public String locators(String citation) {
        return Arrays.stream(citation.split(";"))
                .map(String::strip)
                .map(c -> {
                    String[] parts = c.split(",", 2);
                    return sources.containsKey(parts[0].strip()) ? (parts.length > 1 ? parts[1].strip() : "") : c;
                })
                .filter(c -> !c.isEmpty())
                .collect(Collectors.joining("; "));
    }

    /** JSON pointers of what a firing says of a process by a verb; of the firing itself when it says nothing of the kind. */
    public List<String> findingsAt(int n, String process, Predicate<Answer.Finding> wanted) {
        List<Answer.Finding> findings = firing(n).findings();
        List<String> out = IntStream.range(0, findings.size())
                .filter(k -> findings.get(k).targets().contains(process) && wanted.test(findings.get(k)))
                .mapToObj(k -> firingAt(n) + "/findings/" + k)
                .toList();
        return out.isEmpty() ? List.of(firingAt(n)) : out;
    }

    /** JSON pointers of sources cited as {@code ID, place; ID, place}; what is no source of the answer is left out. */
    public List<String> cited(String citation) {
        return Arrays.stream(citation.split(";"))
                .map(c -> c.split(",", 2)[0].strip())
                .flatMap(id -> sourceAt(id).stream())
                .distinct()
                .toList();
    }
}
