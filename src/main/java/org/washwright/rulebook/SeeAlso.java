package org.washwright.rulebook;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Property;
import org.washwright.catalogue.Term;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** Which terms say something of another term: the processes that run with a medium, the alloys of a family. */
final class SeeAlso {
    private final Map<String, Set<String>> anchors = new TreeMap<>();

    private SeeAlso() {}

    static SeeAlso of(Catalogue catalogue) {
        SeeAlso out = new SeeAlso();
        for (Kind kind : catalogue.kinds().values()) {
            Collection<Term> terms = catalogue.ofKind(kind.id()).values();
            for (Property property : kind.properties().values()) {
                if (property.type() instanceof FieldType.TermType t && !t.isFlag()) {
                    terms.stream()
                            .filter(term -> !term.isWithdrawn())
                            .forEach(term -> out.add(term, property, t.kind()));
                }
            }
        }
        return out;
    }

    private void add(Term term, Property property, String kind) {
        Value value = term.property(property.id());
        Set<String> named =
                value instanceof Value.OneOf o ? o.terms() : value instanceof Value.AllOf a ? a.terms() : Set.of();
        named.forEach(id ->
                anchors.computeIfAbsent(kind + " " + id, k -> new TreeSet<>()).add(term.kind() + " " + term.id()));
    }

    /** Kind and id, with a blank between, of each term that names this one. */
    Collection<String> of(String kind, String id) {
        return anchors.getOrDefault(kind + " " + id, Set.of());
    }
}
