package org.washwright.assist;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Term;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.task.FieldType;

/** Proposes terms of the catalogue and what else goes by an id. */
final class TermProposals {

    private static final int LONGEST = 160;

    private final Edition words;

    TermProposals(Edition words) {
        this.words = words;
    }

    /** Terms of a kind that are not withdrawn, by name. */
    List<Proposal> ofKind(String kind, Range range) {
        if (kind.equals(FactTypes.LINE_STAGE)) {
            List<Proposal> both = new ArrayList<>(ofKind("stage", range));
            both.addAll(ofKind("process", range));
            return both;
        }
        return of(words.catalogue().ofKind(kind).values(), range);
    }

    /** Nodes of the process tree. */
    List<Proposal> targets(Range range) {
        Catalogue catalogue = words.catalogue();
        return of(catalogue.processes().values().stream().map(p -> p.term()).toList(), range);
    }

    /** Stages that lines can hold. */
    List<Proposal> stages(Range range) {
        return of(
                words.catalogue().stages().values().stream().map(s -> s.term()).toList(), range);
    }

    /** Parameters of stages. */
    List<Proposal> parameters(Range range) {
        return of(
                words.catalogue().parameters().values().stream()
                        .map(p -> p.term())
                        .toList(),
                range);
    }

    private static List<Proposal> of(Collection<Term> terms, Range range) {
        return terms.stream()
                .filter(t -> !t.isWithdrawn())
                .map(t -> Proposal.of(
                        t.id(), range.quote(t.id()), t.kind().replace('-', ' '), t.name(), shorten(t.definition())))
                .toList();
    }

    /** True and false. */
    static List<Proposal> flags(Range range) {
        return range.quoted()
                ? List.of(
                        Proposal.of(FieldType.YES, range.quote(FieldType.YES), "flag", "", ""),
                        Proposal.of(FieldType.NO, range.quote(FieldType.NO), "flag", "", ""))
                : List.of(
                        Proposal.of("true", "true", "flag", "yes", ""),
                        Proposal.of("false", "false", "flag", "no", ""));
    }

    /** The first sentence or so. */
    static String shorten(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST).stripTrailing() + "…";
    }
}
