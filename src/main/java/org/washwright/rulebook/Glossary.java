package org.washwright.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.Stream;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Parameter;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.Property;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.StageTerm;
import org.washwright.catalogue.Term;
import org.washwright.engine.Words;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/**
 * The terms of an edition, by kind, as a reader looks them up.
 *
 * @param sections kinds with their terms
 * @param processes the process tree, from its root; empty unless all terms are shown
 */
record Glossary(List<Section> sections, List<Branch> processes) {
    private static final int DIGITS = 3;
    private static final int SHOWN = 8;

    /** The terms of one kind. */
    record Section(String kind, String name, List<Word> words) {}

    /**
     * A term.
     *
     * @param aside what a hazard asks for, or what a test method can't see; empty for other kinds
     * @param seeAlso the first few terms that name it
     * @param more how many more there are
     * @param uses rules that speak of it
     */
    record Word(
            String kind,
            String id,
            String name,
            String definition,
            List<String> synonyms,
            String replacedBy,
            String aside,
            List<Says> says,
            List<Piece> seeAlso,
            int more,
            List<TermUses.Use> uses) {}

    /** What a term says of itself. */
    record Says(String label, List<Piece> value, Optional<RuleView.Cited> source) {}

    /** A piece of a value; with a link to its own entry when it is a term. */
    record Piece(String text, String anchor) {}

    /** A node of the process tree. */
    record Branch(String id, String name, boolean group, String definition, List<Branch> below) {}

    /** All terms, or those that hold the text looked for in name, synonym, id or definition. */
    static Glossary of(Edition edition, String looked) {
        String wanted = looked.strip().toLowerCase(Locale.ROOT);
        Catalogue catalogue = edition.catalogue();
        TermUses uses = TermUses.of(edition);
        SeeAlso seeAlso = SeeAlso.of(catalogue);
        List<Section> sections = new ArrayList<>();
        for (Kind kind : catalogue.kinds().values()) {
            List<Word> words = catalogue.ofKind(kind.id()).values().stream()
                    .filter(term -> holds(term, wanted))
                    .sorted(Comparator.comparing((Term t) -> t.name().toLowerCase(Locale.ROOT))
                            .thenComparing(Term::id))
                    .map(term -> word(edition, kind, term, uses, seeAlso))
                    .toList();
            if (!words.isEmpty()) {
                sections.add(new Section(kind.id(), kind.name(), words));
            }
        }
        return new Glossary(sections, wanted.isEmpty() ? below(catalogue, "") : List.of());
    }

    /** Number of terms. */
    public int size() {
        return sections.stream().mapToInt(s -> s.words().size()).sum();
    }

    private static List<Branch> below(Catalogue catalogue, String parent) {
        return catalogue.processes().values().stream()
                .filter(p -> p.parent().equals(parent) && !p.term().isWithdrawn())
                .sorted(Comparator.comparing(ProcessTerm::group)
                        .reversed()
                        .thenComparing(p -> p.term().name()))
                .map(p ->
                        new Branch(p.id(), p.term().name(), p.group(), p.term().definition(), below(catalogue, p.id())))
                .toList();
    }

