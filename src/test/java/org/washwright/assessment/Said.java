package org.washwright.assessment;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Every sentence of an answer with the firings it cites, and the graph that leads from those to what was given. */
final class Said {

    /** The date belongs to the request, not to the task; what hangs on it is asked of the rules on dated law. */
    private static final String DATE = "site/asOf";

    private final Answer answer;
    private final Map<Integer, Answer.Firing> firings = new HashMap<>();
    private final Map<String, Answer.Fact> facts = new HashMap<>();
    private final Map<String, Answer.Attribute> attributes = new HashMap<>();
    private final Map<String, Set<Integer>> sentences = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();

    Said(Answer answer) {
        this.answer = answer;
        answer.firings().forEach(f -> firings.put(f.n(), f));
        answer.facts().forEach(f -> {
            facts.put(f.id(), f);
            f.attributes().forEach(a -> attributes.put(a.ref(), a));
        });
        collect();
    }

    private void collect() {
        // A headline that names the main stage alone rests on no rule that placed a stage, and so may cite none.
        boolean placed = answer.candidates().stream()
                .limit(1)
                .flatMap(c -> c.stages().stream())
                .anyMatch(s -> !s.main() && s.certain());
        if (!answer.candidates().isEmpty()
                && (placed || !answer.headline().firings().isEmpty())) {
            say("headline", answer.headline().sentence(), answer.headline().firings());
        }
        answer.intended().ifPresent(this::intended);
        answer.cautions().forEach(s -> say("caution", s.text(), s.firings()));
        answer.doubts().forEach(s -> say("doubt", s.text(), s.firings()));
        answer.verifications().forEach(s -> say("proof", s.text(), s.firings()));
        answer.questions()
                .forEach(q ->
                        say("question", q.attribute() + "; " + q.question() + "; " + q.consequence(), q.firings()));
        answer.ruledOut().forEach(r -> r.reasons().forEach(s -> say("out " + r.process(), s.text(), s.firings())));
        for (Answer.Candidate c : answer.candidates()) {
            String p = " " + c.process();
            c.conditions().forEach(s -> say("condition" + p, s.text(), s.firings()));
            c.cautions().forEach(s -> say("caution" + p, s.text(), s.firings()));
            for (Answer.Stage s : c.stages()) {
                if (!s.main()) {
                    say("stage" + p, s.stage() + (s.certain() ? "" : "?"), s.firings());
                }
                for (Answer.Window w : s.windows()) {
                    String at = "window" + p + " " + s.stage() + " " + w.parameter();
                    if (!w.firings().isEmpty()) {
                        say(at, w.text(), w.firings());
                    }
                    if (!w.undecided().isEmpty()) {
                        say(at, "may become narrower", w.undecided());
                    }
                }
            }
            c.areas()
                    .forEach(a -> a.criteria()
                            .forEach(x -> x.points().forEach(point -> {
                                if (point.figure().isEmpty()) {
                                    say(
                                            "point" + p + " " + x.criterion(),
                                            point.text() + " " + point.points() + " " + point.certain(),
                                            List.of(point.firing()));
                                } else if (point.figure().startsWith("figure/")) {
                                    figure(c, point.figure());
                                } else if (!attributes.containsKey(point.figure())) {
                                    faults.add("the figure " + point.figure() + " is no attribute of the answer");
                                }
                            })));
        }
    }

    private void intended(IntendedVerdict verdict) {
        Set<List<Integer>> windows = new HashSet<>();
        verdict.settings().forEach(s -> {
            windows.add(s.firings());
            if (!s.firings().isEmpty()) {
                say("setting " + s.attribute(), s.window(), s.firings());
            }
        });
        for (Answer.Sentence s : verdict.reasons()) {
            // The window of a stage's own needs no rule, and that a process is not there is no rule's word.
            boolean ofNoRule = s.text().contains(": keep it ")
                    ? windows.contains(s.firings())
                    : s.text().contains(" is not in this edition");
            if (!s.firings().isEmpty() || !ofNoRule) {
                say("intended", s.text(), s.firings());
            }
        }
    }

    /** A figure of a line has to be in its design, down to attributes, assumptions, the catalogue and windows. */
    private void figure(Answer.Candidate candidate, String first) {
        Set<String> inputs = new HashSet<>();
        answer.inputs().forEach(i -> inputs.add(i.ref()));
        Map<String, Design.Figure> figures = new HashMap<>();
        candidate.design().stream()
                .flatMap(d -> d.figures().stream())
                .forEach(f -> figures.put("figure/" + f.figure() + "/" + f.stage(), f));
        Set<String> done = new HashSet<>();
        java.util.ArrayDeque<String> open = new java.util.ArrayDeque<>(List.of(first));
        while (!open.isEmpty()) {
            String ref = open.poll();
            if (!done.add(ref)) {
                continue;
            }
            if (figures.containsKey(ref)) {
                open.addAll(figures.get(ref).inputs());
            } else if (!ref.startsWith("window/") && !inputs.contains(ref) && !attributes.containsKey(ref)) {
                faults.add(candidate.process() + " computes from " + ref + ", which the answer does not hold");
            }
        }
    }

    private void say(String where, String text, Collection<Integer> cited) {
        String key = where + ": " + text;
        if (text.isBlank() || cited.isEmpty()) {
            faults.add("cites nothing: " + key);
        }
        cited.stream()
                .filter(n -> !firings.containsKey(n))
                .forEach(n -> faults.add("cites firing " + n + ", which there is not: " + key));
        sentences.computeIfAbsent(key, k -> new TreeSet<>()).addAll(cited);
    }

