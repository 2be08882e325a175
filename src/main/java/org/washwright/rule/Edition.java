package org.washwright.rule;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.task.Attribute;
import org.washwright.task.Value;
import org.washwright.task.Vocabulary;

/**
 * One state of a rulebook: everything that shapes an answer. Immutable.
 *
 * @param name name of the rulebook
 * @param title what a reader calls it
 * @param language language of its texts
 * @param licence licence of its content
 * @param sources what its rules and values cite, by id
 * @param catalogue its words
 * @param types fact types that its rules can match
 * @param rules rules in order of their ids
 * @param levels level of each rule in the graph of conclusions, by rule id
 * @param trees question trees by id
 * @param grading how points are given
 * @param assumptions values taken for granted, by id
 * @param meaningHash SHA-256 of the content in canonical form, hexadecimal
 * @param textHash SHA-256 of the raw files, hexadecimal
 */
public record Edition(
        String name,
        String title,
        String language,
        String licence,
        Map<String, Source> sources,
        Catalogue catalogue,
        FactTypes types,
        List<Rule> rules,
        Map<String, Integer> levels,
        Map<String, QuestionTree> trees,
        Grading grading,
        Map<String, Assumption> assumptions,
        String meaningHash,
        String textHash)
        implements Vocabulary {

    /** Something that can be cited; {@code seen} is false when it is cited from memory. */
    public record Source(String id, String title, int year, String locator, boolean seen) {}

    /** A value taken for granted, with where it comes from. */
    public record Assumption(
            String id, String label, Value value, org.washwright.quantity.Dimension dimension, String source) {}

    /** Keeps ordered copies. */
    public Edition {
        sources = Collections.unmodifiableMap(new TreeMap<>(sources));
        rules = rules.stream().sorted(Comparator.comparing(Rule::id)).toList();
        levels = Collections.unmodifiableMap(new TreeMap<>(levels));
        trees = Collections.unmodifiableMap(new TreeMap<>(trees));
        assumptions = Collections.unmodifiableMap(new TreeMap<>(assumptions));
    }

    /** The rule with this id. */
    public Optional<Rule> rule(String id) {
        return rules.stream().filter(r -> r.id().equals(id)).findFirst();
    }

    /** The same words with other rules, for whoever tries some of them alone. Its hashes are those of the whole. */
    public Edition with(List<Rule> some) {
        return with(some, catalogue);
    }

    /** Other rules over other words of the same kinds. Its hashes are those of the whole. */
    public Edition with(List<Rule> some, Catalogue words) {
        return new Edition(
                name,
                title,
                language,
                licence,
                sources,
                words,
                types,
                some,
                Levels.of(some).levels(),
                trees,
                grading,
                assumptions,
                meaningHash,
                textHash);
    }

    /** Rules over task, catalogue and conclusions. */
    public List<Rule> taskRules() {
        return rules.stream().filter(r -> !r.isLineRule()).toList();
    }

    /** Rules over composed stages. */
    public List<Rule> lineRules() {
        return rules.stream().filter(Rule::isLineRule).toList();
    }

    @Override
    public Optional<String> term(String kind, String word) {
        return catalogue.resolve(kind, word);
    }

    @Override
    public Collection<String> terms(String kind) {
        return catalogue.ofKind(kind).values().stream()
                .filter(t -> !t.isWithdrawn())
                .map(t -> t.id())
                .toList();
    }

    @Override
    public Collection<String> words(String kind) {
        TreeSet<String> words = new TreeSet<>();
        catalogue.ofKind(kind).values().forEach(t -> {
            words.add(t.id());
            words.add(t.name());
            words.addAll(t.synonyms());
        });
        return words;
    }

    @Override
    public Map<String, Attribute> declaredAttributes() {
        return catalogue.attributes();
    }

    @Override
    public Optional<Vocabulary.Questions> questions(String treeId) {
        return Optional.ofNullable(trees.get(treeId));
    }

    @Override
    public Collection<String> treeIds() {
        return trees.keySet();
    }
}
