package org.washwright.judging;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.washwright.impact.replay.Impact;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.GateItem;
import org.washwright.rulebook.GateItem.Mark;
import org.washwright.rulebook.GateSource;
import org.washwright.rulebook.Reading;

/** Before a release: what the change does to past answers has been looked at, and nothing of it was not meant. */
@ApplicationScoped
class JudgingGate implements GateSource {
    private static final String ID = "impact";
    private static final String TITLE = "Past answers looked at";
    private static final String PATH = "/impact";

    private final EditionPairs pairs;
    private final Runs runs;

    JudgingGate(EditionPairs pairs, Runs runs) {
        this.pairs = pairs;
        this.runs = runs;
    }

    @Override
    public List<GateItem> items(UUID workspace, EditionView edition, Reading reading) {
        if (reading.edition().isEmpty()) {
            return List.of();
        }
        Optional<EditionView> before = pairs.usual(workspace, edition);
        if (before.isEmpty()) {
            return List.of(item(Mark.MET, "There is no earlier edition whose answers could change."));
        }
        Optional<KeptRun> run = runs.latest(workspace, before.get().textHash(), reading.textHash());
        return List.of(run.map(r -> judged(workspace, r.impact()))
                .orElseGet(() -> item(
                        Mark.OPEN,
                        "Past tasks were not tried by these files against "
                                + before.get().label() + ".")));
    }

    private GateItem judged(UUID workspace, Impact impact) {
        Map<String, Judgement> judged = runs.judged(workspace, impact);
        long against = judged.values().stream().filter(j -> !j.isMeant()).count();
        if (against > 0) {
            return item(
                    Mark.BLOCKED,
                    against + (against == 1 ? " changed answer was" : " changed answers were")
                            + " judged as not meant.");
        }
        long open =
                impact.sample().stream().filter(key -> !judged.containsKey(key)).count();
        if (open > 0) {
            return item(
                    Mark.OPEN,
                    open + " of " + impact.sample().size() + " changed answers of the sample "
                            + (open == 1 ? "is" : "are") + " not judged.");
        }
        return item(
                Mark.MET,
                impact.sample().isEmpty()
                        ? "No answer of the " + impact.tried() + " tasks tried changes."
                        : "Every changed answer of the sample was judged as meant.");
    }

    private static GateItem item(Mark mark, String detail) {
        return new GateItem(ID, TITLE, mark, detail, PATH);
    }
}
