package org.washwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.document.Place;
import org.washwright.impact.meaning.Difference;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.impact.replay.By;
import org.washwright.impact.replay.Impact;
import org.washwright.impact.replay.Weight;

/** What a change does to answers, for build servers: noted at the rule that does it, so that it stands beside the change. */
final class ImpactNotes {

    private final Impact impact;
    private final Optional<Path> edition;
    private final boolean unchanged;
    private final Map<By, Place> places = new HashMap<>();

    /**
     * Notes of an impact.
     *
     * @param edition where the later edition stands
     * @param unchanged whether an answer that changes is an error
     */
    ImpactNotes(Impact impact, MeaningComparison change, Path edition, boolean unchanged) {
        this.impact = impact;
        this.edition = Optional.of(edition);
        this.unchanged = unchanged;
        for (Difference d : change.differences()) {
            places.put(new By(d.subject(), d.id(), d.name()), d.place());
        }
    }

    List<Noted> notes() {
        List<Noted> out = new ArrayList<>();
        impact.cases().stream()
                .filter(Impact.CaseTurn::failsNow)
                .forEach(c -> out.add(new Noted(
                        "case-turned",
                        "a reference case fails that did not",
                        Noted.ERROR,
                        c.title() + ": " + String.join(" ", c.unmet()),
                        Noted.within(edition, c.place()))));
        impact.refused().stream()
                .filter(Impact.Refused::onlyNow)
                .forEach(r -> out.add(new Noted(
                        "task-refused",
                        "a task is refused that was answered",
                        Noted.ERROR,
                        r.title() + ": " + String.join(" ", r.after()),
                        Place.ofFile(""))));
        impact.changed()
                .forEach(c -> out.add(new Noted(
                        "answer-changes",
                        "an answer changes",
                        c.weight() == Weight.WORDING ? Noted.NOTE : unchanged ? Noted.ERROR : Noted.WARNING,
                        c.title() + ": " + c.sentence(),
                        c.by().isEmpty() ? Place.ofFile("") : at(c.by().get(0)))));
        impact.parts().stream()
                .filter(Impact.Part::touchesNothing)
                .forEach(p -> out.add(new Noted(
                        "change-without-effect",
                        "a part of the change leaves every answer as it was",
                        Noted.NOTE,
                        p.by().name() + " was " + p.what().word() + " and changes no answer of " + impact.tried()
                                + " tried.",
                        at(p.by()))));
        return out;
    }

    private Place at(By by) {
        return Noted.within(edition, places.getOrDefault(by, Place.ofFile("")));
    }

    /** The same as things tested. */
    List<JUnitReport.Tested> tested() {
        List<JUnitReport.Tested> out = new ArrayList<>();
        out.add(new JUnitReport.Tested("answers", impact.same() + " of " + impact.tried() + " unchanged", "", ""));
        impact.changed()
                .forEach(c -> out.add(new JUnitReport.Tested(
                        "answers",
                        c.title(),
                        unchanged && c.weight() != Weight.WORDING ? c.sentence() : "",
                        c.sentence() + "\n"
                                + String.join(
                                        "\n",
                                        c.by().stream()
                                                .map(b -> "by [" + b.id() + "] " + b.name())
                                                .toList()))));
        impact.refused()
                .forEach(r -> out.add(new JUnitReport.Tested(
                        "answers",
                        r.title(),
                        r.onlyNow() ? "refused only now" : "",
                        String.join("\n", r.after().isEmpty() ? r.before() : r.after()))));
        impact.cases()
                .forEach(c -> out.add(new JUnitReport.Tested(
                        "reference cases",
                        c.id() + " " + c.title(),
                        c.failsNow() ? c.before() + ", now " + c.after() : "",
                        String.join("\n", c.unmet()))));
        return out;
    }

    /** True when the change breaks something. */
    boolean breaks() {
        return notes().stream().anyMatch(n -> n.level().equals(Noted.ERROR));
    }
}
