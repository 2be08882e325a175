package org.washwright.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.washwright.catalogue.Term;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.task.FieldType;

/** Help in files that are not rule text: ids of the catalogue, and in tables what the column of the caret holds. */
final class PlainFiles {

    private static final int LEAST = 2;

    private final Edition words;

    PlainFiles(Edition words) {
        this.words = words;
    }

    Proposals at(String file, String text, int caret) {
        int from = start(text, caret);
        int to = end(text, caret);
        Range range = new Range(from, to, true, false, text.substring(from, caret));
        Optional<String> column = file.endsWith(".csv") ? TableColumn.at(text, caret) : Optional.empty();
        if (column.isPresent()) {
            return new Proposals(from, to, inColumn(column.get(), range));
        }
        return range.typed().length() < LEAST ? Proposals.none(caret) : new Proposals(from, to, ids(range));
    }

    private List<Proposal> inColumn(String column, Range range) {
        TermProposals terms = new TermProposals(words);
        int dot = column.indexOf('.');
        if (dot > 0) {
            return words.types()
                    .type(column.substring(0, dot))
                    .flatMap(t -> t.field(column.substring(dot + 1)))
                    .map(f -> ofField(f, terms, range))
                    .orElse(List.of());
        }
        return switch (column) {
            case "target" -> terms.targets(range);
            case "stage" -> terms.stages(range);
            case "parameter" -> terms.parameters(range);
            case "hazard", "conclusion" -> terms.ofKind(column, range);
            case "method" -> terms.ofKind("test-method", range);
            case "criterion" ->
                words.grading().areas().stream()
                        .flatMap(a -> a.criteria().stream())
                        .map(c -> Proposal.of(c.id(), c.id(), column, c.name(), ""))
                        .toList();
            default -> List.of();
        };
    }

    private static List<Proposal> ofField(Field field, TermProposals terms, Range range) {
        if (field.type() instanceof FieldType.TermType t) {
            return t.isFlag() ? TermProposals.flags(range) : terms.ofKind(t.kind(), range);
        }
        return field.type() instanceof FieldType.NumberType n
                ? QuantityProposals.of(n.dimension(), new Range(range.from(), range.to(), true, false, ""))
                : List.of();
    }

    /** Every id that starts with what is typed, each once with all its kinds. */
    private List<Proposal> ids(Range range) {
        Map<String, Proposal> found = new TreeMap<>();
        all().filter(t -> t.id().startsWith(range.typed()) && !t.isWithdrawn())
                .forEach(t -> found.merge(
                        t.id(),
                        Proposal.of(
                                t.id(),
                                t.id(),
                                t.kind().replace('-', ' '),
                                t.name(),
                                TermProposals.shorten(t.definition())),
                        (a, b) -> Proposal.of(a.label(), a.insert(), a.kind() + ", " + b.kind(), a.name(), "")));
        return new ArrayList<>(found.values());
    }

    private Stream<Term> all() {
        return words.catalogue().terms().values().stream().flatMap(m -> m.values().stream());
    }

    Optional<Help> help(String text, int caret) {
        int from = start(text, caret);
        int to = end(text, caret);
        String word = text.substring(from, to);
        if (word.isEmpty()) {
            return Optional.empty();
        }
        TermHelp terms = new TermHelp(words);
        return terms.any(word)
                .or(() -> terms.source(word))
                .or(() -> terms.criterion(word))
                .or(() -> terms.attribute(word))
                .or(() -> column(text, caret))
                .map(h -> h.at(from, to));
    }

    /** A field of a fact type, as columns of tables and figures are named. */
    private Optional<Help> column(String text, int caret) {
        int from = caret;
        while (from > 0 && isOfPath(text.charAt(from - 1))) {
            from--;
        }
        int to = caret;
        while (to < text.length() && isOfPath(text.charAt(to))) {
            to++;
        }
        String path = text.substring(from, to);
        int dot = path.indexOf('.');
        if (dot < 0 || path.startsWith(FactTypes.ATTRIBUTE + "/")) {
            return Optional.empty();
        }
        return words.types()
                .type(path.substring(0, dot))
                .flatMap(t -> t.field(path.substring(dot + 1))
                        .map(f -> Help.of(f.label(), "field of " + t.name(), List.of(Meanings.field(t, f)))));
    }

    private static boolean isOfPath(char c) {
        return isOfId(c) || c == '.';
    }

    private static boolean isOfId(char c) {
        return Character.isLetterOrDigit(c) || c == '-';
    }

    private static int start(String text, int caret) {
        int from = caret;
        while (from > 0 && isOfId(text.charAt(from - 1))) {
            from--;
        }
        return from;
    }

    private static int end(String text, int caret) {
        int to = caret;
        while (to < text.length() && isOfId(text.charAt(to))) {
            to++;
        }
        return to;
    }
}
