package org.washwright.assist;

import java.util.List;
import java.util.Optional;
import org.washwright.rule.Basis;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** Says what the word under a caret means in rule text. */
final class RuleHelp {

    private static final String PLACE = "$._";

    private final Edition words;
    private final TermHelp terms;

    RuleHelp(Edition words) {
        this.words = words;
        this.terms = new TermHelp(words);
    }

    Optional<Help> at(String text, int caret) {
        List<Token> tokens = RuleTokens.of(text);
        Optional<Token> under = tokens.stream()
                .filter(t -> t.start() <= caret && caret <= t.end() && t.kind() != Token.Kind.COMMENT)
                // Between two that touch, the word counts and not the sign.
                .min(java.util.Comparator.comparing((Token t) -> t.kind() == Token.Kind.SIGN)
                        .thenComparing(Token::start));
        if (under.isEmpty()) {
            return Optional.empty();
        }
        Token token = under.get();
        List<Token> before =
                tokens.stream().filter(t -> t.end() <= token.start()).toList();
        Situation situation = new SituationFinder(words.types()).after(before);
        return help(token, situation, text, caret).map(h -> h.to() > 0 ? h : h.at(token.start(), token.end()));
    }

    private Optional<Help> help(Token token, Situation situation, String text, int caret) {
        if (token.kind() == Token.Kind.ANNOTATION) {
            return Optional.ofNullable(Meanings.ANNOTATIONS.get(token.text()))
                    .map(m -> Help.of("@" + token.text(), "annotation", List.of(m)));
        }
        if (situation instanceof Situation.AnnotationText a && token.kind() == Token.Kind.TEXT) {
            return annotation(a.name(), token, caret);
        }
        if (situation instanceof Situation.FieldPlace at && !token.isVariable()) {
            return at.pattern().type().flatMap(t -> t.field(token.text()).map(f -> field(t, f)));
        }
        if (situation instanceof Situation.LiteralPlace at) {
            return literal(at, token);
        }
        if (situation instanceof Situation.ArgumentPlace at) {
            return argument(at, token, text, caret);
        }
        if (situation instanceof Situation.ConsequenceStart
                && Verb.of(token.text()).isPresent()) {
            Verb verb = Verb.of(token.text()).get();
            return Optional.of(Help.of(verb.word(), "verb", List.of(verb.meaning(), "Written " + verb.form() + ".")));
        }
        if (situation instanceof Situation.PatternStart && !Meanings.WORDS.containsKey(token.text())) {
            return Optional.of(Meanings.factType(token.text()))
                    .filter(m -> !m.isEmpty())
                    .map(m -> Help.of(token.text(), "fact type", List.of(m)));
        }
        return word(token);
    }

    private static Optional<Help> word(Token token) {
        return Optional.ofNullable(token.kind() == Token.Kind.WORD ? Meanings.WORDS.get(token.text()) : null)
                .map(m -> Help.of(token.text(), "word of the language", List.of(m)));
    }

    private Optional<Help> annotation(String name, Token token, int caret) {
        if (name.equals("basis")) {
            return Basis.of(token.text()).map(b -> Help.of(b.word(), "basis", List.of("Where the rule comes from.")));
        }
        if (!name.equals("source")) {
            return Optional.empty();
        }
        int at = Math.max(0, Math.min(token.text().length(), caret - token.start() - 1));
        int from = token.text().lastIndexOf(';', Math.max(0, at - 1)) + 1;
        int end = token.text().indexOf(';', at);
        String cite = token.text().substring(from, end < from ? token.text().length() : end);
        String id = (cite.indexOf(',') < 0 ? cite : cite.substring(0, cite.indexOf(','))).strip();
        return terms.source(id);
    }

    private static Help field(FactType type, Field field) {
        return Help.of(field.label(), "field of " + type.name(), List.of(Meanings.field(type, field)));
    }

