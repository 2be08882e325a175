package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wanted;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostic;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Editions;

/** Makes a form ready to be drawn: by the current edition, with the units of the one who fills it in. */
@ApplicationScoped
class FormDesk {
    private static final int EDITIONS_KEPT = 4;
    private static final String SOME_TITLE = "a task being described";

    private final Editions editions;
    private final UnitChoices units;
    private final Assessments assessments;

    /** What asks an edition without compiling it, the one used last at the end. */
    private final Map<String, Assessor> askers = new LinkedHashMap<>(8, 0.75f, true);

    FormDesk(Editions editions, UnitChoices units, Assessments assessments) {
        this.editions = editions;
        this.units = units;
        this.assessments = assessments;
    }

    Edition edition(UUID workspace) {
        return editions.content(workspace, editions.requireCurrent(workspace).id());
    }

    FormView view(UUID workspace, Person by, FormFields fields, List<Diagnostic> wrong) {
        Edition edition = edition(workspace);
        return new FormDrawer(fields, edition, wrong, wanted(fields, edition), units.of(by)).form();
    }

    /** What is wanted of the task as far as it can be read: what is wrong in it counts as not said. */
    private Wanted wanted(FormFields fields, Edition edition) {
        FormFields sound = fields.with("title", List.of(SOME_TITLE)).without("notes");
        GivenTask.Result read = GivenTask.tried(FormDocument.write(sound, edition), edition);
        if (read.task().isEmpty()) {
            for (Diagnostic wrong : read.diagnostics()) {
                sound = sound.silent(FormNames.ofPointer(wrong.place().pointer()));
            }
            read = GivenTask.tried(FormDocument.write(sound, edition), edition);
        }
        if (read.task().isEmpty()) {
            return Wanted.NOTHING;
        }
        try {
            return asker(edition).wanted(read.task().get().task(), Wishes.on(assessments.today()));
        } catch (RefusedTask contradiction) {
            // The form says so when it is answered; until then nothing can be said of what hangs on what.
            return Wanted.NOTHING;
        }
    }

    private Assessor asker(Edition edition) {
        synchronized (askers) {
            Assessor asker =
                    askers.computeIfAbsent(edition.textHash(), k -> Assessor.of(edition, SweepInference.factory()));
            if (askers.size() > EDITIONS_KEPT) {
                askers.remove(askers.keySet().iterator().next());
            }
            return asker;
        }
    }
}
