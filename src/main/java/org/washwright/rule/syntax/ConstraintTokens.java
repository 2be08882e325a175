package org.washwright.rule.syntax;

import java.util.ArrayList;
import java.util.List;

/** Cuts the text of a constraint into tokens; only plain ASCII words, quoted texts, numbers and a handful of signs pass. */
final class ConstraintTokens {

    private static final List<String> SIGNS =
            List.of("&&", "||", "==", "!=", "<=", ">=", "<", ">", "(", ")", ",", ".", ":");
    private static final int LONGEST = 4000;

    private ConstraintTokens() {}

    enum Kind {
        WORD,
        VARIABLE,
        TEXT,
        NUMBER,
        SIGN,
        END
    }

    record Token(Kind kind, String text, int offset) {

        boolean isSign(String sign) {
            return kind == Kind.SIGN && text.equals(sign);
        }

        boolean isWord(String word) {
            return kind == Kind.WORD && text.equals(word);
        }
    }

    /** Says why a text is refused and where in it. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final int offset;

        Refused(String why, int offset) {
            super(why, null, false, false);
            this.offset = offset;
        }

        int offset() {
            return offset;
        }
    }

    static List<Token> of(String text) {
        if (text.length() > LONGEST) {
            throw new Refused("it is longer than " + LONGEST + " characters", 0);
        }
        List<Token> tokens = new ArrayList<>();
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
                i++;
                continue;
            }
            Token token = token(text, i, c);
            tokens.add(token);
            i = token.kind() == Kind.TEXT
                    ? closing(text, i) + 1
                    : i + token.text().length();
        }
        tokens.add(new Token(Kind.END, "end", text.length()));
        return tokens;
    }

    private static Token token(String text, int i, char c) {
        if (c == '"') {
            return new Token(Kind.TEXT, unquote(text.substring(i + 1, closing(text, i))), i);
        }
        if (isLetter(c)) {
            return new Token(Kind.WORD, run(text, i, false), i);
        }
        if (c == '$' && i + 1 < text.length() && isLetter(text.charAt(i + 1))) {
            return new Token(Kind.VARIABLE, "$" + run(text, i + 1, false), i);
        }
        if (isDigit(c) || (c == '-' && i + 1 < text.length() && isDigit(text.charAt(i + 1)))) {
            return new Token(Kind.NUMBER, (c == '-' ? "-" : "") + run(text, c == '-' ? i + 1 : i, true), i);
        }
        for (String sign : SIGNS) {
            if (text.startsWith(sign, i)) {
                return new Token(Kind.SIGN, sign, i);
            }
        }
        throw new Refused("\"" + Character.toString(text.codePointAt(i)) + "\" has no place here", i);
    }

    private static String run(String text, int from, boolean number) {
        int end = from;
        while (end < text.length()
                && (isDigit(text.charAt(end))
                        || (number
                                ? text.charAt(end) == '.'
                                : isLetter(text.charAt(end)) || text.charAt(end) == '_'))) {
            end++;
        }
        return text.substring(from, end);
    }

    private static int closing(String text, int open) {
        for (int i = open + 1; i < text.length(); i++) {
            if (text.charAt(i) == '\\') {
                i++;
            } else if (text.charAt(i) == '"') {
                return i;
            } else if (text.charAt(i) == '\n') {
                break;
            }
        }
        throw new Refused("the quote is not closed", open);
    }

    private static String unquote(String raw) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c == '\\') {
                i++;
                if (i >= raw.length() || (raw.charAt(i) != '"' && raw.charAt(i) != '\\')) {
                    throw new Refused("only \\\" and \\\\ are read after a backslash", i);
                }
                c = raw.charAt(i);
            }
            out.append(c);
        }
        return out.toString();
    }

    private static boolean isLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
