package org.washwright.explain.mark;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.assessment.Answer;
import org.washwright.explain.why.Explanation;
import org.washwright.explain.why.Kind;
import org.washwright.explain.why.NothingThere;
import org.washwright.explain.why.Thing;
import org.washwright.explain.why.Why;

/**
 * "This reason is wrong": a statement of an answer and what a reader holds against it.
 *
 * @param at JSON pointer of the statement in the answer
 * @param said the statement
 * @param rules ids of the rules nearest behind it; empty when only figures and the catalogue are
 * @param because what is wrong with it, in the reader's words
 * @param task the task that was answered, as the request of the answer holds it
 * @param edition name of the edition
 * @param meaningHash hash of what the edition means
 */
public record Objection(
        String at, String said, List<String> rules, String because, Object task, String edition, String meaningHash) {

    /** Longest explanation, letters. */
    public static final int MOST_LETTERS = 2000;

    /** Keeps a copy; a file that names no rules holds none. */
    public Objection {
        rules = rules == null ? List.of() : List.copyOf(rules);
    }

    /**
     * An objection to what stands at a place of an answer.
     *
     * @throws NothingThere when nothing stands there that has reasons
     */
    public static Objection of(Answer answer, String at, String because) {
        Explanation explanation = new Why(answer).of(at);
        return new Objection(
                at,
                explanation.root().text(),
                rules(answer, explanation),
                because.strip(),
                answer.request().task(),
                answer.request().edition(),
                answer.request().meaningHash());
    }

    /** The rules that are reached first on the way down; those below them are only reasons of these. */
    private static List<String> rules(Answer answer, Explanation explanation) {
        Map<String, Thing> things = explanation.byPlace();
        Set<String> seen = new LinkedHashSet<>();
        List<Thing> layer = List.of(explanation.root());
        while (!layer.isEmpty()) {
            Set<String> rules = new LinkedHashSet<>();
            List<Thing> next = new ArrayList<>();
            for (Thing thing : layer) {
                if (thing.kind() == Kind.RULE || thing.kind() == Kind.OPEN_RULE) {
                    int firing = Integer.parseInt(thing.at().substring("/firings/".length()));
                    rules.add(answer.firings().get(firing).rule());
                }
                thing.on().stream()
                        .filter(on -> !on.endsWith(Why.ELSE) && seen.add(on))
                        .map(things::get)
                        .forEach(next::add);
            }
            if (!rules.isEmpty()) {
                return List.copyOf(rules);
            }
            layer = next;
        }
        return List.of();
    }
}
