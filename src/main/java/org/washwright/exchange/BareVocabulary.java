package org.washwright.exchange;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.washwright.task.Attribute;
import org.washwright.task.Vocabulary;

/**
 * The terms of an edition that is still being read: no attributes and no trees of its own yet.
 *
 * @param term the id that a word names, by kind and word
 * @param terms all ids, by kind
 */
record BareVocabulary(BiFunction<String, String, Optional<String>> term, Function<String, Collection<String>> terms)
        implements Vocabulary {

    @Override
    public Optional<String> term(String kind, String word) {
        return term.apply(kind, word);
    }

    @Override
    public Collection<String> terms(String kind) {
        return terms.apply(kind);
    }

    @Override
    public Map<String, Attribute> declaredAttributes() {
        return Map.of();
    }

    @Override
    public Optional<Questions> questions(String treeId) {
        return Optional.empty();
    }

    @Override
    public Collection<String> treeIds() {
        return List.of();
    }
}
