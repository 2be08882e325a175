package org.washwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Factor;
import org.washwright.assessment.Answer.Sentence;
import org.washwright.assessment.Design;
import org.xml.sax.InputSource;

class ReportHtmlTest {

    private static final Report DESIGNED = Answers.designed("bearing-rings");

    @ParameterizedTest
    @ValueSource(strings = {"bearing-rings", "steel-clips", "contract-shop", "titanium-brackets"})
    void every_form_of_the_report_is_well_formed_xml(String task) throws Exception {
        Report report = Answers.designed(task);
        for (String text : List.of(ReportHtml.page(report), ReportHtml.file(report), ReportHtml.paper(report))) {
            assertEquals("html", parsed(text).getDocumentElement().getTagName());
        }
    }

    @Test
    void the_paper_holds_the_whole_of_the_answer_on_its_line() throws Exception {
        String text = text(ReportHtml.page(DESIGNED));
        Answer answer = DESIGNED.answer();
        Answer.Candidate line = DESIGNED.chosen().orElseThrow();
        List<String> expected = new ArrayList<>(List.of(
                DESIGNED.title(),
                DESIGNED.notes(),
                DESIGNED.hash(),
                answer.requestHash(),
                answer.request().meaningHash(),
                answer.request().textHash(),
                answer.request().asOf(),
                answer.request().edition(),
                answer.headline().sentence(),
                answer.headline().summary(),
                "prepared",
                "checked",
                "released",
                "safety data sheet",
                "Local codes",
                "competent, licensed person"));
        line.cautions().forEach(s -> expected.add(s.text()));
        answer.cautions().forEach(s -> expected.add(s.text()));
        answer.questions().forEach(q -> expected.add(q.question()));
        answer.verifications().forEach(s -> expected.add(s.text()));
        answer.ruledOut().forEach(out -> out.reasons().forEach(s -> expected.add(s.text())));
        line.stages().forEach(s -> s.factors().forEach(f -> expected.add(f.words())));
        line.stages().forEach(s -> s.windows().forEach(w -> expected.add(w.text())));
        answer.sources().forEach(s -> expected.add(s.title()));
        answer.figures().forEach(k -> expected.addAll(List.of(k.label(), "= " + k.formula(), k.holds(), k.source())));
        answer.inputs().forEach(i -> expected.addAll(List.of(i.label(), i.value(), i.source())));
        Design design = line.design().orElseThrow();
        design.figures().forEach(f -> expected.add(f.text()));
        design.figures().forEach(f -> expected.addAll(f.warnings()));
        design.control().forEach(c -> expected.addAll(List.of(c.measure(), c.limits(), c.every(), c.how())));
        design.proofs().forEach(p -> expected.addAll(List.of(p.sees(), p.acceptance(), p.sampling(), p.blindTo())));
        design.balances().forEach(b -> b.out().forEach(f -> expected.add(f.name())));
        for (String part : expected) {
            assertTrue(text.contains(part.replaceAll("\\s+", " ")), "missing: " + part);
        }
        String lower = text.toLowerCase(java.util.Locale.ROOT);
        answer.candidates().forEach(c -> assertTrue(lower.contains(c.name()), c.name()));
        answer.ruledOut().forEach(c -> assertTrue(lower.contains(c.name()), c.name()));
        assertTrue(text.contains("0.21 \u20AC/kWh changed for this request"), "the changed assumption is not marked");
        assertFalse(text.contains("0.85 changed"), "an assumption is marked that nobody changed");
    }

    @Test
    void cautions_stand_before_anything_that_one_could_build_by() {
        String page = ReportHtml.page(DESIGNED);
        int care = page.indexOf("id=\"" + Section.CARE.id() + "\"");
        assertTrue(care > 0);
        for (Section section : List.of(Section.LINE, Section.FIGURES, Section.COST, Section.CONTROL)) {
            assertTrue(page.indexOf("id=\"" + section.id() + "\"") > care, section.title());
        }
    }

    @Test
    void what_an_unknown_figure_needs_stands_before_the_figures() throws Exception {
        String text = text(ReportHtml.page(DESIGNED));
        int need = text.indexOf("thinnest wall, the part \u2013 without it: carried over");
        assertTrue(need > 0 && need < text.indexOf("The whole line at a glance"), text.substring(Math.max(0, need)));
    }

