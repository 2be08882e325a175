package org.washwright.rule.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Grading;
import org.washwright.task.FieldType;

/**
 * What rules may name.
 *
 * @param catalogue the words
 * @param types the fact types
 * @param grading the criteria
 * @param sources the sources
 */
public record Terms(Catalogue catalogue, FactTypes types, Grading grading, Map<String, Edition.Source> sources) {

    /** The id of a term of a kind; only ids count in rules, no names or synonyms. */
    Optional<String> id(String kind, String id) {
        return all(kind).contains(id) ? Optional.of(id) : Optional.empty();
    }

    /** All ids of a kind that a rule may name. */
    Collection<String> all(String kind) {
        if (kind.equals(FieldType.FLAG)) {
            return List.of(FieldType.YES, FieldType.NO);
        }
        if (kind.equals(FactTypes.LINE_STAGE)) {
            List<String> both = new ArrayList<>(catalogue.stages().keySet());
            both.addAll(catalogue.processes().keySet());
            return both;
        }
        return catalogue.ofKind(kind).keySet();
    }
}
