package org.washwright.catalogue;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.task.Attribute;

/**
 * Everything an edition says about its words. Immutable.
 *
 * @param kinds kinds by id
 * @param terms terms by kind and id
 * @param processes nodes of the process tree by id
 * @param stages stages by id
 * @param parameters parameters by id
 * @param cautions usual caution of a hazard, by hazard id
 * @param blindSpots what a test method can't see, by method id
 * @param attributes task attributes that the edition declares, by id
 */
public record Catalogue(
        Map<String, Kind> kinds,
        Map<String, Map<String, Term>> terms,
        Map<String, ProcessTerm> processes,
        Map<String, StageTerm> stages,
        Map<String, Parameter> parameters,
        Map<String, String> cautions,
        Map<String, String> blindSpots,
        Map<String, Attribute> attributes) {

    /** Root of the process tree. */
    public static final String ROOT = "any";

    /** The four cleaning factors. */
    public static final List<String> FACTORS = List.of("medium", "agitation", "temperature", "time");

    /** Kinds that rules and lines rely on and whose terms may hold extra keys. */
    public static final List<String> KINDS_KNOWN = List.of(
            "process",
            "stage",
            "parameter",
            "hazard",
            "conclusion",
            "test-method",
            "substrate",
            "soil",
            "feature",
            "medium",
            "technique",
            "operation",
            "shape",
            "plating",
            "soil-state",
            "charging",
            "place",
            "jurisdiction",
            "solvent-class");

    /** Keeps ordered copies. */
    public Catalogue {
        kinds = ordered(kinds);
        TreeMap<String, Map<String, Term>> byKind = new TreeMap<>();
        terms.forEach((kind, map) -> byKind.put(kind, ordered(map)));
        terms = Collections.unmodifiableMap(byKind);
        processes = ordered(processes);
        stages = ordered(stages);
        parameters = ordered(parameters);
        cautions = ordered(cautions);
        blindSpots = ordered(blindSpots);
        attributes = ordered(attributes);
    }

    private static <V> Map<String, V> ordered(Map<String, V> map) {
        return Collections.unmodifiableMap(new TreeMap<>(map));
    }

    /** Terms of a kind by id; empty for a kind without terms. */
    public Map<String, Term> ofKind(String kind) {
        return terms.getOrDefault(kind, Map.of());
    }

    /** A term by kind and id. */
    public Optional<Term> term(String kind, String id) {
        return Optional.ofNullable(ofKind(kind).get(id));
    }

    /** What a reader calls a term; the id itself when it is not in the catalogue. */
    public String name(String kind, String id) {
        return term(kind, id).map(Term::name).orElse(id);
    }

    /** The same words with some of the processes that are no groups. */
    public Catalogue withProcesses(Set<String> some) {
        TreeMap<String, ProcessTerm> rest = new TreeMap<>(processes);
        rest.values().removeIf(p -> !p.group() && !some.contains(p.id()));
        return new Catalogue(kinds, terms, rest, stages, parameters, cautions, blindSpots, attributes);
    }

    /** Processes that are no groups, in order of their ids. */
    public Collection<ProcessTerm> leaves() {
        return processes.values().stream()
                .filter(p -> !p.group() && !p.term().isWithdrawn())
                .toList();
    }

    /** Processes at or below a node of the process tree, in order of their ids. */
    public List<String> members(String node) {
        return leaves().stream()
                .filter(p -> p.nodes().contains(node))
                .map(ProcessTerm::id)
                .toList();
    }

    /** The id that a word names: an id, a name or a synonym, whatever its case; withdrawn terms lead to their successor. */
    public Optional<String> resolve(String kind, String word) {
        Map<String, Term> map = ofKind(kind);
        Term direct = map.get(word);
        String wanted = word.toLowerCase(Locale.ROOT);
        Optional<Term> found = direct != null
                ? Optional.of(direct)
                : map.values().stream()
                        .filter(t -> t.name().toLowerCase(Locale.ROOT).equals(wanted)
                                || t.synonyms().stream()
                                        .anyMatch(
                                                s -> s.toLowerCase(Locale.ROOT).equals(wanted)))
                        .findFirst();
        return found.map(t -> t.isWithdrawn() && map.containsKey(t.replacedBy()) ? t.replacedBy() : t.id());
    }
}