    /** Nobody can be asked for an area an hour: it is made of parts an hour and the area of one. */
    @Test
    void what_was_computed_is_asked_for_by_what_it_is_made_of() throws Exception {
        Report report = Answers.plain("contract-shop");
        Design design = report.design().orElseThrow();
        Missing missing = new Missing(design, new Lookup(report.answer()));
        Design.Figure carried = design.figures().stream()
                .filter(f -> Missing.isUnknown(f) && f.inputs().contains("part/areaPerHour"))
                .findFirst()
                .orElseThrow();
        assertTrue(missing.of(carried).containsAll(List.of("parts an hour, the part", "wetted area, the part")));
        String text = text(ReportHtml.page(report));
        assertTrue(text.contains("wetted area, the part \u2013 without it:"));
        assertFalse(text.contains("area an hour, the part \u2013 without it"));
    }

    @Test
    void a_line_that_the_edition_gives_nothing_to_size_by_says_so() throws Exception {
        Report plain = Answers.of(
                "Rings", "", withDesign(Answers.plain("bearing-rings").answer(), Optional.empty()));
        String text = text(ReportHtml.page(plain));
        assertTrue(text.contains(FiguresPart.NOTHING_TO_SIZE_BY));
        assertTrue(text.contains("gives nothing to draw up a balance by"));
        assertFalse(ReportHtml.page(plain).contains("id=\"" + Section.FORMULAS.id() + "\""));
    }

    @Test
    void a_task_that_nothing_may_clean_gets_a_report_that_says_why() throws Exception {
        Answer nothing = Answers.withoutCandidates(DESIGNED.answer());
        String text = text(ReportHtml.page(Answers.of("Rings", "", nothing)));
        assertTrue(text.contains("No process may clean this task as it is described."));
        for (Answer.RuledOut out : nothing.ruledOut()) {
            for (Sentence reason : out.reasons()) {
                assertTrue(text.contains(reason.text()), reason.text());
            }
        }
    }

    @Test
    void a_line_that_does_not_stand_first_says_which_one_does() throws Exception {
        Answer answer = DESIGNED.answer();
        Answer.Candidate second = answer.candidates().get(1);
        Report report = Report.of("Rings", "", DESIGNED.hash(), answer, second.process())
                .orElseThrow();
        String text = text(ReportHtml.page(report));
        assertTrue(text.contains("First stands " + answer.candidates().get(0).name()));
        second.cautions().forEach(c -> assertTrue(text.contains(c.text()), c.text()));
        assertTrue(Report.of("Rings", "", DESIGNED.hash(), answer, "no-such").isEmpty());
    }

    @Test
    void what_is_not_known_of_the_task_is_said() throws Exception {
        Report report = Answers.plain("contract-shop");
        String text = text(ReportHtml.page(report));
        long unknown = report.answer().facts().stream()
                .filter(TaskPart::isOfTask)
                .flatMap(f -> f.attributes().stream())
                .filter(a -> TaskPart.isSaid(a) && a.knowledge().equals("unknown"))
                .peek(a -> assertTrue(text.contains(a.label() + "not known"), a.label()))
                .count();
        assertTrue(unknown > 0, "the demo task leaves nothing open; choose another one");
    }

