package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.rule.Effect;
import org.washwright.rule.Reason;
import org.washwright.rule.Rule;

/** Compares what rules say. */
final class Effects {

    private Effects() {}

    /** Whom an effect is about; empty when it is about the task. */
    static Optional<Effect.Target> target(Effect effect) {
        if (effect instanceof Effect.RuleOut r) {
            return Optional.of(r.target());
        }
        if (effect instanceof Effect.Score s) {
            return Optional.of(s.target());
        }
        if (effect instanceof Effect.Require r) {
            return Optional.of(r.target());
        }
        if (effect instanceof Effect.Limit l) {
            return Optional.of(l.target());
        }
        return effect instanceof Effect.Caution c ? c.target() : Optional.empty();
    }

    /** Patterns whose facts an effect is about, reasons aside. */
    static List<Integer> patterns(Effect effect) {
        List<Integer> out = new ArrayList<>();
        target(effect).ifPresent(t -> {
            if (t instanceof Effect.Target.Matched m) {
                out.add(m.pattern());
            }
        });
        if (effect instanceof Effect.Conclude c) {
            c.subject().ifPresent(out::add);
        }
        if (effect instanceof Effect.Require r) {
            r.after().ifPresent(s -> matched(s, out));
            r.before().ifPresent(s -> matched(s, out));
        }
        if (effect instanceof Effect.Limit l) {
            matched(l.stage(), out);
            if (l.bound() instanceof Effect.Bound.FieldOf f) {
                out.add(f.pattern());
            }
        }
        return out;
    }

    private static void matched(Effect.StageRef ref, List<Integer> out) {
        if (ref instanceof Effect.StageRef.Matched m) {
            out.add(m.pattern());
        }
    }

    /**
     * True when the wider rule's effect leaves nothing for the narrower rule's to say.
     *
     * @param map pattern of the narrower rule for each pattern of the wider one
     * @param sameWords whether a caution has to give the same reason: every caution is shown with its reason, so that of two
     *     on unlike conditions another reason says something more
     */
    static boolean covers(
            Implication implication, Rule narrow, Effect n, Rule wide, Effect w, List<Integer> map, boolean sameWords) {
        if (!n.getClass().equals(w.getClass())) {
            return false;
        }
        Optional<Effect.Target> nt = target(n);
        Optional<Effect.Target> wt = target(w);
        boolean reached = nt.isEmpty()
                ? wt.isEmpty()
                : wt.map(t -> implication.covers(narrow, nt.get(), wide, t, map))
                        .orElse(false);
        return reached && says(n, w, map, sameWords);
    }

    /** True when two effects are about the same thing, for or against: a cheap look before a dear one. */
    static boolean touch(Effect a, Effect b) {
        if (a instanceof Effect.RuleOut x && b instanceof Effect.RuleOut y) {
            return x.role() == y.role();
        }
        if (a instanceof Effect.Score x && b instanceof Effect.Score y) {
            return x.criterion().equals(y.criterion());
        }
        if (a instanceof Effect.Require x && b instanceof Effect.Require y) {
            return x.stage().equals(y.stage());
        }
        if (a instanceof Effect.Limit x && b instanceof Effect.Limit y) {
            return x.parameter().equals(y.parameter());
        }
        if (a instanceof Effect.Caution x && b instanceof Effect.Caution y) {
            return x.hazard().equals(y.hazard());
        }
        if (a instanceof Effect.Verify x && b instanceof Effect.Verify y) {
            return x.method().equals(y.method());
        }
        return a.getClass().equals(b.getClass());
    }

    private static boolean says(Effect n, Effect w, List<Integer> map, boolean sameWords) {
        if (n instanceof Effect.Conclude a && w instanceof Effect.Conclude b) {
            return a.conclusion().equals(b.conclusion())
                    && a.subject().equals(b.subject().map(map::get));
        }
        if (n instanceof Effect.RuleOut a && w instanceof Effect.RuleOut b) {
            return a.role() == b.role();
        }
        if (n instanceof Effect.Score a && w instanceof Effect.Score b) {
            // Of each criterion only the strongest counts.
            return a.support() == b.support() && a.criterion().equals(b.criterion()) && b.points() >= a.points();
        }
        if (n instanceof Effect.Require a && w instanceof Effect.Require b) {
            return a.stage().equals(b.stage())
                    && a.after().equals(b.after().map(s -> unmapped(s, map)))
                    && a.before().equals(b.before().map(s -> unmapped(s, map)));
        }
        if (n instanceof Effect.Limit a && w instanceof Effect.Limit b) {
            return limits(a, b, map);
        }
        if (n instanceof Effect.Caution a && w instanceof Effect.Caution b) {
            return a.hazard().equals(b.hazard())
                    && (!sameWords || words(a.reason()).equals(words(b.reason())));
        }
        if (n instanceof Effect.Ask a && w instanceof Effect.Ask b) {
            return a.type().equals(b.type()) && a.attribute().equals(b.attribute());
        }
        return ((Effect.Verify) n).method().equals(((Effect.Verify) w).method());
    }

    private static List<String> words(Reason reason) {
        return reason.parts().stream()
                .filter(p -> p instanceof Reason.Part.Words)
                .map(p -> ((Reason.Part.Words) p).text())
                .toList();
    }

    private static boolean limits(Effect.Limit a, Effect.Limit b, List<Integer> map) {
        if (a.max() != b.max()
                || !a.parameter().equals(b.parameter())
                || !a.stage().equals(unmapped(b.stage(), map))) {
            return false;
        }
        if (a.bound() instanceof Effect.Bound.Literal x && b.bound() instanceof Effect.Bound.Literal y) {
            return a.max() ? y.si() <= x.si() : y.si() >= x.si();
        }
        return a.bound() instanceof Effect.Bound.FieldOf x
                && b.bound() instanceof Effect.Bound.FieldOf y
                && x.field().equals(y.field())
                && x.pattern() == map.get(y.pattern());
    }

    private static Effect.StageRef unmapped(Effect.StageRef ref, List<Integer> map) {
        return ref instanceof Effect.StageRef.Matched m ? new Effect.StageRef.Matched(map.get(m.pattern())) : ref;
    }
}
