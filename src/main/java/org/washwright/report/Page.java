package org.washwright.report;

import java.util.List;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Sentence;

/** What all parts of the report write with: the page, its drawings, names, and the forms that come again and again. */
final class Page {

    private final Markup markup;
    private final Drawings drawings;
    private final Report report;
    private final Lookup lookup;

    Page(Markup markup, Report report) {
        this.markup = markup;
        this.drawings = new Drawings(markup);
        this.report = report;
        this.lookup = new Lookup(report.answer());
    }

    Markup markup() {
        return markup;
    }

    Drawings drawings() {
        return drawings;
    }

    Report report() {
        return report;
    }

    Answer answer() {
        return report.answer();
    }

    Lookup lookup() {
        return lookup;
    }

    /** Begins one of the sections of the report; it ends with {@link #end()}. */
    void section(Section section) {
        markup.open("section", "id", section.id()).element("h2", section.title());
    }

    void end() {
        markup.close();
    }

    void heading(String text) {
        markup.element("h3", sentence(text));
    }

    /** With a capital at its beginning. */
    static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    void paragraph(String text) {
        markup.element("p", text);
    }

    /** A remark that is not a figure: smaller. */
    void note(String text) {
        markup.element("p", text, "class", "note");
    }

    /** Sentences with the rules behind each. */
    void sentences(List<Sentence> sentences) {
        markup.open("ul", "class", "sentences");
        for (Sentence sentence : sentences) {
            markup.open("li").text(sentence.text() + " ");
            ids(sentence.firings());
            markup.close();
        }
        markup.close();
    }

    /** Ids of the rules behind a sentence, small. */
    void ids(List<Integer> firings) {
        String ids = lookup.ruleIds(firings);
        if (ids.isEmpty()) {
            return;
        }
        markup.open("span", "class", "ids");
        for (String id : ids.split(" ", -1)) {
            // Each by itself, so that a line ends between ids and never within one.
            markup.element("span", id, "class", "id").text(" ");
        }
        markup.close();
    }

    /** Begins a table; {@code kind} sets the widths of its columns. It ends with {@link #endTable()}. */
    void table(String kind, String... heads) {
        markup.open("table", "class", kind).open("thead").open("tr");
        for (String head : heads) {
            markup.element("th", head, "scope", "col");
        }
        markup.close().close().open("tbody");
    }

    void endTable() {
        markup.close().close();
    }

    /** A row of plain cells, the first of which names it. */
    void row(String name, String... cells) {
        markup.open("tr").element("th", name, "scope", "row");
        for (String cell : cells) {
            markup.element("td", cell);
        }
        markup.close();
    }
}