    /** The page is served under a policy that refuses inline style and script and everything from elsewhere. */
    @Test
    void the_served_page_needs_nothing_but_style_sheets_that_come_with_the_program() throws Exception {
        Document page = parsed(ReportHtml.page(DESIGNED));
        NodeList all = page.getElementsByTagName("*");
        List<String> sheets = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            assertFalse(List.of("script", "style", "img", "iframe", "object").contains(element.getTagName()));
            for (int a = 0; a < element.getAttributes().getLength(); a++) {
                String name = element.getAttributes().item(a).getNodeName();
                assertFalse(name.equals("style") || name.startsWith("on") || name.equals("src"), name);
            }
            if (element.getTagName().equals("link")) {
                sheets.add(element.getAttribute("href"));
            } else if (element.hasAttribute("href")) {
                assertTrue(element.getAttribute("href").startsWith("#"), element.getAttribute("href"));
            }
        }
        assertEquals(2, sheets.size());
        for (String sheet : sheets) {
            assertNotNull(getClass().getResource("/META-INF/resources" + sheet), sheet);
        }
        String file = ReportHtml.file(DESIGNED);
        assertFalse(file.contains("<link"));
        assertFalse(
                Pattern.compile("url\\((?!\"data:font/woff2;base64,)")
                        .matcher(file)
                        .find(),
                "a file is left outside");
    }

    @Test
    void every_link_of_the_contents_leads_to_a_section() throws Exception {
        String page = ReportHtml.page(DESIGNED);
        Matcher link = Pattern.compile("href=\"#([^\"]+)\"").matcher(page);
        int found = 0;
        while (link.find()) {
            assertTrue(page.contains("id=\"" + link.group(1) + "\""), link.group(1));
            found++;
        }
        assertEquals(Section.values().length, found);
    }

    /** Control characters are not allowed in XML 1.0 (W3C, section 2.2); overrides of direction are of Unicode Annex 9. */
    @Test
    void hostile_text_is_escaped_and_nothing_of_it_is_lost() throws Exception {
        String word = "W".repeat(400);
        String title = "<script>alert(1)</script> & \"quotes\" 'n' \u0007\u202Eevil\u202C \uD800 " + word
                + " \u0639\u0631\u0628\u0649";
        Report report = Answers.of(title, "]]> <!-- &lt; </style>", DESIGNED.answer());
        for (String form : List.of(ReportHtml.page(report), ReportHtml.file(report), ReportHtml.paper(report))) {
            Document page = parsed(form);
            assertEquals(0, page.getElementsByTagName("script").getLength());
            String text = text(form);
            assertTrue(text.contains(
                    "<script>alert(1)</script> & \"quotes\" 'n' [U+0007][U+202E]evil[U+202C] [U+D800] " + word));
            assertTrue(text.contains("]]> <!-- &lt; </style>"));
        }
        assertTrue(text(ReportHtml.page(report)).contains("\u0639\u0631\u0628\u0649"));
        assertTrue(text(ReportHtml.paper(report)).contains("[U+0639][U+0631][U+0628][U+0649]"));
    }

    /** A quarter of a circle of radius r has the area of pi r^2 / 4, so its area goes with r^2 (Euclid XII.2). */
    @ParameterizedTest
    @ValueSource(doubles = {0.04, 0.25, 0.5, 1})
    void a_quarter_of_the_disc_is_filled_by_area(double share) {
        Markup markup = new Markup(t -> t);
        new Drawings(markup).disc(List.of(new Factor("time", "x", share)), "80");
        Matcher radius = Pattern.compile("A([0-9.]+) ").matcher(markup.finish());
        assertTrue(radius.find());
        double whole = Double.parseDouble(radius.group(1));
        assertTrue(radius.find());
        double filled = Double.parseDouble(radius.group(1));
        assertEquals(share, filled * filled / (whole * whole), 0.002);
    }

    @Test
    void cost_is_drawn_as_one_bar_only_when_its_parts_add_up() throws Exception {
        Design design = DESIGNED.chosen().orElseThrow().design().orElseThrow();
        CostParts cost = CostParts.of(design, new Lookup(DESIGNED.answer())).orElseThrow();
        assertEquals(
                List.of("energy", "chemistry", "people"),
                cost.parts().stream().map(Design.Figure::figure).toList());
        // The middles: 5000, 2000 and 25000 of 32000.
        assertEquals(5.0 / 32, cost.share(cost.parts().get(0)), 1e-12);
        List<Design.Figure> bent = design.figures().stream()
                .map(f -> f.figure().equals("yearly")
                        ? new Design.Figure("yearly", 0, "more", 30000.0, 50000.0, f.inputs(), List.of())
                        : f)
                .toList();
        Design wrong = new Design(bent, List.of(), List.of(), List.of());
        assertTrue(CostParts.of(wrong, new Lookup(DESIGNED.answer())).isEmpty());
    }

    private static Answer withDesign(Answer a, Optional<Design> design) {
        Answer filled = InventedDesign.in(a);
        Answer.Candidate c = filled.candidates().get(0);
        Answer.Candidate bare = new Answer.Candidate(
                c.process(),
                c.name(),
                c.status(),
                c.low(),
                c.high(),
                c.areas(),
                c.stages(),
                c.conditions(),
                c.cautions(),
                design);
        return new Answer(
                a.format(),
                a.request(),
                a.requestHash(),
                a.headline(),
                a.intended(),
                a.facts(),
                a.firings(),
                List.of(bare),
                a.ruledOut(),
                a.cautions(),
                a.questions(),
                a.doubts(),
                a.verifications(),
                a.ranking(),
                List.of(),
                List.of(),
                a.rules(),
                a.sources());
    }

    private static Document parsed(String xhtml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setErrorHandler(null);
        return builder.parse(new InputSource(new StringReader(xhtml)));
    }

    private static String text(String xhtml) throws Exception {
        return parsed(xhtml).getDocumentElement().getTextContent().replaceAll("\\s+", " ");
    }
}
