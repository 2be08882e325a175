package org.washwright.rule;

import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.quantity.Quantities;
import org.washwright.task.Attribute;
import org.washwright.task.Group;

/** What a rule says, in words. */
record EffectWords(Edition edition, RuleThings things) {

    /** What it says. */
    String effect(Effect effect) {
        Catalogue catalogue = edition.catalogue();
        if (effect instanceof Effect.Conclude c) {
            return "conclude " + catalogue.name("conclusion", c.conclusion())
                    + c.subject().map(s -> ", about " + things.the(s)).orElse("");
        }
        if (effect instanceof Effect.RuleOut r) {
            return "rule out " + target(r.target()) + " " + r.role().phrase();
        }
        if (effect instanceof Effect.Score s) {
            double step = edition.grading().steps().getOrDefault(s.points(), 0.0);
            return (s.support() ? "give " : "take from ")
                    + target(s.target()) + " " + Quantities.number(step, RuleSentence.DIGITS) + " points for "
                    + edition.grading()
                            .criterion(s.criterion())
                            .map(Grading.Criterion::name)
                            .orElse(s.criterion());
        }
        if (effect instanceof Effect.Require r) {
            String place = r.after().isPresent() && r.before().isPresent()
                    ? " between " + stage(r.after().get()) + " and "
                            + stage(r.before().get())
                    : r.after().map(a -> " after " + stage(a)).orElse("")
                            + r.before().map(b -> " before " + stage(b)).orElse("");
            return "the line of " + target(r.target()) + " needs the stage " + catalogue.name("stage", r.stage())
                    + place;
        }
        if (effect instanceof Effect.Limit l) {
            return "keep the " + catalogue.name("parameter", l.parameter()) + " of " + stage(l.stage()) + " in "
                    + target(l.target()) + (l.max() ? " at or below " : " at or above ") + bound(l);
        }
        if (effect instanceof Effect.Caution c) {
            return "warn of " + catalogue.name("hazard", c.hazard())
                    + c.target().map(t -> " with " + target(t)).orElse("");
        }
        if (effect instanceof Effect.Verify v) {
            return "prove cleanliness by " + catalogue.name("test-method", v.method());
        }
        return ask((Effect.Ask) effect);
    }

    private String ask(Effect.Ask ask) {
        Optional<Attribute> attribute = ask.type().equals(FactTypes.ATTRIBUTE)
                ? Optional.ofNullable(edition.catalogue().attributes().get(ask.attribute()))
                : Group.byFactType(ask.type()).flatMap(g -> g.attribute(ask.attribute()));
        return "find out: "
                + attribute
                        .map(Attribute::question)
                        .orElseGet(() ->
                                Group.byFactType(ask.type()).map(Group::label).orElse(ask.type()));
    }

    private String target(Effect.Target target) {
        return target instanceof Effect.Target.Node n
                ? edition.catalogue().name("process", n.id())
                : things.the(((Effect.Target.Matched) target).pattern());
    }

    private String stage(Effect.StageRef ref) {
        if (ref instanceof Effect.StageRef.Named n) {
            return n.id().equals(Effect.StageRef.MAIN)
                    ? "the main cleaning"
                    : edition.catalogue().name("stage", n.id());
        }
        return things.the(((Effect.StageRef.Matched) ref).pattern());
    }

    private String bound(Effect.Limit l) {
        if (l.bound() instanceof Effect.Bound.Literal x) {
            return Quantities.write(x.si(), l.dimension(), RuleSentence.DIGITS);
        }
        Effect.Bound.FieldOf of = (Effect.Bound.FieldOf) l.bound();
        return "the " + things.label(of.pattern(), of.field()) + " of " + things.the(of.pattern());
    }

    /** The reason with its places as words in brackets: what stands there depends on the task. */
    String reason(Effect effect) {
        StringBuilder out = new StringBuilder();
        for (Reason.Part part : effect.reason().parts()) {
            if (part instanceof Reason.Part.Words w) {
                out.append(w.text());
            } else if (part instanceof Reason.Part.NameOf n) {
                out.append('[').append(things.the(n.pattern())).append(']');
            } else if (part instanceof Reason.Part.ValueOf v) {
                out.append('[').append(v.field().label()).append(']');
            } else {
                out.append("[the process]");
            }
        }
        return out.toString();
    }
}
