package org.washwright.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Follows the arguments of one verb from its bracket on, to know what is expected next. */
final class CallWalk {

    private final Verb verb;
    private final List<String> texts = new ArrayList<>(List.of(""));
    private String nested = "";
    private int nestedIndex;
    private int depth = 1;
    /** True behind a whole argument. */
    private boolean whole;

    CallWalk(Verb verb) {
        this.verb = verb;
    }

    /** Takes the next word or sign; true when it closed the call. */
    boolean take(Token token) {
        if (token.isSign("(")) {
            depth++;
            nestedIndex = 0;
            whole = false;
        } else if (token.isSign(")")) {
            depth--;
            nested = depth <= 1 ? "" : nested;
            whole = true;
        } else if (token.isSign(",")) {
            whole = false;
            if (depth > 1) {
                nestedIndex++;
            } else {
                texts.add("");
            }
        } else if (depth == 1 && token.kind() == Token.Kind.WORD && !token.isVariable()) {
            nested = token.text();
            whole = false;
        } else {
            whole = true;
            if (depth == 1 && token.kind() == Token.Kind.TEXT) {
                texts.set(texts.size() - 1, token.text());
            }
        }
        return depth == 0;
    }

    /** What is expected next. */
    Situation expected(List<Bound> bounds, Set<String> concluded) {
        int index = texts.size() - 1;
        if (whole) {
            return new Situation.Joint(
                    depth > 1
                            ? List.of(nested.equals("between") && nestedIndex == 0 ? ", " : ")")
                            : List.of(reasonGiven(index) ? ");" : ", "));
        }
        if (depth == 1 && !nested.isEmpty()) {
            return new Situation.Joint(List.of("("));
        }
        return new Situation.ArgumentPlace(verb, index, List.copyOf(texts), nested, bounds, concluded);
    }

    /** True when the argument that was just ended is the reason: the last one, or a sentence where one may be left out. */
    private boolean reasonGiven(int index) {
        return index >= verb.arguments().size() - 1
                || (verb.isOptional(index) && texts.get(index).strip().contains(" "));
    }
}
