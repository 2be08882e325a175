package org.washwright.explain.vary;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.engine.Readers;
import org.washwright.rule.Contact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Levels;
import org.washwright.rule.Rule;
import org.washwright.task.Attribute;
import org.washwright.task.Group;

/**
 * Which places a rule can read at all: by itself, through formulas, and through what other rules conclude for it. A rule over
 * lines may read any, as everything shapes a line.
 */
public final class Reads {

    private final Map<String, Set<String>> keys = new HashMap<>();
    private final Set<String> everything = new HashSet<>();

    /** What the rules of an edition read. */
    public Reads(Edition edition, Readers readers) {
        for (Group group : Group.values()) {
            for (Attribute a : group.attributes()) {
                if (!a.computed()) {
                    add(readers, group.factType(), a.name());
                }
            }
        }
        edition.catalogue().attributes().keySet().forEach(id -> add(readers, FactTypes.declared(id), "value"));
        edition.rules().forEach(this::lists);
        inherit(edition);
    }

    private void add(Readers readers, String type, String field) {
        readers.of(type, field).forEach(r -> of(r.id()).add(type + "." + field));
    }

    private Set<String> of(String rule) {
        return keys.computeIfAbsent(rule, k -> new HashSet<>());
    }

    private void lists(Rule rule) {
        if (rule.isLineRule()) {
            everything.add(rule.id());
        }
        rule.patterns().forEach(p -> {
            String type = p.type().name();
            of(rule.id())
                    .add(Contact.byFactType(type).map(c -> c.group().factType()).orElse(type));
        });
    }

    /** Rules read what the rules read that conclude for them; those of lower levels come first. */
    private void inherit(Edition edition) {
        TreeSet<String> known = new TreeSet<>();
        Map<String, Set<String>> concluders = new HashMap<>();
        edition.rules()
                .forEach(r -> Levels.concluded(r).forEach(c -> {
                    known.add(c);
                    concluders.computeIfAbsent(c, k -> new TreeSet<>()).add(r.id());
                }));
        List<Rule> byLevel = edition.rules().stream()
                .sorted(java.util.Comparator.comparingInt(
                        (Rule r) -> edition.levels().getOrDefault(r.id(), 0)))
                .toList();
        for (Rule rule : byLevel) {
            for (String conclusion : Levels.matched(rule, known)) {
                concluders.getOrDefault(conclusion, Set.of()).forEach(id -> {
                    of(rule.id()).addAll(of(id));
                    if (everything.contains(id)) {
                        everything.add(rule.id());
                    }
                });
            }
        }
    }

    /** True when what is at a place may matter to a rule. */
    public boolean reads(String rule, Place place) {
        if (everything.contains(rule)) {
            return true;
        }
        Set<String> read = keys.getOrDefault(rule, Set.of());
        return place instanceof Place.Said said
                ? read.contains(Places.type(said.edit()) + "." + Places.field(said.edit()))
                : read.contains(place.group().orElseThrow().factType());
    }
}
