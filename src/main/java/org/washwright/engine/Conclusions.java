package org.washwright.engine;

import java.util.ArrayList;
import java.util.List;
import org.washwright.rule.Effect;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.task.Value;

/** Makes the facts that a match concludes. */
public final class Conclusions {

    /** Start of the ids of concluded facts. */
    public static final String PREFIX = "conclusions/";

    private Conclusions() {}

    /** Facts that a match concludes; as sure as the match is certain. */
    public static List<Fact> of(Match match, FactTypes types) {
        FactType type = types.type(FactTypes.CONCLUSION).orElseThrow();
        List<Fact> out = new ArrayList<>();
        for (Effect effect : match.rule().effects()) {
            if (effect instanceof Effect.Conclude c) {
                String subject = c.subject()
                        .map(i -> match.facts().get(i).orElseThrow().id())
                        .orElse("");
                String id = PREFIX + c.conclusion() + (subject.isEmpty() ? "" : "/" + subject);
                Value about = subject.isEmpty() ? Value.NOT_APPLICABLE : new Value.Reference(subject);
                Origin origin = new Origin(
                        Origin.Kind.COMPUTED, "concluded", subject.isEmpty() ? List.of() : List.of(subject), "");
                out.add(new Fact(
                        id,
                        type,
                        c.conclusion(),
                        match.certain(),
                        List.of(Value.term(c.conclusion()), about),
                        List.of(origin, origin)));
            }
        }
        return out;
    }
}
