package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Area;
import org.washwright.assessment.Answer.Attribute;
import org.washwright.assessment.Answer.Candidate;
import org.washwright.assessment.Answer.Cite;
import org.washwright.assessment.Answer.Fact;
import org.washwright.assessment.Answer.Finding;
import org.washwright.assessment.Answer.Firing;
import org.washwright.assessment.Answer.Origin;
import org.washwright.assessment.Answer.Rule;
import org.washwright.assessment.Answer.RuledOut;
import org.washwright.assessment.Answer.Sentence;
import org.washwright.assessment.Answer.Source;
import org.washwright.assessment.Answer.Window;

/** Look-ups that templates make in an answer, so that a page never shows an id where a name is known. */
@TemplateExtension
public final class AnswerLookup {

    private AnswerLookup() {}

    /** A rule behind a sentence, and the first of the given firings that speaks for it. */
    public record Why(int n, Rule rule, boolean certain) {}

    /** The firings of one level of the graph of conclusions. */
    public record Level(int number, List<Firing> firings) {

        /** Those that are certain. */
        public List<Firing> certain() {
            return firings.stream().filter(Firing::certain).toList();
        }

        /** Those that could not be decided. */
        public List<Firing> open() {
            return firings.stream().filter(f -> !f.certain()).toList();
        }
    }

    /** A matched fact with those of its attributes that the rule read. */
    public record Match(Fact fact, List<Attribute> uses) {}

