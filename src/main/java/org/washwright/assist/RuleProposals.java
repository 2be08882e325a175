package org.washwright.assist;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.rule.Basis;
import org.washwright.rule.Edition;

/** Proposes what may stand at a caret in rule text. */
final class RuleProposals {

    private static final Set<String> WITH_TARGET =
            Set.of("ruleOut", "support", "oppose", "require", "limit", "caution");

    private final Edition words;

    RuleProposals(Edition words) {
        this.words = words;
    }

    Proposals at(String text, int caret) {
        List<Token> tokens = RuleTokens.of(text);
        Optional<Token> current = tokens.stream().filter(t -> t.holds(caret)).findFirst();
        if (current.filter(t -> t.kind() == Token.Kind.COMMENT).isPresent()) {
            return Proposals.none(caret);
        }
        int start = current.map(Token::start).orElse(caret);
        List<Token> before = tokens.stream().filter(t -> t.end() <= start).toList();
        Situation situation = new SituationFinder(words.types()).after(before);
        Range range = Range.at(text, caret, current);
        if (range.quoted() && situation instanceof Situation.ArgumentPlace place && inBrace(range.typed())) {
            return placeholders(text, caret, range, place);
        }
        if (range.quoted() && situation instanceof Situation.AnnotationText annotation) {
            return annotation(annotation, text, caret, range);
        }
        return new Proposals(range.from(), range.to(), spaced(list(situation, range), text, range));
    }

    private List<Proposal> list(Situation situation, Range range) {
        ConditionProposals conditions = new ConditionProposals(words);
        ConsequenceProposals consequences = new ConsequenceProposals(words);
        if (situation instanceof Situation.LiteralPlace at) {
            return conditions.literals(at, range);
        }
        if (situation instanceof Situation.ArgumentPlace at) {
            return consequences.arguments(at, range);
        }
        if (range.quoted()) {
            return List.of();
        }
        if (situation instanceof Situation.Outside) {
            return List.of(Proposal.of("rule", "rule \"\"", "word", "", Meanings.WORDS.get("rule"))
                    .caretBack(1));
        }
        if (situation instanceof Situation.Head at) {
            return head(at, range);
        }
        if (situation instanceof Situation.AnnotationText) {
            return List.of();
        }
        if (situation instanceof Situation.PatternStart at) {
            return conditions.patterns(at);
        }
        if (situation instanceof Situation.FieldPlace at) {
            return conditions.fields(at);
        }
        if (situation instanceof Situation.OperatorPlace at) {
            return conditions.operators(at);
        }
        if (situation instanceof Situation.ConsequenceStart at) {
            return consequences.verbs(at);
        }
        if (situation instanceof Situation.Joint at && range.typed().isEmpty()) {
            return at.next().stream()
                    .map(sign -> Proposal.of(sign.strip(), sign, "sign", "", ""))
                    .toList();
        }
        return List.of();
    }

    private static List<Proposal> head(Situation.Head at, Range range) {
        List<Proposal> out = new java.util.ArrayList<>();
        Meanings.ANNOTATIONS.forEach((name, meaning) -> {
            if (!at.given().contains(name)) {
                out.add(Proposal.of("@" + name, "@" + name + "(\"\")", "annotation", "", meaning)
                        .caretBack(2));
            }
        });
        if (!range.typed().startsWith("@")) {
            out.add(Proposal.of("when", "when\n  ", "word", "", Meanings.WORDS.get("when")));
        }
        return out;
    }

    private Proposals annotation(Situation.AnnotationText at, String text, int caret, Range range) {
        if (at.name().equals("basis")) {
            return new Proposals(
                    range.from(),
                    range.to(),
                    Arrays.stream(Basis.values())
                            .map(b -> Proposal.of(b.word(), range.quote(b.word()), "basis", "", ""))
                            .toList());
        }
        if (!at.name().equals("source")) {
            return Proposals.none(caret);
        }
        int from = range.from() + range.typed().lastIndexOf(';') + 1;
        while (from < caret && text.charAt(from) == ' ') {
            from++;
        }
        if (text.substring(from, caret).contains(",")) {
            // Behind the comma stands the place in the source, which only its reader knows.
            return Proposals.none(caret);
        }
        return new Proposals(from, caret, sources());
    }

    private List<Proposal> sources() {
        return words.sources().values().stream()
                .map(s -> Proposal.of(
                        s.id(),
                        s.id(),
                        "source",
                        s.title() + (s.year() > 0 ? " (" + s.year() + ")" : ""),
                        s.seen() ? "" : "Cited from memory."))
                .toList();
    }

    private static boolean inBrace(String typed) {
        return typed.lastIndexOf('{') > typed.lastIndexOf('}');
    }

    private static Proposals placeholders(String text, int caret, Range range, Situation.ArgumentPlace place) {
        int from = range.from() + range.typed().lastIndexOf('{') + 1;
        int to = caret;
        while (to < text.length()
                && (Character.isLetterOrDigit(text.charAt(to)) || "$._".indexOf(text.charAt(to)) >= 0)) {
            to++;
        }
        boolean closed = to < text.length() && text.charAt(to) == '}';
        return new Proposals(
                from,
                to,
                Named.placeholders(
                        place.bounds(), WITH_TARGET.contains(place.verb().word()), closed ? "" : "}"));
    }

    /** An operator keeps a blank from the field before it. */
    private static List<Proposal> spaced(List<Proposal> list, String text, Range range) {
        boolean tight = range.from() > 0
                && !range.quoted()
                && !Character.isWhitespace(text.charAt(range.from() - 1))
                && "(,".indexOf(text.charAt(range.from() - 1)) < 0;
        return list.stream()
                .map(p -> tight && p.kind().equals("operator") ? p.inserting(" " + p.insert()) : p)
                .toList();
    }
}
