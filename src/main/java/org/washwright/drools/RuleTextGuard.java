package org.washwright.drools;

import org.washwright.document.Diagnostics;
import org.washwright.document.HiddenCharacters;
import org.washwright.document.Message;
import org.washwright.document.SourceText;

/**
 * Refuses rule text that would be endless, bottomless or misleading to a parser, before a parser sees it. Parsers of Drools
 * and Java recurse with every bracket, sign and word that nests, and read some brackets twice at each level; so the words
 * and signs of one rule and its nesting are bounded, and texts and comments have to end where both parsers see their end.
 */
final class RuleTextGuard {

    /** Deepest nesting of brackets: a call in a list in the deepest condition, and a little. */
    static final int MAX_NESTING = 14;

    /** Most words and signs of one rule, many times what the longest needs. */
    static final int MAX_TOKENS = 2000;

    private final SourceText source;
    private final String text;
    private final Diagnostics diagnostics;
    private int at;
    private int depth;
    private int tokens;
    private String last = "";
    private String beforeLast = "";

    private RuleTextGuard(SourceText source, Diagnostics diagnostics) {
        this.source = source;
        this.text = source.text();
        this.diagnostics = diagnostics;
    }

    /** True when the text may be parsed; else the reason is in {@code diagnostics}. */
    static boolean passes(SourceText source, Diagnostics diagnostics) {
        if (source.text().length() > DrlReader.MAX_LENGTH) {
            diagnostics.add(
                    Message.TOO_LARGE,
                    source.at(DrlReader.MAX_LENGTH),
                    source.text().length() + " characters",
                    DrlReader.MAX_LENGTH + " characters");
            return false;
        }
        int escape = source.text().indexOf("\\u");
        if (escape >= 0) {
            // Java reads these before anything else, even in comments.
            diagnostics.add(Message.UNICODE_ESCAPE, source.at(escape), "\\u");
            return false;
        }
        return HiddenCharacters.none(source.file(), source.text(), diagnostics)
                && new RuleTextGuard(source, diagnostics).walk();
    }

    private boolean walk() {
        while (at < text.length()) {
            char c = text.charAt(at);
            if (Character.isWhitespace(c)) {
                at++;
            } else if (text.startsWith("//", at)) {
                int end = text.indexOf('\n', at);
                at = end < 0 ? text.length() : end;
            } else if (text.startsWith("/*", at)) {
                int end = text.indexOf("*/", at + 2);
                if (end < 0) {
                    return syntax("the comment is not closed");
                }
                at = end + 2;
            } else if (!token(c)) {
                return false;
            }
        }
        return true;
    }

    private boolean token(char c) {
        int start = at;
        if (c == '"') {
            if (!quoted()) {
                return false;
            }
        } else if (c == '\'') {
            return refused("a text in single quotes", "Write it in double quotes");
        } else if (c == '\\') {
            return refused("a backslash outside of a text", "Leave it out");
        } else if (Character.isJavaIdentifierPart(c)) {
            while (at < text.length() && Character.isJavaIdentifierPart(text.charAt(at))) {
                at++;
            }
        } else {
            at++;
        }
        return nests(c, start) && counts(c == '"' ? "\"" : text.substring(start, at), start);
    }

    private boolean quoted() {
        for (int i = at + 1; i < text.length() && text.charAt(i) != '\n'; i++) {
            char c = text.charAt(i);
            if (c == '"') {
                at = i + 1;
                return true;
            }
            if (c == '\\') {
                i++;
                if (i >= text.length() || (text.charAt(i) != '"' && text.charAt(i) != '\\')) {
                    at = i - 1;
                    return refused(
                            "this use of a backslash",
                            "Only \\\" and \\\\ are read; write other characters themselves");
                }
            }
        }
        return syntax("the quote is not closed on its line");
    }

    private boolean nests(char c, int start) {
        if (c == '(' || c == '[' || c == '{') {
            depth++;
        } else if (c == ')' || c == ']' || c == '}') {
            depth = Math.max(0, depth - 1);
        }
        if (depth > MAX_NESTING) {
            diagnostics.add(Message.TOO_DEEP, source.at(start), String.valueOf(c), MAX_NESTING);
            return false;
        }
        return true;
    }

    private boolean counts(String token, int start) {
        // Two words with nothing between them end every chain that a parser could be led down, so counting starts anew.
        boolean ended = last.equals("end") || (last.equals(";") && beforeLast.equals("end"));
        tokens = token.equals("rule") && ended ? 1 : tokens + 1;
        beforeLast = last;
        last = token;
        if (tokens > MAX_TOKENS) {
            diagnostics.add(
                    Message.TOO_LARGE,
                    source.at(start),
                    tokens + " words and signs",
                    MAX_TOKENS + " words and signs of one rule");
            return false;
        }
        return true;
    }

    private boolean syntax(String why) {
        diagnostics.add(
                Message.DRL_SYNTAX, source.at(at), source.line(source.at(at).line()), why);
        return false;
    }

    private boolean refused(String what, String advice) {
        diagnostics.add(
                Message.REFUSED, source.at(at), source.line(source.at(at).line()), what, advice);
        return false;
    }
}
