package org.washwright.report;

import org.washwright.assessment.Answer;

/** The first page: what was asked, what the answer is in one sentence, which line this report writes out, and its hashes. */
final class CoverPart {

    private final Page page;

    CoverPart(Page page) {
        this.page = page;
    }

    void write() {
        Markup m = page.markup();
        Answer answer = page.answer();
        m.open("header", "class", "cover");
        m.element("p", "Report of a parts-cleaning assessment", "class", "kicker");
        m.element("h1", page.report().title());
        m.open("div", "class", "verdict");
        m.element("p", answer.headline().sentence(), "class", "verdict-sentence");
        m.element("p", answer.headline().summary());
        m.close();
        chosen();
        identity();
        m.close();
    }

    private void chosen() {
        Markup m = page.markup();
        Answer.Candidate first = page.answer().candidates().stream().findFirst().orElse(null);
        m.open("div", "class", "chosen");
        if (page.report().chosen().isEmpty()) {
            m.element("p", "No process may clean this task as it is described. This report says why.", "class", "lead");
            m.close();
            return;
        }
        Answer.Candidate line = page.report().chosen().get();
        m.element("p", "Line in this report", "class", "kicker");
        m.open("p", "class", "lead");
        page.drawings().status(line.status());
        m.text(" ").element("b", Page.sentence(line.name()));
        m.text(": " + line.status() + ", " + Numerals.points(line.low(), line.high()) + " of 100 points");
        m.close();
        if (!line.equals(first)) {
            m.element(
                    "p",
                    "Mind: this is not the line that the sentence above speaks of. First stands " + first.name()
                            + ", with " + Numerals.points(first.low(), first.high()) + " points.",
                    "class",
                    "warning");
        }
        if (line.status().equals("conditional")) {
            m.element(
                    "p",
                    "It may be used only once its conditions are settled; they stand under \u201C"
                            + Section.OPEN.title() + "\u201D.",
                    "class",
                    "warning");
        }
        m.close();
    }

    private void identity() {
        Answer.Request request = page.answer().request();
        Markup m = page.markup();
        m.open("table", "class", "identity").open("tbody");
        page.row("Law and prices as of", request.asOf());
        page.row("Rulebook edition", request.edition());
        hash("Edition, hash of its meaning", request.meaningHash());
        hash("Edition, hash of its text", request.textHash());
        hash("This answer", page.report().hash());
        hash("The request", page.answer().requestHash());
        page.row("Program", request.program());
        if (!request.assumptions().isEmpty()) {
            page.row(
                    "Changed for this request",
                    request.assumptions().size() + " of the edition's assumptions; marked below");
        }
        m.close().close();
        page.note(
                "Hashes are SHA-256. The same request on the same edition and program gives an answer with the same hash;"
                        + " its short form stands on every page.");
    }

    private void hash(String name, String hash) {
        page.markup()
                .open("tr")
                .element("th", name, "scope", "row")
                .element("td", hash, "class", "hash")
                .close();
    }
}
