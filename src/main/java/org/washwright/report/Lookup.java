package org.washwright.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Attribute;
import org.washwright.assessment.Answer.Cite;
import org.washwright.assessment.Answer.Fact;
import org.washwright.assessment.Answer.Firing;
import org.washwright.assessment.Answer.Rule;
import org.washwright.assessment.Answer.Source;
import org.washwright.assessment.Design;

/** Names and sources for the ids of an answer, so that the report shows no id where a name is known. */
final class Lookup {

    private final Answer answer;
    private final Map<Integer, Firing> firings = new HashMap<>();
    private final Map<String, Rule> rules = new HashMap<>();
    private final Map<String, Source> sources = new HashMap<>();
    private final Map<String, Attribute> attributes = new HashMap<>();
    private final Map<String, String> factNames = new HashMap<>();
    private final Map<String, Design.Kind> kinds = new HashMap<>();
    private final Map<String, Design.Input> inputs = new HashMap<>();

    Lookup(Answer answer) {
        this.answer = answer;
        answer.firings().forEach(f -> firings.put(f.n(), f));
        answer.rules().forEach(r -> rules.put(r.id(), r));
        answer.sources().forEach(s -> sources.put(s.id(), s));
        for (Fact fact : answer.facts()) {
            factNames.put(fact.id(), fact.name());
            fact.attributes().forEach(a -> attributes.put(a.ref(), a));
        }
        answer.figures().forEach(k -> kinds.put(k.id(), k));
        answer.inputs().forEach(i -> inputs.put(i.ref(), i));
    }

    /** Ids of the rules behind a sentence, each once, in brackets; empty when there are none. */
    String ruleIds(List<Integer> numbers) {
        String ids = numbers.stream()
                .map(firings::get)
                .filter(f -> f != null)
                .map(Firing::rule)
                .distinct()
                .collect(Collectors.joining(", "));
        return ids.isEmpty() ? "" : "[" + ids + "]";
    }

    /** The rules that speak for or about one process or its line, in order of their ids. */
    List<Rule> rulesOf(Answer.Candidate candidate) {
        Set<String> ids = new LinkedHashSet<>();
        for (Firing firing : answer.firings()) {
            boolean aims = firing.findings().stream()
                    .anyMatch(x -> x.targets().contains(candidate.process())
                            && !x.verb().equals("ruleOut"));
            if (aims || firing.line().equals(candidate.process())) {
                ids.add(firing.rule());
            }
        }
        candidate.stages().stream().flatMap(s -> s.firings().stream()).forEach(n -> add(ids, n));
        candidate.cautions().stream().flatMap(s -> s.firings().stream()).forEach(n -> add(ids, n));
        candidate.conditions().stream().flatMap(s -> s.firings().stream()).forEach(n -> add(ids, n));
        return ids.stream()
                .map(this::rule)
                .sorted(Comparator.comparing(Rule::id))
                .toList();
    }

    private void add(Set<String> ids, int n) {
        Optional.ofNullable(firings.get(n)).ifPresent(f -> ids.add(f.rule()));
    }

    private Rule rule(String id) {
        return rules.getOrDefault(id, new Rule(id, id, "", List.of(), "", "", ""));
    }

    /** What a rule cites, in words. */
    String cited(Rule rule) {
        return rule.sources().stream().map(this::cited).collect(Collectors.joining("; "));
    }

    private String cited(Cite cite) {
        String memory = sources.containsKey(cite.source())
                        && !sources.get(cite.source()).seen()
                ? " (cited from memory)"
                : "";
        return cite.source() + (cite.locator().isEmpty() ? "" : ", " + cite.locator()) + memory;
    }

    /** Where a value comes from, in words. */
    static String origin(Attribute attribute) {
        Answer.Origin origin = attribute.origin();
        String words = switch (origin.kind()) {
            case "given" -> "given";
            case "computed" -> origin.detail();
            case "catalogue" -> "catalogue: " + origin.detail();
            case "question tree" -> "asked: " + origin.detail();
            default -> origin.kind() + " " + origin.detail();
        };
        return origin.source().isEmpty() ? words : words + " (" + origin.source() + ")";
    }

    /** The kind of a figure; one that carries only its id when the answer does not tell. */
    Design.Kind kind(String id) {
        return kinds.getOrDefault(id, new Design.Kind(id, id, "", "", "", "", ""));
    }

    /** The attribute of that reference, if the answer holds it. */
    Optional<Attribute> attribute(String ref) {
        return Optional.ofNullable(attributes.get(ref));
    }

    /** An attribute with the thing it belongs to. */
    String nameOf(Attribute attribute) {
        String fact = attribute.ref().substring(0, Math.max(0, attribute.ref().lastIndexOf('/')));
        String name = factNames.getOrDefault(fact, "");
        return name.isEmpty() ? attribute.label() : attribute.label() + ", " + name;
    }

    /** Something a figure was computed from, with its value. */
    String input(String ref, Optional<Answer.Candidate> line) {
        if (attributes.containsKey(ref)) {
            Attribute a = attributes.get(ref);
            return nameOf(a) + ": " + (a.knowledge().equals("unknown") ? "not known" : a.value());
        }
        if (inputs.containsKey(ref)) {
            Design.Input i = inputs.get(ref);
            return i.label() + ": " + i.value();
        }
        String[] steps = ref.split("/");
        if (steps.length == 3 && steps[0].equals("figure")) {
            return figure(steps[1], steps[2], line);
        }
        if (steps.length == 3 && steps[0].equals("window")) {
            return window(steps[1], steps[2], line);
        }
        return ref;
    }

    private String figure(String id, String stage, Optional<Answer.Candidate> line) {
        String value = line.flatMap(Answer.Candidate::design).stream()
                .flatMap(d -> d.figures().stream())
                .filter(f ->
                        f.figure().equals(id) && Integer.toString(f.stage()).equals(stage))
                .map(f -> ": " + f.text())
                .findFirst()
                .orElse("");
        return kind(id).label() + (stage.equals("0") ? "" : ", stage " + stage) + value;
    }

    private static String window(String stage, String parameter, Optional<Answer.Candidate> line) {
        return line.flatMap(c -> placed(c, stage)).stream()
                .flatMap(s -> s.windows().stream())
                .filter(w -> w.parameter().equals(parameter))
                .map(w -> w.name() + ", stage " + stage + ": " + w.text())
                .findFirst()
                .orElse(parameter + ", stage " + stage);
    }

    private static Optional<Answer.Stage> placed(Answer.Candidate line, String place) {
        return place.matches("[1-9][0-9]?")
                        && Integer.parseInt(place) <= line.stages().size()
                ? Optional.of(line.stages().get(Integer.parseInt(place) - 1))
                : Optional.empty();
    }

    /** The stage at a place of a line in words. */
    static String stage(Optional<Answer.Candidate> line, int place) {
        return line.filter(c -> place > 0 && place <= c.stages().size())
                .map(c -> place + " " + c.stages().get(place - 1).name())
                .orElse(place == 0 ? "whole line" : "stage " + place);
    }

    /** The name of a group of the task: its key with its words apart. */
    static String group(String key) {
        return key.equals("attributes")
                ? "further attributes"
                : Arrays.stream(key.split("(?=[A-Z])"))
                        .map(word -> word.toLowerCase(java.util.Locale.ROOT))
                        .collect(Collectors.joining(" "));
    }
}