    /** The firing of that number. */
    public static Firing firing(Answer answer, int n) {
        return answer.firings().stream()
                .filter(firing -> firing.n() == n)
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("this answer has no firing " + n));
    }

    /** The rule of that id; one that carries only its id when the answer does not cite it. */
    public static Rule rule(Answer answer, String id) {
        return answer.rules().stream()
                .filter(rule -> rule.id().equals(id))
                .findFirst()
                .orElseGet(() -> new Rule(id, id, "", List.of(), "", "", ""));
    }

    /** The rules behind a sentence, each once, in order of the firings given. */
    public static List<Why> whys(Answer answer, List<Integer> firings) {
        Map<String, Why> byRule = new LinkedHashMap<>();
        for (int n : firings) {
            Firing firing = firing(answer, n);
            byRule.putIfAbsent(firing.rule(), new Why(n, rule(answer, firing.rule()), firing.certain()));
        }
        return List.copyOf(byRule.values());
    }

    /** Firings by level, lowest first. */
    public static List<Level> levels(Answer answer) {
        Map<Integer, List<Firing>> byLevel = new TreeMap<>();
        for (Firing firing : answer.firings()) {
            byLevel.computeIfAbsent(firing.level(), level -> new ArrayList<>()).add(firing);
        }
        return byLevel.entrySet().stream()
                .map(entry -> new Level(entry.getKey(), List.copyOf(entry.getValue())))
                .toList();
    }

    /** What was said of the task and concluded from it. */
    public static List<Fact> taskFacts(Answer answer) {
        return answer.facts().stream().filter(fact -> !ofEdition(fact)).toList();
    }

    /** What the edition says of processes and stages, and what follows where a process meets the task. */
    public static List<Fact> editionFacts(Answer answer) {
        return answer.facts().stream().filter(AnswerLookup::ofEdition).toList();
    }

    private static boolean ofEdition(Fact fact) {
        boolean concluded = !fact.firings().isEmpty() && !fact.id().startsWith("line/");
        return !concluded && (fact.id().startsWith("line/") || fact.id().contains("process/"));
    }

    /** How many firings are undecided. */
    public static long undecidedCount(Answer answer) {
        return answer.firings().stream().filter(firing -> !firing.certain()).count();
    }

    /** The facts a firing matched, each with the attributes that were read. */
    public static List<Match> matches(Answer answer, Firing firing) {
        List<Match> matches = new ArrayList<>();
        for (String id : firing.matched()) {
            fact(answer, id)
                    .ifPresent(fact -> matches.add(new Match(
                            fact,
                            fact.attributes().stream()
                                    .filter(attribute -> firing.uses().contains(attribute.ref()))
                                    .toList())));
        }
        return List.copyOf(matches);
    }

    /** What a reader calls an attribute, a fact, a process or a group of the task. */
    public static String nameOf(Answer answer, String ref) {
        for (Fact fact : answer.facts()) {
            if (fact.id().equals(ref)) {
                return fact.name();
            }
            for (Attribute attribute : fact.attributes()) {
                if (attribute.ref().equals(ref)) {
                    return attribute.label() + " of " + fact.name();
                }
            }
        }
        return processName(answer, ref).orElse(ref);
    }

    /** What limits a firing sets on a parameter of a process, in words. */
    public static List<String> limitsOf(Answer answer, int n, Candidate candidate, Window window) {
        return firing(answer, n).findings().stream()
                .filter(finding ->
                        finding.verb().equals("limit") && finding.targets().contains(candidate.process()))
                .map(Finding::detail)
                .filter(detail -> detail.startsWith(window.name()))
                .toList();
    }

    /** Cautions of the whole answer that the page of one process does not already say. */
    public static List<Sentence> otherCautions(Answer answer, Candidate candidate) {
        List<String> said = candidate.cautions().stream().map(Sentence::text).toList();
        return answer.cautions().stream()
                .filter(caution -> !said.contains(caution.text()))
                .toList();
    }

    /** Where the value of an attribute comes from, in words. */
    public static String originOf(Answer answer, Attribute attribute) {
        Origin origin = attribute.origin();
        String words = switch (origin.kind()) {
            case "given" -> "given";
            case "computed" -> "computed: " + origin.detail();
            case "catalogue" -> "catalogue, " + origin.detail();
            case "question tree" -> "asked: " + origin.detail();
            default -> origin.kind() + " " + origin.detail();
        };
        String sourced =
                origin.source().isEmpty() ? words : words + " (" + cited(answer, new Cite(origin.source(), "")) + ")";
        return origin.warnings().isEmpty() ? sourced : sourced + ". Mind: " + String.join("; ", origin.warnings());
    }

    /** How a source is cited: title, year and place; the id alone when the answer does not hold the source. */
    public static String cited(Answer answer, Cite cite) {
        String place = cite.locator().isEmpty() ? "" : ", " + cite.locator();
        return source(answer, cite.source())
                        .map(source -> source.title() + " (" + source.year() + ")")
                        .orElse(cite.source())
                + place;
    }

    /** True when the source of this citation was read, not cited from memory. */
    public static boolean seen(Answer answer, Cite cite) {
        return source(answer, cite.source()).map(Source::seen).orElse(false);
    }

    /** Where a process stands in the answer, by which its reasons can be asked for. */
    public static String at(Answer answer, Candidate candidate) {
        return "/candidates/" + answer.candidates().indexOf(candidate);
    }

    /** Names of the areas in the order of the table. */
    public static List<String> areaNames(Answer answer) {
        return answer.candidates().stream()
                .findFirst()
                .map(candidate -> candidate.areas().stream().map(Area::name).toList())
                .orElse(List.of());
    }

    /** True when the process hangs on what is not known. */
    public static boolean conditional(Candidate candidate) {
        return candidate.status().equals("conditional");
    }

    private static Optional<Fact> fact(Answer answer, String id) {
        return answer.facts().stream().filter(fact -> fact.id().equals(id)).findFirst();
    }

    private static Optional<Source> source(Answer answer, String id) {
        return answer.sources().stream()
                .filter(source -> source.id().equals(id))
                .findFirst();
    }

    private static Optional<String> processName(Answer answer, String id) {
        return answer.candidates().stream()
                .filter(candidate -> candidate.process().equals(id))
                .map(Candidate::name)
                .findFirst()
                .or(() -> answer.ruledOut().stream()
                        .filter(out -> out.process().equals(id))
                        .map(RuledOut::name)
                        .findFirst());
    }
}
