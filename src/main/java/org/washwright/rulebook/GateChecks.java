package org.washwright.rulebook;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.washwright.analysis.Examination;
import org.washwright.cases.CaseResult;
import org.washwright.rule.Rule;
import org.washwright.rulebook.GateItem.Mark;

/** What the rulebook itself looks at before a release: files, cases, rules, remarks and marks. */
@ApplicationScoped
@Priority(1)
class GateChecks implements GateSource {
    private final Checkings checkings;
    private final Remarks remarks;
    private final RuleMarks marks;

    GateChecks(Checkings checkings, Remarks remarks, RuleMarks marks) {
        this.checkings = checkings;
        this.remarks = remarks;
        this.marks = marks;
    }

    @Override
    public List<GateItem> items(UUID workspace, EditionView edition, Reading reading) {
        List<GateItem> items = new ArrayList<>();
        items.add(files(edition));
        if (reading.edition().isPresent()) {
            items.add(cases(workspace, edition.id(), reading));
            items.add(rules(workspace, edition.id()));
            items.add(marked(workspace, reading));
        }
        items.add(remarks(workspace, edition.id()));
        return items;
    }

    private static GateItem files(EditionView edition) {
        return edition.errors() > 0
                ? new GateItem(
                        "files",
                        "Files",
                        Mark.BLOCKED,
                        counted(edition.errors(), "error", "errors") + " in the files.",
                        "/diagnostics")
                : new GateItem("files", "Files", Mark.MET, "No errors in the files.", "/diagnostics");
    }

    private GateItem cases(UUID workspace, UUID id, Reading reading) {
        int all = reading.checks().cases().size();
        if (all == 0) {
            return new GateItem(
                    "cases", "Reference cases", Mark.OPEN, "There is no case that could notice a fault.", "/cases");
        }
        Optional<List<CaseResult>> results = checkings.results(workspace, id);
        if (results.isEmpty()) {
            return new GateItem(
                    "cases",
                    "Reference cases",
                    Mark.AT_RELEASE,
                    counted(all, "case was", "cases were") + " not run on these files today; the release runs them.",
                    "/cases");
        }
        long failing = results.get().stream().filter(r -> !r.holds()).count();
        return failing > 0
                ? new GateItem(
                        "cases",
                        "Reference cases",
                        Mark.BLOCKED,
                        failing + " of " + counted(all, "case fails", "cases fail") + ".",
                        "/cases")
                : new GateItem(
                        "cases",
                        "Reference cases",
                        Mark.MET,
                        all == 1 ? "The only case holds." : "All " + all + " cases hold.",
                        "/cases");
    }

    private GateItem rules(UUID workspace, UUID id) {
        Optional<Examination> done = checkings.examination(workspace, id).flatMap(Work::result);
        if (done.isEmpty()) {
            return new GateItem(
                    "examination",
                    "Examination of the rules",
                    Mark.OPEN,
                    "The rules were not examined on these files today.",
                    "/examination");
        }
        long open = done.get().open().size();
        return new GateItem(
                "examination",
                "Examination of the rules",
                open == 0 ? Mark.MET : Mark.OPEN,
                open == 0
                        ? "Nothing was found that its authors do not know."
                        : counted(open, "finding is", "findings are") + " not yet mended or accepted.",
                "/examination");
    }

    private GateItem marked(UUID workspace, Reading reading) {
        Map<String, Integer> open = marks.openByRule(workspace);
        List<String> rules = reading.edition().orElseThrow().rules().stream()
                .map(Rule::id)
                .filter(open::containsKey)
                .toList();
        return rules.isEmpty()
                ? new GateItem("marks", "Marks of readers", Mark.MET, "No open mark against its rules.", "")
                : new GateItem(
                        "marks",
                        "Marks of readers",
                        Mark.OPEN,
                        "Readers hold reasons of " + counted(rules.size(), "rule", "rules") + " to be wrong: "
                                + String.join(", ", rules.subList(0, Math.min(5, rules.size())))
                                + (rules.size() > 5 ? " and others." : "."),
                        "/rules");
    }

    private GateItem remarks(UUID workspace, UUID id) {
        long open = remarks.open(workspace, id);
        return new GateItem(
                "remarks",
                "Remarks",
                open == 0 ? Mark.MET : Mark.BLOCKED,
                open == 0 ? "Every remark is settled." : counted(open, "remark is", "remarks are") + " not settled.",
                "/review");
    }

    private static String counted(long n, String one, String more) {
        return n + " " + (n == 1 ? one : more);
    }
}