    /** Sentences with the numbers of the firings they cite. */
    Map<String, Set<Integer>> sentences() {
        return sentences;
    }

    /** Ids of the rules that a sentence cites; empty when it is not said. */
    Set<String> rules(String sentence) {
        Set<String> out = new TreeSet<>();
        sentences
                .getOrDefault(sentence, Set.of())
                .forEach(n -> out.add(firings.get(n).rule()));
        return out;
    }

    /** Ids of all rules behind a sentence: those it cites, and those that concluded or placed what these matched. */
    Set<String> rulesBehind(String sentence) {
        Set<String> out = new TreeSet<>();
        behind(sentence).forEach(n -> out.add(firings.get(n).rule()));
        return out;
    }

    private Set<Integer> behind(String sentence) {
        Set<Integer> seen = new TreeSet<>();
        sentences.get(sentence).forEach(n -> behind(n, seen));
        return seen;
    }

    private void behind(int n, Set<Integer> seen) {
        if (seen.add(n)) {
            Set<String> ids = new TreeSet<>(firings.get(n).matched());
            ids.addAll(firings.get(n).uses());
            ids.stream()
                    .filter(facts::containsKey)
                    .forEach(id -> facts.get(id).firings().forEach(m -> behind(m, seen)));
        }
    }

    /** What was given, or left out, of the task that a sentence hangs on: references of attributes and keys of lists. */
    Set<String> given(String sentence) {
        return given(sentences.get(sentence));
    }

    private Set<String> given(Collection<Integer> cited) {
        Set<Integer> seen = new TreeSet<>();
        cited.forEach(n -> behind(n, seen));
        Set<String> leaves = new TreeSet<>();
        seen.forEach(n -> firings.get(n).uses().forEach(ref -> leaves(ref, leaves, 0)));
        return leaves;
    }

    /** Every firing in words that stay the same as long as it does, with what was given that it hangs on. */
    Map<String, Set<String>> firings() {
        Map<String, Set<String>> out = new LinkedHashMap<>();
        firings.values()
                .forEach(f -> out.put(
                        f.rule() + (f.line().isEmpty() ? "" : " in the line of " + f.line()) + " " + f.matched()
                                + (f.certain() ? "" : " perhaps"),
                        given(List.of(f.n()))));
        return out;
    }

    private void leaves(String ref, Set<String> leaves, int depth) {
        Answer.Attribute attribute = attributes.get(ref);
        if (attribute == null) {
            boolean list = org.washwright.task.Group.byKey(ref)
                    .map(org.washwright.task.Group::isList)
                    .orElse(false);
            if (list) {
                leaves.add(ref);
            } else if (!facts.containsKey(ref)) {
                faults.add("the reference " + ref + " leads nowhere");
            }
            return;
        }
        if (depth > 10) {
            faults.add("the origin of " + ref + " has no end");
            return;
        }
        Answer.Origin origin = attribute.origin();
        String fact = ref.substring(0, ref.lastIndexOf('/'));
        switch (origin.kind()) {
            case "given", "not given", "question tree" -> {
                if (ref.equals(DATE)) {
                    return;
                }
                leaves.add(fact.endsWith("/*") ? fact.substring(0, fact.length() - 2) : ref);
            }
            case "catalogue", "computed" -> {
                boolean ends = fact.startsWith("process/")
                        || !facts.get(fact).firings().isEmpty()
                        || fact.endsWith("/main");
                if (origin.inputs().isEmpty() && !ends) {
                    faults.add("the value of " + ref + " was " + origin.kind() + " from nothing");
                }
                origin.inputs().forEach(i -> leaves(i, leaves, depth + 1));
            }
            default -> faults.add("the origin of " + ref + " is " + origin.kind());
        }
    }

    /** Everything that does not lead where it should. */
    List<String> faults() {
        for (Answer.Firing f : answer.firings()) {
            f.matched().stream()
                    .filter(id -> !facts.containsKey(id))
                    .forEach(id ->
                            faults.add("firing " + f.n() + " matched " + id + ", which the answer does not hold"));
            f.uses().forEach(ref -> leaves(ref, new TreeSet<>(), 0));
            f.held().forEach(ref -> leaves(ref, new TreeSet<>(), 0));
            if (answer.rules().stream().noneMatch(r -> r.id().equals(f.rule()))) {
                faults.add("the rule " + f.rule() + " is not listed");
            }
            if (!f.certain() && f.held().isEmpty()) {
                faults.add("firing " + f.n() + " of " + f.rule() + " is undecided and nothing holds it");
            }
        }
        Set<String> sources = new TreeSet<>();
        answer.sources().forEach(s -> sources.add(s.id()));
        answer.rules()
                .forEach(r -> r.sources().stream()
                        .filter(c -> !sources.contains(c.source()))
                        .forEach(c -> faults.add(r.id() + " cites " + c.source() + ", which is not listed")));
        attributes.values().stream()
                .filter(a -> a.origin().kind().equals("catalogue")
                        && !a.origin().source().isEmpty())
                .forEach(a -> {
                    for (String cite : a.origin().source().split(";")) {
                        String id = cite.split(",", 2)[0].strip();
                        if (!sources.contains(id) && !id.equals("common practice")) {
                            faults.add(a.ref() + " cites " + id + ", which is not listed");
                        }
                    }
                });
        return faults.stream().distinct().toList();
    }
}
