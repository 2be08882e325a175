package org.washwright.rule.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.rule.Op;
import org.washwright.rule.syntax.ConstraintTokens.Kind;
import org.washwright.rule.syntax.ConstraintTokens.Token;

/**
 * Reads one constraint of a pattern: comparisons of a field with literals or bound values, joined by {@code &&} and
 * {@code ||}. Everything else is refused where it stands.
 */
public final class ConstraintParser {

    private static final int DEPTH = 8;

    private final List<Token> tokens;
    private final Place place;
    private final String text;
    private int at;

    private ConstraintParser(List<Token> tokens, Place place, String text) {
        this.tokens = tokens;
        this.place = place;
        this.text = text;
    }

    /** Reads the constraint; empty after an error. */
    public static Optional<SyntaxConstraint> parse(String text, Place place, Diagnostics diagnostics) {
        try {
            ConstraintParser parser = new ConstraintParser(ConstraintTokens.of(text), place, text);
            SyntaxConstraint constraint = parser.whole();
            return Optional.of(constraint);
        } catch (ConstraintTokens.Refused e) {
            diagnostics.add(Message.BAD_CONSTRAINT, shifted(place, text, e.offset()), text.strip(), e.getMessage());
            return Optional.empty();
        }
    }

    private static Place shifted(Place place, String text, int offset) {
        int line = place.line();
        int column = place.column();
        for (int i = 0; i < Math.min(offset, text.length()); i++) {
            if (text.charAt(i) == '\n') {
                line++;
                column = 1;
            } else {
                column++;
            }
        }
        return new Place(place.file(), line, column, place.pointer());
    }

    private SyntaxConstraint whole() {
        // Behind a variable there is at least the end.
        if (peek().kind() == Kind.VARIABLE && tokens.get(at + 1).isSign(":")) {
            String variable = next().text();
            next();
            int fieldAt = at;
            String field = path();
            SyntaxConstraint bind = new SyntaxConstraint.Bind(variable, field, place);
            if (peek().kind() == Kind.END) {
                return bind;
            }
            at = fieldAt;
            SyntaxConstraint rest = any(0);
            expectEnd();
            // Before an alternative it is not plain whether the binding belongs to the first half only: the checker
            // says so.
            return rest instanceof SyntaxConstraint.Any
                    ? new SyntaxConstraint.Any(List.of(bind, rest), place)
                    : new SyntaxConstraint.All(List.of(bind, rest), place);
        }
        SyntaxConstraint all = any(0);
        expectEnd();
        return all;
    }

    private void expectEnd() {
        if (peek().kind() != Kind.END) {
            throw refused("unexpected \"" + peek().text() + "\"");
        }
    }

    private SyntaxConstraint any(int depth) {
        if (depth > DEPTH) {
            throw refused("parentheses are nested more than " + DEPTH + " deep");
        }
        Place start = here();
        List<SyntaxConstraint> parts = new ArrayList<>(List.of(all(depth)));
        while (peek().isSign("||")) {
            next();
            parts.add(all(depth));
        }
        return parts.size() == 1 ? parts.get(0) : new SyntaxConstraint.Any(List.copyOf(parts), start);
    }

    private SyntaxConstraint all(int depth) {
        Place start = here();
        List<SyntaxConstraint> parts = new ArrayList<>(List.of(one(depth)));
        while (peek().isSign("&&")) {
            next();
            parts.add(one(depth));
        }
        return parts.size() == 1 ? parts.get(0) : new SyntaxConstraint.All(List.copyOf(parts), start);
    }

    private SyntaxConstraint one(int depth) {
        if (peek().isSign("(")) {
            next();
            SyntaxConstraint inner = any(depth + 1);
            sign(")");
            return inner;
        }
        Place start = here();
        String field = path();
        if (peek().isWord("not") || peek().isWord("in")) {
            boolean not = peek().isWord("not");
            if (not) {
                next();
            }
            if (!peek().isWord("in")) {
                throw refused("\"in\" is expected here");
            }
            next();
            return new SyntaxConstraint.Compare(field, not ? Op.NOT_IN : Op.IN, list(), start);
        }
        Op op = operator();
        return new SyntaxConstraint.Compare(field, op, List.of(operand()), start);
    }

    private List<SyntaxConstraint.Operand> list() {
        sign("(");
        List<SyntaxConstraint.Operand> operands = new ArrayList<>(List.of(literal()));
        while (peek().isSign(",")) {
            next();
            operands.add(literal());
        }
        sign(")");
        return List.copyOf(operands);
    }

    private SyntaxConstraint.Operand literal() {
        if (peek().kind() != Kind.TEXT) {
            throw refused("only texts in quotes stand in a list");
        }
        return new SyntaxConstraint.Operand.Quoted(next().text());
    }

    private SyntaxConstraint.Operand operand() {
        Token token = next();
        return switch (token.kind()) {
            case TEXT -> new SyntaxConstraint.Operand.Quoted(token.text());
            case NUMBER -> new SyntaxConstraint.Operand.Plain(token.text());
            case VARIABLE -> {
                String field = "";
                if (peek().isSign(".")) {
                    next();
                    field = path();
                }
                yield new SyntaxConstraint.Operand.Variable(token.text(), field);
            }
            case WORD -> {
                if (token.text().equals("true") || token.text().equals("false")) {
                    yield new SyntaxConstraint.Operand.Flag(token.text().equals("true"));
                }
                throw refused(token, "\"" + token.text() + "\" is no literal");
            }
            default -> throw refused(token, "a literal is expected, not \"" + token.text() + "\"");
        };
    }

    private Op operator() {
        Token token = next();
        for (Op op : Op.values()) {
            if (token.isSign(op.sign())) {
                return op;
            }
        }
        throw refused(token, token.isSign("(") ? "calls are refused" : "\"" + token.text() + "\" is no operator");
    }

    private String path() {
        Token first = next();
        if (first.kind() != Kind.WORD) {
            throw refused(first, "a field is expected, not \"" + first.text() + "\"");
        }
        StringBuilder path = new StringBuilder(first.text());
        while (peek().isSign(".")) {
            next();
            Token word = next();
            if (word.kind() != Kind.WORD) {
                throw refused(word, "a property is expected after the dot");
            }
            path.append('.').append(word.text());
        }
        return path.toString();
    }

    private void sign(String sign) {
        if (!peek().isSign(sign)) {
            throw refused("\"" + sign + "\" is expected here");
        }
        next();
    }

    private Token peek() {
        return tokens.get(at);
    }

    private Token next() {
        Token token = tokens.get(at);
        if (token.kind() != Kind.END) {
            at++;
        }
        return token;
    }

    private Place here() {
        return shifted(place, text, peek().offset());
    }

    private ConstraintTokens.Refused refused(String why) {
        return refused(peek(), why);
    }

    private static ConstraintTokens.Refused refused(Token at, String why) {
        return new ConstraintTokens.Refused(why, at.offset());
    }
}
