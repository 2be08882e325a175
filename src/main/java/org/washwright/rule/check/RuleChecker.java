package org.washwright.rule.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.rule.Basis;
import org.washwright.rule.Effect;
import org.washwright.rule.Levels;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.syntax.SyntaxCall;
import org.washwright.rule.syntax.SyntaxPattern;
import org.washwright.rule.syntax.SyntaxRule;

/** Checks the rules of an edition, each alone and all together. */
public final class RuleChecker {

    /** Most ways in which the unjoined patterns of a rule may meet. */
    public static final long MAX_COMBINATIONS = 100_000;

    /** Most rules of an edition; every rule may wait for every other. */
    private static final int MAX_RULES = 5000;

    private static final Set<String> ANNOTATIONS = Set.of("id", "title", "basis", "source", "since", "note");
    private static final java.util.regex.Pattern ID = java.util.regex.Pattern.compile("[A-Za-z][A-Za-z0-9-]{0,59}");

    private final Terms terms;
    private final Diagnostics diagnostics;

    /** A checker for rules that may name these terms. */
    public RuleChecker(Terms terms, Diagnostics diagnostics) {
        this.terms = terms;
        this.diagnostics = diagnostics;
    }

    /**
     * The rules of an edition that are sound.
     *
     * @param rules in order of their ids
     * @param levels how they wait for each other
     */
    public record Sound(List<Rule> rules, Levels levels) {

        /** No rules at all. */
        public static final Sound NONE = new Sound(List.of(), Levels.of(List.of()));
    }

    /** The rules that are sound, in order of their ids. */
    public List<Rule> check(List<SyntaxRule> written) {
        return fewEnough(written)
                ? together(written.stream().map(this::alone).toList()).rules()
                : List.of();
    }

    /** Whether these are not too many for one edition. */
    public boolean fewEnough(List<SyntaxRule> written) {
        if (written.size() <= MAX_RULES) {
            return true;
        }
        diagnostics.add(
                Message.TOO_LARGE, written.get(MAX_RULES).place(), written.size() + " rules", MAX_RULES + " rules");
        return false;
    }

    /** Checks a rule as if there were no other. What is found hangs on the rule and the terms alone. */
    public CheckedRule alone(SyntaxRule syntax) {
        Diagnostics own = new Diagnostics();
        return new CheckedRule(new RuleChecker(terms, own).rule(syntax), own);
    }

    /** Checks rules against each other that were checked alone before. */
    public Sound together(List<CheckedRule> checked) {
        Map<String, Place> ids = new HashMap<>();
        List<Rule> rules = new ArrayList<>();
        for (CheckedRule alone : checked) {
            diagnostics.addAll(alone.found());
            alone.rule().ifPresent(r -> {
                Place other = ids.putIfAbsent(r.id(), r.place());
                if (other == null) {
                    rules.add(r);
                } else {
                    diagnostics.add(Message.DUPLICATE_ID, r.place(), r.id(), "rule id", other);
                }
            });
        }
        Levels levels = together(rules, Levels.of(rules));
        return new Sound(
                rules.stream().sorted(java.util.Comparator.comparing(Rule::id)).toList(), levels);
    }

    private Levels together(List<Rule> rules, Levels levels) {
        if (!levels.circle().isEmpty()) {
            Place place = rules.stream()
                    .filter(r -> r.id().equals(levels.circle().get(0)))
                    .findFirst()
                    .map(Rule::place)
                    .orElseThrow();
            diagnostics.add(Message.RULE_CYCLE, place, String.join(", ", levels.circle()));
        }
        Set<String> concluded = new java.util.TreeSet<>();
        rules.forEach(r -> concluded.addAll(Levels.concluded(r)));
        for (Rule r : rules) {
            for (String c : Levels.matched(r, Set.of())) {
                if (!concluded.contains(c)) {
                    diagnostics.add(Message.CONCLUSION_NEVER, r.place(), r.id(), c);
                }
            }
        }
        return levels;
    }

