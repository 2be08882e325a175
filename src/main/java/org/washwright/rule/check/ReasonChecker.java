package org.washwright.rule.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.rule.Reason;

/** Reads the sentence of a consequence and resolves its places for values. */
final class ReasonChecker {

    private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)}");
    private static final Pattern VARIABLE = Pattern.compile("(\\$[A-Za-z][A-Za-z0-9_]*)(?:\\.([A-Za-z0-9_.]+))?");
    private static final int LONGEST = 500;

    private final Diagnostics diagnostics;
    private final Scope scope;

    ReasonChecker(Diagnostics diagnostics, Scope scope) {
        this.diagnostics = diagnostics;
        this.scope = scope;
    }

    /** Reads a reason; empty after an error. */
    Optional<Reason> check(String text, String verb, Place place) {
        if (text.isBlank()) {
            diagnostics.add(Message.NO_REASON, place, verb);
            return Optional.empty();
        }
        if (text.length() > LONGEST) {
            diagnostics.add(Message.TEXT_TOO_LONG, place, text, LONGEST);
            return Optional.empty();
        }
        List<Reason.Part> parts = new ArrayList<>();
        Matcher matcher = PLACE.matcher(text);
        String rest = matcher.replaceAll("");
        if (rest.indexOf('{') >= 0 || rest.indexOf('}') >= 0) {
            diagnostics.add(Message.BAD_PLACEHOLDER, place, text, "Close every brace that is opened, and nest none");
            return Optional.empty();
        }
        matcher.reset();
        int from = 0;
        while (matcher.find()) {
            words(text.substring(from, matcher.start()), parts);
            Optional<Reason.Part> part = part(matcher.group(1), place);
            if (part.isEmpty()) {
                return Optional.empty();
            }
            parts.add(part.get());
            from = matcher.end();
        }
        words(text.substring(from), parts);
        return Optional.of(new Reason(parts));
    }

    private static void words(String text, List<Reason.Part> parts) {
        if (!text.isEmpty()) {
            parts.add(new Reason.Part.Words(text));
        }
    }

    private Optional<Reason.Part> part(String inside, Place place) {
        if (inside.equals("$target")) {
            return Optional.of(new Reason.Part.TargetName());
        }
        Matcher matcher = VARIABLE.matcher(inside);
        if (matcher.matches()) {
            String name = matcher.group(1);
            String field = matcher.group(2) == null ? "" : matcher.group(2);
            Optional<Scope.Bound> whole = scope.get(name);
            if (whole.isPresent() && field.isEmpty() && whole.get().field().isEmpty()) {
                return Optional.of(new Reason.Part.NameOf(whole.get().pattern()));
            }
            if (whole.isPresent() && field.equals("name") && whole.get().field().isEmpty()) {
                return Optional.of(new Reason.Part.NameOf(whole.get().pattern()));
            }
            Optional<Scope.Bound> bound = scope.field(name, field);
            if (bound.isPresent()) {
                return Optional.of(new Reason.Part.ValueOf(
                        bound.get().pattern(), bound.get().field().orElseThrow()));
            }
        }
        String names = scope.names().isEmpty()
                ? "Bind a pattern first, for instance $m : Material(...)"
                : "Bound here: " + String.join(", ", scope.names()) + "; write for instance {"
                        + scope.names().iterator().next() + ".field}";
        diagnostics.add(Message.BAD_PLACEHOLDER, place, "{" + inside + "}", names);
        return Optional.empty();
    }
}