    private Optional<Help> literal(Situation.LiteralPlace at, Token token) {
        if (token.isVariable()) {
            return variable(token.text(), at.bounds());
        }
        if (at.pattern().attribute() && at.field().isEmpty()) {
            return terms.attribute(token.text());
        }
        return at.field().flatMap(f -> {
            if (f.type() instanceof FieldType.NumberType n) {
                return Optional.of(Help.of(
                        token.text(),
                        n.dimension().label(),
                        List.of(
                                "Compared with: " + f.label() + ".",
                                "Units: " + String.join(", ", QuantityProposals.units(n.dimension())) + ".")));
            }
            return f.type() instanceof FieldType.TermType t ? terms.term(t.kind(), token.text()) : Optional.empty();
        });
    }

    private Optional<Help> argument(Situation.ArgumentPlace at, Token token, String text, int caret) {
        if (token.isVariable()) {
            return variable(token.text(), at.bounds());
        }
        if (token.kind() != Token.Kind.TEXT) {
            return word(token);
        }
        String id = token.text();
        if (id.contains("{") && caret > token.start() && caret < token.end()) {
            return placeholder(at, text, caret);
        }
        Argument argument = at.index() < at.verb().arguments().size()
                ? at.verb().arguments().get(at.index())
                : Argument.REASON;
        return switch (argument) {
            case TARGET -> terms.term("process", id);
            case ROLE ->
                java.util.Arrays.stream(Effect.Role.values())
                        .filter(r -> r.word().equals(id))
                        .findFirst()
                        .map(r -> Help.of(r.word(), "role", List.of("It may not stand " + r.phrase() + ".")));
            case CRITERION -> terms.criterion(id);
            case STAGE, STAGE_OF_LINE, PLACE ->
                id.equals(Effect.StageRef.MAIN)
                        ? Optional.of(Help.of(id, "stage", List.of("The main cleaning of the line.")))
                        : terms.term("stage", id);
            case PARAMETER -> terms.term("parameter", id);
            case HAZARD -> terms.term("hazard", id);
            case CONCLUSION -> terms.term("conclusion", id);
            case METHOD -> terms.term("test-method", id);
            case ATTRIBUTE -> attribute(id);
            case POINTS, BOUND, SUBJECT, REASON -> Optional.empty();
        };
    }

    private Optional<Help> attribute(String path) {
        int dot = path.indexOf('.');
        String type = dot < 0 ? path : path.substring(0, dot);
        String name = dot < 0 ? "" : path.substring(dot + 1);
        if (type.equals(FactTypes.ATTRIBUTE)) {
            return terms.attribute(name);
        }
        return Group.byFactType(type)
                .flatMap(g -> name.isEmpty()
                        ? Optional.of(Help.of(g.heading(), "list", List.of()))
                        : g.attribute(name).map(a -> Help.of(a.label(), "attribute", List.of(a.question()))));
    }

    private Optional<Help> placeholder(Situation.ArgumentPlace at, String text, int caret) {
        int from = caret;
        while (from > 0 && isOfPlace(text.charAt(from - 1))) {
            from--;
        }
        int to = caret;
        while (to < text.length() && isOfPlace(text.charAt(to))) {
            to++;
        }
        String path = text.substring(from, to);
        int start = from;
        int end = to;
        if (path.equals("$target")) {
            return Optional.of(
                    Help.of(path, "value", List.of("The name of each target.")).at(start, end));
        }
        return path.startsWith("$") ? variable(path, at.bounds()).map(h -> h.at(start, end)) : Optional.empty();
    }

    private static boolean isOfPlace(char c) {
        return Character.isLetterOrDigit(c) || PLACE.indexOf(c) >= 0;
    }

    private Optional<Help> variable(String path, List<Bound> bounds) {
        int dot = path.indexOf('.');
        String name = dot < 0 ? path : path.substring(0, dot);
        return bounds.stream().filter(b -> b.name().equals(name)).findFirst().map(b -> {
            if (dot >= 0) {
                String field = (b.field().isPresent() ? b.field().get().name() + "." : "") + path.substring(dot + 1);
                return b.type()
                        .field(field)
                        .map(f -> field(b.type(), f))
                        .orElse(Help.of(path, "value", List.of("No field of this name.")));
            }
            return b.field()
                    .map(f -> field(b.type(), f))
                    .orElse(Help.of(
                            name,
                            "fact of type " + b.type().name(),
                            List.of(Meanings.factType(b.type().name()))));
        });
    }
}
