package org.washwright.assist;

import java.util.ArrayList;
import java.util.List;

/** Cuts rule text into words and signs, whatever is wrong with it. A text in quotes ends with its line at the latest. */
final class RuleTokens {

    private static final List<String> LONG_SIGNS = List.of("==", "!=", "<=", ">=", "&&", "||");

    private final String text;
    private final List<Token> tokens = new ArrayList<>();
    private int at;
    private boolean first = true;

    private RuleTokens(String text) {
        this.text = text;
    }

    static List<Token> of(String text) {
        RuleTokens cutter = new RuleTokens(text);
        while (cutter.at < text.length()) {
            cutter.next();
        }
        return cutter.tokens;
    }

    private void next() {
        char c = text.charAt(at);
        if (c == '\n') {
            first = true;
            at++;
        } else if (Character.isWhitespace(c)) {
            at++;
        } else if (text.startsWith("//", at)) {
            int end = text.indexOf('\n', at);
            add(Token.Kind.COMMENT, end < 0 ? text.length() : end, 0, false);
        } else if (text.startsWith("/*", at)) {
            int end = text.indexOf("*/", at + 2);
            add(Token.Kind.COMMENT, end < 0 ? text.length() : end + 2, 0, end >= 0);
        } else if (c == '"') {
            quoted();
        } else if (Character.isDigit(c)) {
            add(Token.Kind.NUMBER, end(at, true), 0, true);
        } else if (c == '@') {
            add(Token.Kind.ANNOTATION, end(at + 1, false), 1, true);
        } else if (isLetter(c)) {
            add(Token.Kind.WORD, end(at, true), 0, true);
        } else {
            boolean two = LONG_SIGNS.stream().anyMatch(s -> text.startsWith(s, at));
            add(Token.Kind.SIGN, at + (two ? 2 : 1), 0, true);
        }
    }

    private static boolean isLetter(char c) {
        return Character.isLetter(c) || c == '_' || c == '$';
    }

    /** The end of a word; ids have hyphens, and nothing is ever subtracted. */
    private int end(int from, boolean dots) {
        int i = from;
        while (i < text.length()
                && (isLetter(text.charAt(i))
                        || Character.isDigit(text.charAt(i))
                        || (dots && ".-".indexOf(text.charAt(i)) >= 0))) {
            i++;
        }
        return i;
    }

    private void quoted() {
        int i = at + 1;
        while (i < text.length() && text.charAt(i) != '"' && text.charAt(i) != '\n') {
            i += text.charAt(i) == '\\' ? 2 : 1;
        }
        boolean closed = i < text.length() && text.charAt(i) == '"';
        int end = Math.min(i, text.length());
        tokens.add(new Token(
                Token.Kind.TEXT,
                at,
                closed ? end + 1 : end,
                text.substring(at + 1, Math.max(at + 1, end)),
                closed,
                first));
        first = false;
        at = closed ? end + 1 : end;
    }

    private void add(Token.Kind kind, int end, int skip, boolean closed) {
        tokens.add(new Token(kind, at, end, text.substring(Math.min(at + skip, end), end), closed, first));
        first = first && kind == Token.Kind.COMMENT;
        at = end;
    }
}
