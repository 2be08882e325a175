package org.washwright.assist;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;

/**
 * Follows rule text up to a caret, to know what is expected there. Broken rules before it do no harm: {@code rule},
 * {@code when}, {@code then} and {@code end} at the start of a line begin anew whatever was left open.
 */
final class SituationFinder {

    private enum Section {
        OUTSIDE,
        NAME,
        HEAD,
        WHEN,
        THEN
    }

    private static final Set<String> STARTS = Set.of("rule", "when", "then", "end");

    private final FactTypes types;
    private Section section = Section.OUTSIDE;
    private final List<Bound> bounds = new ArrayList<>();
    private final Set<String> annotations = new HashSet<>();
    private final Set<String> concluded = new HashSet<>();
    private String annotation = "";
    private String variable = "";
    private String type = "";
    private boolean signed;
    private int patterns;
    private boolean conclusionPattern;
    private Optional<PatternWalk> pattern = Optional.empty();
    private boolean spoken;
    private String verb = "";
    private Optional<CallWalk> call = Optional.empty();

    SituationFinder(FactTypes types) {
        this.types = types;
    }

    /** What is expected behind these tokens. */
    Situation after(List<Token> before) {
        before.stream().filter(t -> t.kind() != Token.Kind.COMMENT).forEach(this::take);
        return switch (section) {
            case OUTSIDE -> new Situation.Outside();
            case NAME -> new Situation.Free();
            case HEAD ->
                annotation.isEmpty()
                        ? new Situation.Head(Set.copyOf(annotations))
                        : new Situation.AnnotationText(annotation);
            case WHEN ->
                pattern.isPresent()
                        ? pattern.get().expected(List.copyOf(bounds))
                        : !type.isEmpty()
                                ? new Situation.Joint(List.of("("))
                                : !variable.isEmpty() && !named() && !signed
                                        ? new Situation.Joint(List.of(" : "))
                                        : new Situation.PatternStart(patterns, signed, named(), List.copyOf(bounds));
            case THEN ->
                call.isPresent()
                        ? call.get().expected(List.copyOf(bounds), Set.copyOf(concluded))
                        : !verb.isEmpty()
                                ? new Situation.Joint(List.of(verb.equals(";") ? ";" : "("))
                                : new Situation.ConsequenceStart(spoken, List.copyOf(bounds));
        };
    }

    private boolean named() {
        return variable.equals(":");
    }

    private String boundTo = "";

    private void take(Token token) {
        if (token.firstOnLine() && STARTS.contains(token.text()) && token.kind() == Token.Kind.WORD) {
            begin(token.text());
            return;
        }
        switch (section) {
            case OUTSIDE -> {
                if (token.isWord("rule")) {
                    begin("rule");
                }
            }
            case NAME -> section = Section.HEAD;
            case HEAD -> head(token);
            case WHEN -> when(token);
            case THEN -> then(token);
        }
    }

    private void begin(String word) {
        pattern = Optional.empty();
        call = Optional.empty();
        variable = "";
        boundTo = "";
        type = "";
        verb = "";
        signed = false;
        annotation = "";
        if (word.equals("rule")) {
            bounds.clear();
            annotations.clear();
            concluded.clear();
            patterns = 0;
            spoken = false;
        }
        section = switch (word) {
            case "rule" -> Section.NAME;
            case "when" -> Section.WHEN;
            case "then" -> Section.THEN;
            default -> Section.OUTSIDE;
        };
    }

    private void head(Token token) {
        if (token.kind() == Token.Kind.ANNOTATION) {
            annotation = token.text();
            annotations.add(annotation);
        } else if (token.isSign(")")) {
            annotation = "";
        } else if (token.isWord("when") || token.isWord("then")) {
            begin(token.text());
        }
    }

    private void when(Token token) {
        if (pattern.isPresent()) {
            if (conclusionPattern && token.kind() == Token.Kind.TEXT) {
                concluded.add(token.text());
            }
            if (pattern.get().take(token)) {
                finish(pattern.get());
            }
        } else if (token.isWord("then") || token.isWord("end")) {
            begin(token.text());
        } else if (token.isWord("not") || token.isWord("exists")) {
            signed = true;
        } else if (token.isVariable()) {
            variable = token.text();
            boundTo = token.text();
        } else if (token.isSign(":")) {
            variable = ":";
        } else if (token.isSign("(")) {
            conclusionPattern = type.equals(FactTypes.CONCLUSION);
            pattern = Optional.of(new PatternWalk(type, types));
        } else if (token.kind() == Token.Kind.WORD) {
            type = token.text();
        }
    }

    private void finish(PatternWalk done) {
        Optional<FactType> found = done.type();
        if (!signed) {
            found.filter(t -> !boundTo.isEmpty()).ifPresent(t -> bounds.add(new Bound(boundTo, t, Optional.empty())));
            bounds.addAll(done.inside());
            found.filter(t -> boundTo.isEmpty() && t.name().equals(FactTypes.STAGE))
                    .ifPresent(t -> bounds.add(new Bound("", t, Optional.empty())));
        }
        patterns++;
        pattern = Optional.empty();
        variable = "";
        boundTo = "";
        type = "";
        signed = false;
    }

    private void then(Token token) {
        if (call.isPresent()) {
            if (call.get().take(token)) {
                call = Optional.empty();
                verb = ";";
                spoken = true;
            }
        } else if (token.isSign(";")) {
            verb = "";
        } else if (token.isWord("end")) {
            begin("end");
        } else if (token.isSign("(")) {
            call = Verb.of(verb).map(CallWalk::new);
        } else if (token.kind() == Token.Kind.WORD) {
            verb = token.text();
        }
    }
}
