package org.washwright.report;

import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** The report as one XHTML document, for the three ways in which it is read. */
public final class ReportHtml {

    /** Style sheets that a served page links to. */
    private static final String[] SHEETS = {"/assets/report.css", "/assets/report-screen.css"};

    private ReportHtml() {}

    /** A page whose style sheets are served beside it. */
    public static String page(Report report) {
        return document(report, UnaryOperator.identity(), false, head -> {
            for (String sheet : SHEETS) {
                head.empty("link", "rel", "stylesheet", "href", sheet);
            }
        });
    }

    /** A file that carries its style. */
    public static String file(Report report) {
        return document(
                report, UnaryOperator.identity(), false, head -> head.style(Styles.shared() + Styles.screenOfFiles()));
    }

    /** What the PDF is drawn from: with running heads and bookmarks, in signs that the bundled fonts have. */
    static String paper(Report report) {
        Glyphs glyphs = Glyphs.bundled();
        return document(report, glyphs::drawable, true, head -> head.style(Styles.shared() + Styles.paper()));
    }

    private static String document(Report report, UnaryOperator<String> glyphs, boolean paper, Consumer<Markup> style) {
        Markup m = new Markup(glyphs);
        Page page = new Page(m, report);
        m.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
        m.open("head");
        m.empty("meta", "charset", "UTF-8");
        m.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        m.element("title", title(report));
        style.accept(m);
        if (paper) {
            bookmarks(m, report);
        }
        m.close().open("body", "class", paper ? "report paper" : "report screen");
        if (paper) {
            running(m, report);
        }
        m.open("main");
        parts(page);
        m.close().close().close();
        return "<!DOCTYPE html>\n" + m.finish() + "\n";
    }

    /** The title of the document, as lists of files and printed pages show it. */
    static String title(Report report) {
        return report.title() + ": " + report.chosen().map(c -> c.name()).orElse("no process stands") + " (answer "
                + Numerals.shortHash(report.hash()) + ")";
    }

    private static void parts(Page page) {
        TaskPart task = new TaskPart(page);
        LinePart line = new LinePart(page);
        FiguresPart figures = new FiguresPart(page);
        PlanPart plan = new PlanPart(page);
        ChoicePart choice = new ChoicePart(page);
        new CoverPart(page).write();
        contents(page);
        task.write();
        line.writeCautions();
        line.write();
        figures.write();
        plan.writeBalances();
        plan.writeCost();
        plan.writeControl();
        plan.writeProof();
        choice.writeOrder();
        choice.writeOpen();
        choice.writeRuledOut();
        choice.writeRules();
        task.writeFollowing();
        figures.writeInputs();
        figures.writeFormulas();
        choice.writeSources();
        choice.writeSignatures();
    }

    private static void contents(Page page) {
        Markup m = page.markup();
        m.open("nav", "class", "contents", "aria-label", "Contents").open("ol");
        for (Section section : Section.values()) {
            if (isThere(section, page.report())) {
                m.open("li")
                        .element("a", section.title(), "href", "#" + section.id())
                        .close();
            }
        }
        m.close().close();
    }

    private static void bookmarks(Markup m, Report report) {
        m.open("bookmarks");
        for (Section section : Section.values()) {
            if (isThere(section, report)) {
                m.open("bookmark", "name", section.title(), "href", "#" + section.id())
                        .close();
            }
        }
        m.close();
    }

    private static boolean isThere(Section section, Report report) {
        return section != Section.FORMULAS || report.design().isPresent();
    }

    private static void running(Markup m, Report report) {
        m.element("div", report.title(), "class", "running-title");
        m.element(
                "div",
                "answer " + Numerals.shortHash(report.hash()) + " \u00B7 edition "
                        + report.answer().request().edition() + " \u00B7 as of "
                        + report.answer().request().asOf(),
                "class",
                "running-foot");
    }
}