    private static boolean holds(Term term, String wanted) {
        return wanted.isEmpty()
                || Stream.concat(Stream.of(term.id(), term.name(), term.definition()), term.synonyms().stream())
                        .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(wanted));
    }

    private static Word word(Edition edition, Kind kind, Term term, TermUses uses, SeeAlso seeAlso) {
        Catalogue catalogue = edition.catalogue();
        List<Says> says = new ArrayList<>();
        kind.properties().values().stream()
                .filter(p -> !(term.property(p.id()) instanceof Value.NotApplicable))
                .map(p -> property(edition, term, p))
                .forEach(says::add);
        if (kind.id().equals("process")) {
            says.addAll(setting(catalogue, catalogue.processes().get(term.id()).setting()));
        } else if (kind.id().equals("stage")) {
            says.addAll(stage(catalogue, catalogue.stages().get(term.id())));
        } else if (kind.id().equals("parameter")) {
            says.addAll(parameter(catalogue.parameters().get(term.id())));
        }
        List<Piece> naming = seeAlso.of(kind.id(), term.id()).stream()
                .map(anchor -> anchor.split(" ", 2))
                .map(anchor -> piece(catalogue, anchor[0], anchor[1]))
                .sorted(Comparator.comparing(p -> p.text().toLowerCase(Locale.ROOT)))
                .toList();
        return new Word(
                kind.id(),
                term.id(),
                term.name(),
                term.definition(),
                term.synonyms(),
                term.isWithdrawn() ? catalogue.name(kind.id(), term.replacedBy()) : "",
                aside(catalogue, kind.id(), term.id()),
                says,
                naming.stream().limit(SHOWN).toList(),
                Math.max(0, naming.size() - SHOWN),
                uses.of(kind.id(), term.id()));
    }

    private static String aside(Catalogue catalogue, String kind, String id) {
        return switch (kind) {
            case "hazard" -> catalogue.cautions().getOrDefault(id, "");
            case "test-method" -> catalogue.blindSpots().getOrDefault(id, "");
            default -> "";
        };
    }

    private static Says property(Edition edition, Term term, Property property) {
        return new Says(
                property.label(),
                pieces(edition.catalogue(), term.property(property.id()), property.type()),
                Optional.ofNullable(term.sources().get(property.id()))
                        .filter(s -> !s.isEmpty())
                        .map(s -> cited(edition, s)));
    }

    /** A citation as catalogue files write it: id of the source, comma, place in it. */
    static RuleView.Cited cited(Edition edition, String source) {
        int comma = source.indexOf(',');
        return RuleView.cited(
                edition,
                comma < 0
                        ? new Rule.Cite(source, "")
                        : new Rule.Cite(
                                source.substring(0, comma),
                                source.substring(comma + 1).strip()));
    }

    private static List<Piece> pieces(Catalogue catalogue, Value value, FieldType type) {
        SortedSet<String> terms =
                value instanceof Value.OneOf o ? o.terms() : value instanceof Value.AllOf a ? a.terms() : null;
        if (terms == null || !(type instanceof FieldType.TermType t) || t.isFlag()) {
            return List.of(new Piece(new Words(catalogue).value(value, type, Words.COMPUTED), ""));
        }
        return terms.stream().map(id -> piece(catalogue, t.kind(), id)).toList();
    }

    private static Piece piece(Catalogue catalogue, String kind, String id) {
        return new Piece(catalogue.name(kind, id), catalogue.term(kind, id).isPresent() ? kind + "-" + id : "");
    }

    private static List<Says> stage(Catalogue catalogue, StageTerm stage) {
        List<Says> says = new ArrayList<>(setting(catalogue, stage.setting()));
        says.add(plain("removes soil", stage.cleaning() ? FieldType.YES : FieldType.NO));
        if (!stage.alternatives().isEmpty()) {
            says.add(new Says(
                    "alternatives",
                    stage.alternatives().stream()
                            .map(id -> piece(catalogue, "stage", id))
                            .toList(),
                    Optional.empty()));
        }
        return says;
    }

    private static List<Says> setting(Catalogue catalogue, Setting setting) {
        List<Says> says = new ArrayList<>();
        setting.factors().forEach((factor, words) -> says.add(plain(factor, words)));
        setting.windows().forEach((id, span) -> {
            Parameter parameter = catalogue.parameters().get(id);
            if (parameter != null) {
                says.add(new Says(
                        parameter.term().name() + ", usual",
                        List.of(new Piece(Quantities.write(span, parameter.dimension(), DIGITS), "")),
                        Optional.empty()));
            }
        });
        return says;
    }

    private static List<Says> parameter(Parameter parameter) {
        return List.of(
                plain("cleaning factor", parameter.factor()),
                plain("possible range", Quantities.write(parameter.scale(), parameter.dimension(), DIGITS)));
    }

    private static Says plain(String label, String value) {
        return new Says(label, List.of(new Piece(value, "")), Optional.empty());
    }
}
