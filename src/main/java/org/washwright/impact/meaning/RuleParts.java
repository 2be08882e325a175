package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.washwright.document.Place;
import org.washwright.rule.Basis;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.Pattern;
import org.washwright.rule.Reason;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;
import org.washwright.rule.RuleText;
import org.washwright.rule.Sign;

/**
 * A rule taken apart into conditions and effects. What a part means is told by its canonical text, so that the parts of two
 * rules are the same exactly when the meaning hash finds them the same.
 */
final class RuleParts {

    private static final Reason NO_REASON = new Reason(List.of());

    private final Edition edition;
    private final Rule rule;
    private final RuleSentence sentence;

    RuleParts(Edition edition, Rule rule) {
        this.edition = edition;
        this.rule = rule;
        this.sentence = RuleSentence.of(edition, rule);
    }

    /**
     * One part.
     *
     * @param key what it means
     * @param about what it is about: parts about the same are told as one that changed
     * @param words in words
     */
    record Part(String key, String about, String words) {}

    /**
     * One pattern: its parts, or itself where it can't be taken apart.
     *
     * @param head which fact it matches
     * @param whole all of it in words
     */
    record Clause(String head, String whole, List<Part> parts) {}

    /** An effect with its reason. */
    record Said(Part part, String reasonKey, String reason) {}

    /** What the rule does, without any word for readers: equal when two rules do the same. */
    static String working(Rule rule) {
        return body(bare(
                rule.patterns(), rule.effects().stream().map(RuleParts::unsaid).toList()));
    }

    /** Everything but the id: equal when two rules differ in that alone. */
    static String nameless(Rule rule) {
        return RuleText.canonical(new Rule(
                "",
                rule.title(),
                rule.basis(),
                rule.sources(),
                rule.since(),
                rule.note(),
                rule.place(),
                rule.patterns(),
                rule.effects()));
    }

    List<Clause> clauses() {
        List<Clause> out = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < rule.patterns().size(); i++) {
            Pattern p = rule.patterns().get(i);
            String bare = line(i, Condition.ALWAYS);
            String head = bare + " " + seen.merge(bare, 1, Integer::sum);
            String whole = sentence.when().get(i);
            List<Part> parts = new ArrayList<>();
            if (p.sign() == Sign.POSITIVE) {
                for (Condition part : parts(p.condition())) {
                    parts.add(part(i, head, part));
                }
            } else {
                parts.add(new Part(line(i, p.condition()), head, whole));
            }
            out.add(new Clause(head, whole, parts));
        }
        return out;
    }

    private static List<Condition> parts(Condition condition) {
        return condition instanceof Condition.All all ? all.parts() : List.of(condition);
    }

    private Part part(int pattern, String head, Condition part) {
        String field = part.tests().findFirst().map(t -> t.field().name()).orElse("");
        Condition alone = new Condition.All(List.of(part));
        String words = part instanceof Condition.Test t
                ? RuleSentence.clause(edition, rule, pattern, List.of(t))
                : RuleSentence.of(edition, with(pattern, alone)).when().get(pattern);
        return new Part(line(pattern, alone), head + " " + field, words);
    }

    List<Said> effects() {
        List<Said> out = new ArrayList<>();
        for (int i = 0; i < rule.effects().size(); i++) {
            Effect effect = rule.effects().get(i);
            RuleSentence.Said said = sentence.then().get(i);
            String full = body(bare(rule.patterns(), List.of(effect)));
            String mute = body(bare(rule.patterns(), List.of(unsaid(effect))));
            int then = mute.indexOf("\nthen\n");
            out.add(new Said(
                    new Part(mute.substring(then), effect.verb(), said.what()), full.substring(then), said.because()));
        }
        return out;
    }

    private Rule with(int pattern, Condition condition) {
        List<Pattern> patterns = new ArrayList<>(rule.patterns());
        Pattern old = patterns.get(pattern);
        patterns.set(pattern, new Pattern(old.sign(), old.type(), condition));
        return new Rule(
                rule.id(),
                rule.title(),
                rule.basis(),
                rule.sources(),
                rule.since(),
                rule.note(),
                rule.place(),
                patterns,
                rule.effects());
    }

    /** The canonical line of a pattern with this condition. */
    private String line(int pattern, Condition condition) {
        String text = body(bare(with(pattern, condition).patterns(), List.of()));
        return text.split("\n", -1)[1 + pattern].strip();
    }

    private static Rule bare(List<Pattern> patterns, List<Effect> effects) {
        return new Rule("", "", Basis.COMMON_PRACTICE, List.of(), "", "", Place.ofFile(""), patterns, effects);
    }

    /** The canonical text from the conditions on. */
    private static String body(Rule rule) {
        String text = RuleText.canonical(rule);
        return text.substring(text.indexOf("\nwhen\n") + 1);
    }

    private static Effect unsaid(Effect e) {
        if (e instanceof Effect.Conclude c) {
            return new Effect.Conclude(c.conclusion(), c.subject(), NO_REASON);
        }
        if (e instanceof Effect.RuleOut r) {
            return new Effect.RuleOut(r.target(), r.role(), NO_REASON);
        }
        if (e instanceof Effect.Score s) {
            return new Effect.Score(s.support(), s.target(), s.criterion(), s.points(), NO_REASON);
        }
        if (e instanceof Effect.Require r) {
            return new Effect.Require(r.target(), r.stage(), r.after(), r.before(), NO_REASON);
        }
        if (e instanceof Effect.Limit l) {
            return new Effect.Limit(l.target(), l.stage(), l.parameter(), l.dimension(), l.max(), l.bound(), NO_REASON);
        }
        if (e instanceof Effect.Caution c) {
            return new Effect.Caution(c.hazard(), c.target(), NO_REASON);
        }
        return e instanceof Effect.Ask a
                ? new Effect.Ask(a.type(), a.attribute(), NO_REASON)
                : new Effect.Verify(((Effect.Verify) e).method(), NO_REASON);
    }
}
