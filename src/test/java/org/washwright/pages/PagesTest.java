package org.washwright.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import io.quarkus.qute.Engine;
import io.quarkus.qute.Template;
import io.quarkus.qute.Variant;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.assessment.IntendedVerdict;
import org.yaml.snakeyaml.Yaml;

/** Draws every page of an assessment from an invented answer; the pages are left in target/mock to look at. */
class PagesTest {

    private static final Path MOCK = Path.of("target/mock");

    private final Engine engine = Pages.engine();
    private final Answer answer = answer();

    @Test
    void the_assessment_says_its_sentence_and_shows_every_process() throws IOException {
        String page = drawn("assessment", "casework/assessment", Map.of());

        assertTrue(page.contains(answer.headline().sentence()));
        answer.candidates().forEach(candidate -> assertTrue(page.contains(candidate.name()), candidate.name()));
        answer.ruledOut().forEach(out -> assertTrue(page.contains(out.name()), out.name()));
        answer.questions().forEach(question -> assertTrue(page.contains(question.question()), question.question()));
    }

    @Test
    void the_verdict_on_the_intended_process_stands_before_the_line_and_is_indexed_by_the_trace() throws IOException {
        IntendedVerdict verdict = answer.intended().orElseThrow();
        String page = drawn("assessment", "casework/assessment", Map.of());
        String trace = drawn("trace", "casework/trace", Map.of());

        int at = page.indexOf(verdict.text());
        assertTrue(at > page.indexOf(answer.headline().sentence()) && at < page.indexOf("id=\"the-line\""), page);
        assertFalse(verdict.reasons().isEmpty());
        verdict.reasons().forEach(reason -> {
            assertTrue(page.contains(reason.text()), reason.text());
            assertTrue(trace.contains(reason.text()), reason.text());
        });
        assertTrue(page.contains("place 2 of 4, with 61 to 66 points"), page);
        assertTrue(page.contains("Clearly better: <a href=\"processes/"), page);
        assertTrue(page.contains("Settings: 1 outside, 1 not given"), page);
        assertTrue(page.contains("55 to 75 °C"), page);
        assertFalse(drawn("assessment-plain", "casework/assessment", Map.of("answer", withoutIntended()))
                .contains("intended-process"));
    }

    private Answer withoutIntended() {
        return new Answer(
                answer.format(),
                answer.request(),
                answer.requestHash(),
                answer.headline(),
                Optional.empty(),
                answer.facts(),
                answer.firings(),
                answer.candidates(),
                answer.ruledOut(),
                answer.cautions(),
                answer.questions(),
                answer.doubts(),
                answer.verifications(),
                answer.ranking(),
                answer.figures(),
                answer.inputs(),
                answer.rules(),
                answer.sources());
    }

    @Test
    void the_assessment_shows_the_cautions_of_the_task_and_of_every_process_that_stands() throws IOException {
        String page = drawn("assessment", "casework/assessment", Map.of());

        answer.cautions().forEach(caution -> assertTrue(page.contains(caution.text()), caution.text()));
        List<Answer.Sentence> ofProcesses = answer.candidates().stream()
                .flatMap(candidate -> candidate.cautions().stream())
                .toList();
        assertFalse(ofProcesses.isEmpty());
        ofProcesses.forEach(caution -> assertTrue(page.contains(caution.text()), caution.text()));
    }

    @Test
    void every_reason_on_the_assessment_leads_to_a_firing_that_the_trace_shows() throws IOException {
        String assessment = drawn("assessment", "casework/assessment", Map.of());
        String trace = drawn("trace", "casework/trace", Map.of());

        Set<String> wanted = found("href=\"trace#(firing-\\d+)\"", assessment);
        Set<String> shown = found("id=\"(firing-\\d+)\"", trace);
        assertEquals(answer.firings().size(), shown.size());
        assertTrue(shown.containsAll(wanted), wanted + " in " + shown);
        assertFalse(wanted.isEmpty());
    }

    @Test
    void links_within_the_trace_lead_somewhere() throws IOException {
        String trace = drawn("trace", "casework/trace", Map.of());

        Set<String> ids = found("id=\"([^\"]+)\"", trace);
        Set<String> missing = new HashSet<>(found("href=\"#([^\"]+)\"", trace));
        missing.removeAll(ids);
        // A process is a fact of the catalogue; this small answer does not list the attributes of any.
        missing.removeIf(id -> id.startsWith("fact-process/"));
        assertEquals(Set.of(), missing);
    }

    @Test
    void a_process_shows_its_windows_and_who_set_them() throws IOException {
        String page = drawn(
                "candidate",
                "casework/candidate",
                Map.of("candidate", answer.candidates().get(0)));

        assertTrue(page.contains("25 to 40 kHz"));
        assertTrue(page.contains("frequency at most 40 kHz"));
        assertTrue(page.contains("may narrow further"));
        drawn(
                "conditional",
                "casework/candidate",
                Map.of("candidate", answer.candidates().get(2)));
    }