    private Optional<Rule> rule(SyntaxRule syntax) {
        String id = annotation(syntax, "id");
        String label = id.isEmpty() ? syntax.name() : id;
        boolean sound = header(syntax, id, label);
        List<Rule.Cite> sources = sources(syntax);
        Optional<Basis> basis = Basis.of(annotation(syntax, "basis"));
        if (basis.isEmpty()) {
            sound = false;
            missingOrBad(syntax, label);
        } else if (basis.get() != Basis.COMMON_PRACTICE && sources.isEmpty()) {
            sound = false;
            diagnostics.add(Message.NO_SOURCE, syntax.place(), label);
        }
        Scope scope = new Scope();
        List<Pattern> patterns = patterns(syntax, label, scope);
        List<Effect> effects = effects(syntax, scope);
        sound &= patterns.size() == syntax.patterns().size()
                && effects.size() == syntax.calls().size();
        if (!sound || patterns.isEmpty() || effects.isEmpty()) {
            return Optional.empty();
        }
        String title = annotation(syntax, "title").isEmpty() ? syntax.name() : annotation(syntax, "title");
        Rule rule = new Rule(
                id,
                title,
                basis.orElseThrow(),
                sources,
                annotation(syntax, "since"),
                annotation(syntax, "note"),
                syntax.place(),
                patterns,
                effects);
        return bounded(rule) ? Optional.of(rule) : Optional.empty();
    }

    private boolean header(SyntaxRule syntax, String id, String label) {
        boolean sound = true;
        for (Map.Entry<String, SyntaxRule.Text> a : syntax.annotations().entrySet()) {
            if (!ANNOTATIONS.contains(a.getKey())) {
                sound = false;
                diagnostics.add(
                        Message.UNKNOWN_ANNOTATION,
                        a.getValue().place(),
                        a.getKey(),
                        Similar.advice(a.getKey(), ANNOTATIONS));
            }
        }
        if (id.isEmpty()) {
            sound = false;
            diagnostics.add(Message.MISSING_ANNOTATION, syntax.place(), label, "id", "@id(\"...\")");
        } else if (!ID.matcher(id).matches()) {
            sound = false;
            diagnostics.add(Message.BAD_ID, syntax.annotations().get("id").place(), id);
        }
        return sound;
    }

    private void missingOrBad(SyntaxRule syntax, String label) {
        String basis = annotation(syntax, "basis");
        if (basis.isEmpty()) {
            diagnostics.add(
                    Message.MISSING_ANNOTATION, syntax.place(), label, "basis", "@basis(\"handbook\") or the like");
        } else {
            diagnostics.add(Message.BAD_BASIS, syntax.annotations().get("basis").place(), basis);
        }
    }

    private static String annotation(SyntaxRule syntax, String name) {
        SyntaxRule.Text text = syntax.annotations().get(name);
        return text == null ? "" : text.text().strip();
    }

    private List<Rule.Cite> sources(SyntaxRule syntax) {
        String text = annotation(syntax, "source");
        return text.isEmpty()
                ? List.of()
                : Citations.read(text, terms, syntax.annotations().get("source").place(), diagnostics);
    }

    private List<Pattern> patterns(SyntaxRule syntax, String label, Scope scope) {
        if (syntax.patterns().isEmpty()) {
            diagnostics.add(Message.NO_CONDITION, syntax.place(), label);
        }
        if (syntax.patterns().size() > Rule.MAX_PATTERNS) {
            diagnostics.add(Message.TOO_MANY_PATTERNS, syntax.place(), label, Rule.MAX_PATTERNS);
            return List.of();
        }
        PatternChecker checker = new PatternChecker(terms, diagnostics, scope);
        List<Pattern> patterns = new ArrayList<>();
        int index = 0;
        for (SyntaxPattern p : syntax.patterns()) {
            checker.check(p, index++).ifPresent(patterns::add);
        }
        return patterns;
    }

    private List<Effect> effects(SyntaxRule syntax, Scope scope) {
        if (syntax.calls().isEmpty()) {
            diagnostics.add(Message.NO_CONSEQUENCE, syntax.place(), syntax.name());
        }
        EffectChecker checker = new EffectChecker(terms, diagnostics, scope);
        List<Effect> effects = new ArrayList<>();
        for (SyntaxCall call : syntax.calls()) {
            checker.check(call).ifPresent(effects::add);
        }
        return effects;
    }

    private boolean bounded(Rule rule) {
        long ways = Ways.of(rule);
        if (ways > MAX_COMBINATIONS) {
            diagnostics.add(Message.JOIN_TOO_LARGE, rule.place(), rule.id(), ways, MAX_COMBINATIONS);
            return false;
        }
        if (rule.isLineRule() && !Levels.concluded(rule).isEmpty()) {
            diagnostics.add(Message.LINE_CONCLUDES, rule.place(), rule.id());
            return false;
        }
        return true;
    }
}
