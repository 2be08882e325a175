package org.washwright.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Term;
import org.washwright.rule.Edition;
import org.washwright.task.Value;

/** The terms of an edition, by kind, as a reader looks them up. */
final class Glossary {

    private Glossary() {}

    /** The terms of one kind. */
    record Section(String kind, String name, List<Word> words) {}

    /** A term. */
    record Word(
            String id, String name, String definition, List<String> synonyms, String replacedBy, List<Says> says) {}

    /** What a term says of itself. */
    record Says(String label, String value, String source) {}

    /** All terms, or those that hold the text looked for in name, synonym, id or definition. */
    static List<Section> of(Edition edition, String looked) {
        String wanted = looked.strip().toLowerCase(Locale.ROOT);
        List<Section> sections = new ArrayList<>();
        Catalogue catalogue = edition.catalogue();
        for (Kind kind : catalogue.kinds().values()) {
            List<Word> words = catalogue.ofKind(kind.id()).values().stream()
                    .filter(term -> holds(term, wanted))
                    .sorted(Comparator.comparing((Term t) -> t.name().toLowerCase(Locale.ROOT))
                            .thenComparing(Term::id))
                    .map(term -> word(edition, kind, term))
                    .toList();
            if (!words.isEmpty()) {
                sections.add(new Section(kind.id(), kind.name(), words));
            }
        }
        return sections;
    }

    private static boolean holds(Term term, String wanted) {
        return wanted.isEmpty()
                || Stream.concat(Stream.of(term.id(), term.name(), term.definition()), term.synonyms().stream())
                        .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(wanted));
    }

    private static Word word(Edition edition, Kind kind, Term term) {
        List<Says> says = kind.properties().values().stream()
                .filter(p -> !(term.property(p.id()) instanceof Value.NotApplicable))
                .map(p -> new Says(
                        p.label(),
                        ValueText.of(edition.catalogue(), term.property(p.id()), p.type()),
                        term.sources().getOrDefault(p.id(), "")))
                .toList();
        return new Word(
                term.id(),
                term.name(),
                term.definition(),
                term.synonyms(),
                term.isWithdrawn() ? edition.catalogue().name(kind.id(), term.replacedBy()) : "",
                says);
    }
}