    @Test
    void an_answer_in_which_nothing_stands_still_makes_a_page() throws IOException {
        Answer nothing = new Answer(
                1,
                answer.request(),
                answer.requestHash(),
                new Answer.Headline("No process stands.", "All seven are ruled out.", List.of()),
                Optional.empty(),
                answer.facts(),
                answer.firings(),
                List.of(),
                answer.ruledOut(),
                List.of(),
                List.of(),
                List.of(new Answer.Sentence("EPDM is not nitrided; is the material right?", List.of())),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                answer.rules(),
                answer.sources());

        String page = drawn("nothing", "casework/assessment", Map.of("answer", nothing));

        assertTrue(page.contains("No process stands."));
        assertTrue(page.contains("Look at this again"));
        assertTrue(page.contains("EPDM is not nitrided; is the material right?"));
        assertTrue(page.contains("The safety data sheet, local codes and a competent, licensed person decide."));
    }

    @Test
    void fields_keep_what_was_typed_and_say_what_is_wrong_beside_it() throws IOException {
        String form = """
                {#include layout section='tasks'}{#title}Fields{/title}{#main}<h1>The part</h1>
                {#fieldErrorSummary errors=errors /}
                <form method="post" action="/tasks">{#csrfField /}
                {#taskField f=hardness /}{#taskField f=substrate /}
                <div class="form-actions"><button class="button" type="submit">Save the part</button><a href="/tasks">Leave it</a></div>
                </form>{/main}{/include}
                """;
        Template template = engine.parse(form, Variant.forContentType(Variant.TEXT_HTML), "fields.html");
        String page = kept(
                "fields",
                template.data(Map.of(
                                "errors",
                                List.of(Map.of(
                                        "field", "materials.0.hardness", "text", "Hardness: 62 <HRC is no number.")),
                                "hardness",
                                field("materials.0.hardness", "number", "62 <HRC", "62 <HRC is no number. Write 62."),
                                "substrate",
                                field("materials.0.substrate", "term", "bearing-steel", "")))
                        .render());

        assertTrue(page.contains("value=\"62 &lt;HRC\""));
        assertTrue(page.contains("href=\"#materials.0.hardness\""));
        assertTrue(page.contains("aria-invalid=\"true\""));
        assertTrue(page.contains("value=\"bearing-steel\" selected"));
        assertTrue(page.contains("value=\"brass\" checked"));
        assertTrue(page.contains("id=\"materials.0.substrate-note\""));
    }

    private static Map<String, Object> field(String name, String type, String value, String error) {
        Map<String, Object> field = new HashMap<>(
                Map.of("name", name, "label", "what it is", "question", "What is it?", "type", type, "value", value));
        field.putAll(
                Map.of("unit", "HRC", "units", List.of("HRC", "HV"), "unknown", false, "none", false, "error", error));
        field.putAll(Map.of(
                "terms",
                List.of(
                        Map.of("id", "bearing-steel", "name", "bearing steel", "definition", "Hard.", "also", "100Cr6"),
                        Map.of("id", "brass", "name", "brass", "definition", "Copper with zinc.", "also", "")),
                "any",
                List.of("brass"),
                "tree",
                "",
                "note",
                Map.of("kind", "decides", "text", "Decides whether it may be pickled."),
                "described",
                name + "-help",
                "longList",
                false));
        return field;
    }

    @Test
    void no_page_carries_inline_style_or_script() throws IOException {
        for (String name : List.of("casework/assessment", "casework/trace")) {
            String page = drawn(name.substring(name.indexOf('/') + 1), name, Map.of());
            assertFalse(page.contains("style=\""), name);
            assertFalse(page.contains("<style"), name);
            assertFalse(
                    Pattern.compile("<script(?! src=)|\\son[a-z]+=\"")
                            .matcher(page)
                            .find(),
                    name);
        }
    }

    private String drawn(String file, String template, Map<String, Object> more) throws IOException {
        Map<String, Object> data = new HashMap<>(Map.of(
                "answer", answer,
                "title", "Bearing rings, ground and honed, before assembly",
                "crumb", "Cleaning task 118",
                "chips",
                        List.of(
                                "steel 100Cr6, 62 HRC",
                                "honing oil with fines",
                                "bore 40 mm, one groove",
                                Figures.three(1200) + " an hour",
                                "residue ≤ 20 mg/m²"),
                "traceUrl", "trace",
                "assessmentUrl", "assessment",
                "candidatesUrl", "processes",
                "taskUrl", "task",
                "rulesUrl", "rules"));
        data.putAll(Map.of(
                "firstUrl",
                "processes/first",
                "compareUrl",
                "compare",
                "askUrl",
                "ask",
                "compareError",
                "",
                "assessmentId",
                "a-1"));
        data.putAll(more);
        return kept(file, engine.getTemplate(template).data(data).render());
    }

    private static String kept(String file, String page) throws IOException {
        Files.createDirectories(MOCK);
        Files.writeString(MOCK.resolve(file + ".html"), page);
        return page;
    }

    private static Set<String> found(String pattern, String page) {
        Matcher matcher = Pattern.compile(pattern).matcher(page);
        Set<String> found = new HashSet<>();
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static Answer answer() {
        try (InputStream in = PagesTest.class.getResourceAsStream("bearing-rings.yaml")) {
            return new ObjectMapper().registerModule(new Jdk8Module()).convertValue(new Yaml().load(in), Answer.class);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
