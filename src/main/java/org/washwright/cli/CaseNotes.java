package org.washwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.cases.CaseResult;

/** What reference cases found, for build servers: each expectation that is not met, and each task that is refused. */
final class CaseNotes {

    static final String NOT_MET = "case-not-met";
    static final String NOT_MET_TEXT = "an expectation of a reference case is not met";

    private CaseNotes() {}

    static List<Noted> of(List<CaseResult> results, Optional<Path> edition) {
        List<Noted> out = new ArrayList<>();
        for (CaseResult r : results) {
            r.unmet()
                    .forEach(c -> out.add(new Noted(
                            NOT_MET,
                            NOT_MET_TEXT,
                            Noted.ERROR,
                            r.reference().title() + ": expected that " + c.expected() + "; found: " + c.found() + ".",
                            Noted.within(edition, c.expectation().place()))));
            r.refused()
                    .forEach(d -> out.add(new Noted(
                            d.message().code(),
                            d.message().text(),
                            Noted.ERROR,
                            r.reference().title() + ": the task is refused: " + Noted.sentence(d),
                            Noted.within(edition, r.reference().place()))));
        }
        return out;
    }
}
