package org.washwright.report;

import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Factor;
import org.washwright.assessment.Answer.Stage;
import org.washwright.assessment.Answer.Window;

/** Cautions, and the chosen line: first at a glance, then each stage as a card with its windows. */
final class LinePart {

    /** The usual cautions in one sentence, for media that have no room for four. */
    static final String ALWAYS =
            "Figures are for planning. The safety data sheet, local codes and a competent, licensed person"
                    + " decide.";

    /** Discs beside each other on the width of a page. */
    private static final int ABREAST = 8;

    private final Page page;

    LinePart(Page page) {
        this.page = page;
    }

    /** Cautions, before anything that one could build by. */
    void writeCautions() {
        Markup m = page.markup();
        m.open("section", "id", Section.CARE.id(), "class", "care").element("h2", Section.CARE.title());
        List<Answer.Sentence> own =
                page.report().chosen().map(Answer.Candidate::cautions).orElse(List.of());
        if (!own.isEmpty()) {
            page.heading("with this line");
            page.sentences(own);
        }
        List<Answer.Sentence> rest = page.answer().cautions().stream()
                .filter(c -> own.stream().noneMatch(o -> o.text().equals(c.text())))
                .toList();
        if (!rest.isEmpty()) {
            page.heading(own.isEmpty() ? "whatever is done" : "whatever process is chosen");
            page.sentences(rest);
        }
        page.heading("always");
        m.open("ul", "class", "sentences");
        m.element("li", "Figures are for planning and for asking for quotes; they are no release for work.");
        m.element("li", "Read and follow the safety data sheet of every medium; where it asks for more, it prevails.");
        m.element("li", "Local codes and permits decide; the law at the site may differ from what was read here.");
        m.element(
                "li",
                "A competent, licensed person has to check plant, wiring, pressure vessels, exhaust and waste before work"
                        + " begins.");
        m.close();
        page.end();
    }

    void write() {
        page.section(Section.LINE);
        Optional<Answer.Candidate> chosen = page.report().chosen();
        if (chosen.isEmpty()) {
            page.paragraph("No process may clean this task, so there is no line.");
            page.end();
            return;
        }
        List<Stage> stages = chosen.get().stages();
        page.note("Each disc shows the four factors of cleaning, clockwise from the upper right: medium, agitation,"
                + " temperature, time. A quarter is filled by area, as far as the setting stands within what is possible;"
                + " an outline has no scale.");
        glance(stages);
        for (int i = 0; i < stages.size(); i++) {
            card(i + 1, stages.get(i));
        }
        page.end();
    }

    private void glance(List<Stage> stages) {
        Markup m = page.markup();
        for (int from = 0; from < stages.size(); from += ABREAST) {
            List<Stage> row = stages.subList(from, Math.min(from + ABREAST, stages.size()));
            m.open("table", "class", "glance").open("tbody").open("tr");
            for (int i = 0; i < row.size(); i++) {
                m.open("td").element("span", Integer.toString(from + i + 1), "class", "number");
                m.open("div", "class", "glance-disc");
                page.drawings().disc(row.get(i).factors(), "56");
                m.close();
                m.element("div", Page.sentence(row.get(i).name()), "class", "glance-name")
                        .close();
            }
            m.close().close().close();
        }
    }

    private void card(int place, Stage stage) {
        Markup m = page.markup();
        m.open("div", "class", stage.main() ? "card main" : "card").open("h3", "class", "card-title");
        m.element("span", Integer.toString(place), "class", "number").text(" " + Page.sentence(stage.name()));
        if (stage.main()) {
            m.element("span", " main stage", "class", "soft");
        }
        if (!stage.certain()) {
            m.element("span", " if needed: not decided yet", "class", "warning-word");
        }
        m.close();
        m.open("table", "class", "card-body").open("tbody").open("tr");
        m.open("td", "class", "card-disc");
        page.drawings().disc(stage.factors(), "74");
        m.close();
        m.open("td", "class", "card-factors");
        factors(stage.factors());
        m.close().open("td", "class", "card-windows");
        windows(stage.windows());
        m.close().close().close().close();
        String why = page.lookup().ruleIds(stage.firings());
        if (!why.isEmpty()) {
            m.element("p", "Placed by " + why, "class", "ids card-why");
        }
        m.close();
    }

    private void factors(List<Factor> factors) {
        Markup m = page.markup();
        m.open("table", "class", "factors").open("tbody");
        for (Factor factor : factors) {
            m.open("tr").open("th", "scope", "row", "class", "factor-name " + factor.factor());
            page.drawings().key(factor.factor());
            m.text(" " + factor.factor()).close();
            m.element("td", factor.words()).close();
        }
        m.close().close();
    }

    private void windows(List<Window> windows) {
        Markup m = page.markup();
        m.element("div", "windows", "class", "windows-title");
        if (windows.isEmpty()) {
            m.element("div", "Nothing to set within limits.", "class", "soft");
            return;
        }
        m.open("table", "class", "windows").open("tbody");
        for (Window w : windows) {
            m.open("tr").element("th", w.name(), "scope", "row");
            m.open("td").element("b", w.text());
            String by = page.lookup().ruleIds(w.firings());
            if (!by.isEmpty()) {
                m.text(" ").element("span", by, "class", "ids");
            }
            String may = page.lookup().ruleIds(w.undecided());
            if (!may.isEmpty()) {
                m.element("div", "may narrow further: " + may, "class", "ids");
            }
            m.close().close();
        }
        m.close().close();
    }
}
