package org.washwright.assessment;

import java.util.Optional;
import org.washwright.engine.Fact;
import org.washwright.engine.Finding;
import org.washwright.engine.Firing;
import org.washwright.engine.Words;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;

/** Puts firings and findings into the form of answers. */
final class FindingCards {

    private final Edition edition;
    private final Words words;

    FindingCards(Edition edition) {
        this.edition = edition;
        this.words = new Words(edition.catalogue());
    }

    Answer.Firing firing(Firing f) {
        return new Answer.Firing(
                f.n(),
                f.rule().id(),
                f.level(),
                f.certain(),
                f.line(),
                f.facts().stream().flatMap(Optional::stream).map(Fact::id).toList(),
                f.uses(),
                f.held(),
                f.findings().stream().map(x -> finding(f, x)).toList());
    }

    private Answer.Finding finding(Firing firing, Finding finding) {
        return new Answer.Finding(
                finding.effect().verb(), finding.targets(), detail(firing, finding.effect()), finding.text());
    }

    private String detail(Firing firing, Effect effect) {
        if (effect instanceof Effect.Conclude c) {
            return edition.catalogue().name("conclusion", c.conclusion());
        }
        if (effect instanceof Effect.RuleOut r) {
            return r.role().phrase();
        }
        if (effect instanceof Effect.Score s) {
            String criterion =
                    edition.grading().criterion(s.criterion()).orElseThrow().name();
            double step = edition.grading().steps().get(s.points());
            return criterion + ", " + (s.support() ? "+" : "−") + Quantities.number(step, Words.COMPUTED) + " points";
        }
        if (effect instanceof Effect.Require r) {
            String place = r.after().map(a -> " after " + stage(firing, a)).orElse("")
                    + r.before()
                            .map(b -> (r.after().isPresent() ? " and" : "") + " before " + stage(firing, b))
                            .orElse("");
            return edition.catalogue().name("stage", r.stage()) + place;
        }
        if (effect instanceof Effect.Limit l) {
            return edition.catalogue().parameters().get(l.parameter()).term().name() + " of " + stage(firing, l.stage())
                    + (l.max() ? " at most " : " at least ") + bound(firing, l);
        }
        if (effect instanceof Effect.Caution c) {
            return edition.catalogue().name("hazard", c.hazard());
        }
        if (effect instanceof Effect.Verify v) {
            return edition.catalogue().name("test-method", v.method());
        }
        Effect.Ask a = (Effect.Ask) effect;
        return a.attribute().isEmpty() ? a.type() : a.type() + ", " + a.attribute();
    }

    private String stage(Firing firing, Effect.StageRef ref) {
        if (ref instanceof Effect.StageRef.Named n) {
            return n.id().equals(Effect.StageRef.MAIN)
                    ? "the main cleaning"
                    : edition.catalogue().name("stage", n.id());
        }
        return firing.facts()
                .get(((Effect.StageRef.Matched) ref).pattern())
                .map(Fact::name)
                .orElse("");
    }

    private String bound(Firing firing, Effect.Limit limit) {
        if (limit.bound() instanceof Effect.Bound.Literal literal) {
            return Quantities.write(literal.si(), limit.dimension(), Words.GIVEN);
        }
        Effect.Bound.FieldOf of = (Effect.Bound.FieldOf) limit.bound();
        return firing.facts()
                .get(of.pattern())
                .map(f -> words.inSentence(f, of.field()))
                .orElse("");
    }
}
