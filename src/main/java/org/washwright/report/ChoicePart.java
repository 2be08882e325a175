package org.washwright.report;

import java.util.List;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Candidate;
import org.washwright.assessment.Answer.Sentence;
import org.washwright.assessment.Ranking;

/** Why this line: order and firmness, all candidates, what the line hangs on, and what was ruled out. */
final class ChoicePart {

    private final Page page;

    ChoicePart(Page page) {
        this.page = page;
    }

    void writeOrder() {
        page.section(Section.ORDER);
        page.answer().ranking().ifPresent(this::ranking);
        weights();
        candidates();
        page.end();
    }

    private void ranking(Ranking ranking) {
        if (!ranking.reason().isEmpty()) {
            page.markup().element("p", ranking.reason(), "class", "lead");
        }
        page.paragraph("Weights: " + ranking.weighing()
                + (ranking.consistency() == null
                        ? ""
                        : " (consistency ratio " + Numerals.three(ranking.consistency()) + ")"));
        ranking.notes().forEach(page::note);
        if (!ranking.shares().isEmpty()) {
            page.heading("how firm the order is");
            page.table("firm", "process", "first in so many of all weightings", "");
            for (Ranking.Share share : ranking.shares()) {
                Markup m = page.markup();
                m.open("tr").element("th", share.name(), "scope", "row");
                m.element("td", Numerals.percent(share.share()), "class", "amount")
                        .open("td");
                page.drawings().amount(share.share());
                m.close().close();
            }
            page.endTable();
        }
    }

    private void weights() {
        List<Answer.Weight> weights = page.answer().request().weights();
        if (!weights.isEmpty()) {
            page.heading("weights of the areas");
            page.paragraph(String.join(
                    "; ",
                    weights.stream()
                            .map(w -> areaName(w.area()) + " " + Numerals.three(w.weight()))
                            .toList()));
        }
    }

    private String areaName(String id) {
        return page.answer().candidates().stream()
                .flatMap(c -> c.areas().stream())
                .filter(a -> a.area().equals(id))
                .map(Answer.Area::name)
                .findFirst()
                .orElse(id);
    }

    private void candidates() {
        List<Candidate> candidates = page.answer().candidates();
        if (candidates.isEmpty()) {
            page.paragraph("No process may clean this task.");
            return;
        }
        page.heading("all processes that may clean this task");
        Markup m = page.markup();
        m.open("table", "class", "candidates").open("thead").open("tr");
        m.element("th", "process", "scope", "col");
        candidates.get(0).areas().forEach(a -> m.element("th", a.name(), "scope", "col"));
        m.element("th", "overall", "scope", "col").close().close().open("tbody");
        for (Candidate c : candidates) {
            boolean chosen = page.report().chosen().filter(c::equals).isPresent();
            m.open("tr", "class", chosen ? "this" : "other").open("th", "scope", "row");
            page.drawings().status(c.status());
            m.text(" " + Page.sentence(c.name()));
            m.element("span", chosen ? " " + c.status() + ", this report" : " " + c.status(), "class", "soft");
            m.close();
            for (Answer.Area a : c.areas()) {
                m.open("td").element("div", Numerals.points(a.low(), a.high()), "class", "points");
                page.drawings().points(a.low(), a.high());
                m.close();
            }
            m.open("td", "class", "amount").element("b", Numerals.points(c.low(), c.high()));
            m.close().close();
        }
        page.endTable();
        page.note("Points run from 0 to 100; a paler stretch shows how far what is not known can move them.");
    }

    void writeOpen() {
        page.section(Section.OPEN);
        List<Sentence> conditions =
                page.report().chosen().map(Candidate::conditions).orElse(List.of());
        if (!conditions.isEmpty()) {
            page.heading("conditions of this line");
            page.sentences(conditions);
        }
        if (!page.answer().doubts().isEmpty()) {
            page.heading("look at this again");
            page.sentences(page.answer().doubts());
        }
        if (!page.answer().questions().isEmpty()) {
            page.heading("find out, the most decisive first");
            Markup m = page.markup();
            m.open("ol", "class", "sentences");
            for (Answer.Question q : page.answer().questions()) {
                m.open("li").element("b", q.question()).text(" " + q.consequence() + " ");
                page.ids(q.firings());
                m.close();
            }
            m.close();
        }
        if (conditions.isEmpty()
                && page.answer().doubts().isEmpty()
                && page.answer().questions().isEmpty()) {
            page.paragraph("Nothing. Every rule could be decided with what is known.");
        }
        page.end();
    }

    void writeRuledOut() {
        page.section(Section.OUT);
        if (page.answer().ruledOut().isEmpty()) {
            page.paragraph("None.");
        } else {
            page.table("out", "process", "why not");
            for (Answer.RuledOut out : page.answer().ruledOut()) {
                Markup m = page.markup();
                m.open("tr").open("th", "scope", "row");
                page.drawings().status("ruled out");
                m.text(" " + Page.sentence(out.name())).close().open("td");
                for (Sentence reason : out.reasons()) {
                    m.open("div").text(reason.text() + " ");
                    page.ids(reason.firings());
                    m.close();
                }
                m.close().close();
            }
            page.endTable();
        }
        page.end();
    }

    void writeRules() {
        page.section(Section.RULES);
        List<Answer.Rule> rules =
                page.report().chosen().map(page.lookup()::rulesOf).orElse(List.of());
        if (rules.isEmpty()) {
            page.paragraph("None.");
        } else {
            page.table("rules", "id", "rule", "basis and sources");
            for (Answer.Rule rule : rules) {
                Markup m = page.markup();
                m.open("tr").element("th", rule.id(), "scope", "row");
                m.open("td").text(rule.title());
                if (!rule.note().isEmpty()) {
                    m.element("div", rule.note(), "class", "formula");
                }
                m.close().open("td").text(rule.basis());
                String cited = page.lookup().cited(rule);
                if (!cited.isEmpty()) {
                    m.text("; " + cited);
                }
                if (!rule.since().isEmpty()) {
                    m.text("; since " + rule.since());
                }
                m.close().close();
            }
            page.endTable();
        }
        page.end();
    }

    void writeSources() {
        page.section(Section.SOURCES);
        if (page.answer().sources().isEmpty()) {
            page.paragraph("No rule or value of this answer cites a source.");
        } else {
            page.table("sources", "id", "title", "place");
            page.answer()
                    .sources()
                    .forEach(s -> page.row(
                            s.id(),
                            s.title() + " (" + s.year() + ")",
                            s.locator() + (s.seen() ? "" : "; cited from memory")));
            page.endTable();
        }
        page.end();
    }

    /** Lines to sign on: the program releases nothing. */
    void writeSignatures() {
        page.markup().open("section", "id", Section.SIGN.id(), "class", "keep");
        page.markup().element("h2", Section.SIGN.title());
        page.paragraph("Whoever signs has read the cautions and vouches for what was given, not for the program.");
        page.table("signatures", "", "name", "date", "signature");
        List.of("prepared", "checked", "released").forEach(step -> page.row(step, "", "", ""));
        page.endTable();
        page.note("Answer " + page.report().hash());
        page.end();
    }
}
