package org.washwright.reasons;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.NoSuchElementException;
import java.util.UUID;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.whynot.Outlook;
import org.washwright.explain.whynot.ProcessOutlook;
import org.washwright.explain.whynot.WhyNot;
import org.washwright.problem.NotFound;
import org.washwright.rulebook.Editions;

/** Runs the rules of a kept answer's edition on its task once more, for what an answer does not keep: rules that did not fire. */
@ApplicationScoped
class Outcomes {
    private final Editions editions;

    Outcomes(Editions editions) {
        this.editions = editions;
    }

    WhyNot whyNot(UUID workspace, KeptAnswer kept) {
        return new WhyNot(editions.indexed(workspace, kept.view().editionId())
                .outcome(kept.asked().task(), kept.asked().wishes()));
    }

    static ProcessOutlook process(WhyNot whyNot, String process) {
        try {
            return whyNot.process(process);
        } catch (NoSuchElementException e) {
            throw NotFound.of("process of this edition", process);
        }
    }

    /** What became of a rule; as far as one process is concerned when one is named. */
    static Outlook rule(WhyNot whyNot, String rule, String process) {
        var found = whyNot.find(rule).orElseThrow(() -> NotFound.of("rule of this edition", rule));
        if (process.isEmpty()) {
            return whyNot.rule(found);
        }
        if (whyNot.outcome().line(process).isEmpty()) {
            throw NotFound.of("process of this edition", process);
        }
        return whyNot.rule(found, process);
    }
}
