package org.washwright.report;

import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.assessment.Design.Balance;
import org.washwright.assessment.Design.Figure;
import org.washwright.assessment.Design.Flow;

/** Balances, cost, the control of baths and the plan of proof. */
final class PlanPart {

    private final Page page;

    PlanPart(Page page) {
        this.page = page;
    }

    void writeBalances() {
        page.section(Section.BALANCES);
        List<Balance> balances = page.report().design().map(Design::balances).orElse(List.of());
        if (balances.isEmpty()) {
            page.paragraph(
                    page.report().design().isEmpty()
                            ? "The edition gives nothing to draw up a balance by."
                            : "Too little is known, or nothing flows: there is no balance to draw up.");
        } else {
            page.note("At the middle of every range.");
            balances.forEach(this::balance);
        }
        page.end();
    }

    private void balance(Balance balance) {
        Markup m = page.markup();
        double in = sum(balance.in());
        double out = sum(balance.out());
        double most = Math.max(in, out);
        m.open("div", "class", "keep");
        page.heading(balance.name() + " in " + balance.unit());
        page.table("balance", "flow", "where", "amount", "");
        side("in", balance.in(), in, balance.unit(), most);
        side("out", balance.out(), out, balance.unit(), most);
        page.endTable();
        m.close();
    }

    private void side(String side, List<Flow> flows, double sum, String unit, double most) {
        Markup m = page.markup();
        m.open("tr", "class", "side")
                .element("th", side, "colspan", "4", "scope", "colgroup")
                .close();
        for (Flow flow : flows) {
            m.open("tr").element("th", flow.name(), "scope", "row");
            m.element("td", Lookup.stage(page.report().chosen(), flow.stage()));
            m.element("td", Numerals.three(flow.amount(), unit), "class", "amount")
                    .open("td");
            page.drawings().amount(most > 0 ? flow.amount() / most : 0);
            m.close().close();
        }
        m.open("tr", "class", "sum")
                .element("th", "sum " + side, "scope", "row")
                .element("td", "");
        m.element("td", Numerals.three(sum, unit), "class", "amount")
                .element("td", "")
                .close();
    }

    private static double sum(List<Flow> flows) {
        return flows.stream().mapToDouble(Flow::amount).sum();
    }

    void writeCost() {
        page.section(Section.COST);
        Optional<CostParts> cost = page.report().design().flatMap(d -> CostParts.of(d, page.lookup()));
        if (cost.isEmpty()) {
            page.paragraph("Too little is known of this line's cost to show it by kind.");
        } else {
            cost(cost.get());
        }
        page.end();
    }

    private void cost(CostParts cost) {
        Markup m = page.markup();
        m.open("div", "class", "keep");
        page.note("Shares at the middle of every range. Prices are assumptions of the edition as of "
                + page.answer().request().asOf() + "; put your own in their place.");
        m.open("div", "class", "stacked-frame");
        page.drawings().stacked(cost.parts().stream().map(cost::share).toList());
        m.close();
        page.table("cost", "kind of cost", "amount", "share");
        for (int i = 0; i < cost.parts().size(); i++) {
            Figure part = cost.parts().get(i);
            m.open("tr").open("th", "scope", "row");
            page.drawings().stretch(i);
            m.text(" " + page.lookup().kind(part.figure()).label()).close();
            m.element("td", part.text(), "class", "amount");
            m.element("td", Numerals.percent(cost.share(part)), "class", "amount")
                    .close();
        }
        cost.total()
                .ifPresent(total -> m.open("tr", "class", "sum")
                        .element("th", page.lookup().kind(total.figure()).label(), "scope", "row")
                        .element("td", total.text(), "class", "amount")
                        .element("td", "", "class", "amount")
                        .close());
        page.endTable();
        m.close();
    }

    void writeControl() {
        page.section(Section.CONTROL);
        List<Design.Control> control =
                page.report().design().map(Design::control).orElse(List.of());
        if (control.isEmpty()) {
            page.paragraph("The edition says nothing on what to measure in these baths. Ask the maker of each medium.");
        } else {
            page.table("control", "bath", "measure", "within", "how often", "how, and what to do");
            control.forEach(c -> page.row(
                    Lookup.stage(page.report().chosen(), c.stage()), c.measure(), c.limits(), c.every(), c.how()));
            page.endTable();
        }
        page.end();
    }

    void writeProof() {
        page.section(Section.PROOF);
        List<Design.Proof> proofs = page.report().design().map(Design::proofs).orElse(List.of());
        proofs.forEach(this::proof);
        List<Answer.Sentence> said = page.answer().verifications();
        if (!said.isEmpty()) {
            page.heading("what rules ask to be proven");
            page.sentences(said);
        }
        if (proofs.isEmpty() && said.isEmpty()) {
            page.paragraph("No rule and no demand names a proof. Agree with the customer how cleanliness is proven.");
        }
        page.end();
    }

    private void proof(Design.Proof proof) {
        Markup m = page.markup();
        m.open("div", "class", "keep proof").open("h3").text(Page.sentence(proof.name()));
        if (!proof.enough()) {
            m.element("span", " not enough by itself", "class", "warning-word");
        }
        m.close().open("table", "class", "given").open("tbody");
        fact("proves", proof.sees());
        fact("accepted when", proof.acceptance());
        fact("parts to test", proof.sampling());
        fact("how often", proof.frequency());
        fact("detection limit", proof.limit().isEmpty() ? "the edition states none" : proof.limit());
        fact("can't see", proof.blindTo());
        m.close().close();
        page.ids(proof.firings());
        m.close();
    }

    private void fact(String name, String value) {
        if (!value.isEmpty()) {
            page.row(name, value);
        }
    }
}
