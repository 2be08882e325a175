package org.washwright.reasons;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.document.Hashes;
import org.washwright.explain.compare.Comparing;

@QuarkusTest
class CompareTest {
    private static final String YAML = "application/yaml";
    private static final String JSON = "application/json";
    private static final String PROBLEM = "application/problem+json";
    private static final Path CLIPS = Path.of("demo-data/tasks/steel-clips.yaml");
    private static final String PAINTED = "{\"set\":{\"/following/operation\":\"painting\"}}";
    private static final Map<String, RequestSpecification> TOKENS = new ConcurrentHashMap<>();

    @Inject
    OtherWorkspace others;

    @BeforeEach
    void people() {
        others.inDemo("reader", Roles.TRAINEE);
    }

    /** A task and its answer. */
    private record Kept(String task, String assessment) {
        String page() {
            return "/tasks/" + task + "/assessments/" + assessment;
        }
    }

    @Test
    void a_what_if_says_what_moved_keeps_nothing_and_is_what_the_core_says() throws IOException {
        Kept kept = kept(CLIPS);
        int before = assessments(kept.task()).size();
        Response tried =
                as("reader").contentType(JSON).body(PAINTED).post("/api/assessments/" + kept.assessment() + "/what-if");
        tried.then()
                .statusCode(200)
                .body("sentence", startsWith("With "))
                .body("asked.place", equalTo(List.of("/following/operation")))
                .body("rules.title", not(empty()))
                .body("processes.size()", greaterThan(0));
        assertEquals(tried.header("Washwright-Answer-Hash"), tried.path("after.answerHash"));
        assertEquals(hash(kept), tried.path("before.answerHash"));
        assertEquals(before, assessments(kept.task()).size(), "nothing was kept");
    }

    @Test
    void a_variant_is_a_task_of_its_own_in_the_words_of_its_original_and_answers_as_the_what_if_did()
            throws IOException {
        Kept kept = kept(CLIPS);
        String tried = as("engineer")
                .contentType(JSON)
                .body(PAINTED)
                .post("/api/assessments/" + kept.assessment() + "/what-if")
                .path("after.answerHash");
        Response made = as("engineer")
                .contentType(JSON)
                .body("{\"title\":\"Clips, variant: painted\",\"set\":{\"/following/operation\":\"painting\"}}")
                .post("/api/assessments/" + kept.assessment() + "/variants");
        made.then()
                .statusCode(201)
                .body("task.title", equalTo("Clips, variant: painted"))
                .body("task.variantOf", equalTo(kept.task()))
                .body("assessment.answerHash", equalTo(tried))
                .body("comparison.asked.place", hasItem("/following/operation"));
        String variant = made.path("task.id");
        assertTrue(made.header("Location").endsWith("/api/tasks/" + variant));
        String document =
                as("engineer").get("/api/tasks/" + variant + "/document").asString();
        String original = Files.readString(CLIPS);
        // Every quantity of the original that is written with a unit is there letter by letter.
        var quantities = java.util.regex.Pattern.compile("[0-9.]+ (g/m2|cm2|kg|mm|HRC|1/h|m3|mg/m2|g)\\b")
                .matcher(original);
        int found = 0;
        while (quantities.find()) {
            assertTrue(document.contains(quantities.group()), quantities.group() + " in " + document);
            found++;
        }
        assertTrue(found > 3, "the demo task holds quantities");
        String page = SignedInBrowser.as("reader")
                .request()
                .get("/tasks/" + kept.task())
                .asString();
        assertTrue(page.contains("Clips, variant: painted"));
        SignedInBrowser.as("reader")
                .request()
                .get("/tasks/" + variant)
                .then()
                .statusCode(200)
                .body(containsString("A variant of"));
        SignedInBrowser.as("reader")
                .request()
                .get(kept.page() + "/compare-with")
                .then()
                .statusCode(200)
                .body(containsString("Clips, variant: painted"));
    }

    @Test
    void a_variant_of_a_task_that_was_changed_since_is_written_anew_from_what_was_answered() throws IOException {
        Kept kept = kept(CLIPS);
        String changed = Files.readString(CLIPS).replaceFirst("(?m)^title: .*$", "title: Clips, something else now");
        String tag = as("engineer").get("/api/tasks/" + kept.task()).header("ETag");
        as("engineer")
                .contentType(YAML)
                .header("If-Match", tag)
                .body(changed.replaceFirst("(?m)^soils:.*(\\n  .*)*", "soils: unknown")
                        .getBytes(StandardCharsets.UTF_8))
                .put("/api/tasks/" + kept.task())
                .then()
                .statusCode(200);
        Response made = as("engineer")
                .contentType(JSON)
                .body("{\"title\":\"Clips as answered, painted\",\"set\":{\"/following/operation\":\"painting\"}}")
                .post("/api/assessments/" + kept.assessment() + "/variants");
        made.then()
                .statusCode(201)
                .body("comparison.asked.size()", equalTo(1))
                .body("comparison.asked.place", equalTo(List.of("/following/operation")));
    }

    @Test
    void a_comparison_of_kept_answers_is_the_one_of_the_core_byte_for_byte_with_its_tag() throws IOException {
        Kept clips = kept(CLIPS);
        Kept rings = kept(Path.of("demo-data/tasks/bearing-rings.yaml"));
        String url = "/api/assessments/" + clips.assessment() + "/comparison?with=" + rings.assessment();
        Response there = as("reader").get(url);
        there.then().statusCode(200).contentType(JSON);
        byte[] core = Hashes.canonical(Comparing.of(frozen(clips), frozen(rings)));
        assertArrayEquals(core, there.asByteArray());
        as("reader")
                .header("If-None-Match", there.header("ETag"))
                .get(url)
                .then()
                .statusCode(304);
        Response same =
                as("reader").get("/api/assessments/" + clips.assessment() + "/comparison?with=" + clips.assessment());
        same.then().body("sentence", startsWith("Nothing differs")).body("gained", empty());
        String page = SignedInBrowser.as("reader")
                .request()
                .get(clips.page() + "/compare-with/" + rings.assessment())
                .then()
                .statusCode(200)
                .extract()
                .asString();
        assertTrue(page.contains(clips.page() + "/trace#firing-"));
        assertTrue(page.contains(rings.page() + "/trace#firing-"));
    }

    @Test
    void what_can_not_be_compared_is_said_to_be_missing() throws IOException {
        Kept kept = kept(CLIPS);
        String url = "/api/assessments/" + kept.assessment() + "/comparison";
        as("reader").get(url).then().statusCode(422).contentType(PROBLEM);
        as("reader")
                .get(url + "?with=" + UUID.randomUUID())
                .then()
                .statusCode(404)
                .contentType(PROBLEM);
        as("reader").get(url + "?with=nonsense").then().statusCode(404);
        SignedInBrowser.as("reader")
                .request()
                .get("/tasks/" + UUID.randomUUID() + "/assessments/" + kept.assessment() + "/what-if")
                .then()
                .statusCode(404);
    }

    @Test
    void answers_of_another_workspace_are_not_there() throws IOException {
        Kept kept = kept(CLIPS);
        others.withPerson("over-there", "visitor");
        String api = "/api/assessments/" + kept.assessment();
        as("visitor").get(api + "/comparison?with=" + kept.assessment()).then().statusCode(404);
        as("visitor")
                .contentType(JSON)
                .body(PAINTED)
                .post(api + "/what-if")
                .then()
                .statusCode(404);
        as("visitor")
                .contentType(JSON)
                .body("{\"title\":\"Theirs\",\"set\":{\"/following/operation\":\"painting\"}}")
                .post(api + "/variants")
                .then()
                .statusCode(404);
        SignedInBrowser browser = SignedInBrowser.as("visitor");
        for (String page : List.of("/what-if", "/compare-with", "/compare-with/" + kept.assessment())) {
            browser.request().get(kept.page() + page).then().statusCode(404);
        }
    }

    @Test
    void everything_wrong_with_changes_is_told_at_once_and_nothing_is_kept() throws IOException {
        Kept kept = kept(CLIPS);
        Map<String, Object> set = new LinkedHashMap<>();
        set.put("/part/mass", "heavy");
        set.put("/part/areaPerHour", "3 m2/h");
        set.put("/no/such", "1");
        set.put("/soils/20/kind", "cutting-oil");
        set.put("/following/operation", "<script>alert(1)</script>");
        Response refused = as("engineer")
                .contentType(JSON)
                .body(Map.of("title", "x", "set", set))
                .post("/api/assessments/" + kept.assessment() + "/variants");
        refused.then()
                .statusCode(422)
                .contentType(PROBLEM)
                .body("errors.size()", equalTo(5))
                .body("errors.code", hasItem("change-computed"))
                .body("errors.code", hasItem("unknown-term"));
        Map<String, Object> many = new HashMap<>();
        for (int i = 0; i < 500; i++) {
            many.put("/attributes/a" + i, "yes");
        }
        as("engineer")
                .contentType(JSON)
                .body(Map.of("set", many))
                .post("/api/assessments/" + kept.assessment() + "/what-if")
                .then()
                .statusCode(422)
                .body("errors.code", equalTo(List.of("changes-too-many")));
        for (String body : List.of("", "[]", "{}", "{\"set\":3}", "{\"sets\":{}}", "{\"set\":{\"/part\":{}}}")) {
            as("engineer")
                    .contentType(JSON)
                    .body(body)
                    .post("/api/assessments/" + kept.assessment() + "/what-if")
                    .then()
                    .statusCode(422)
                    .contentType(PROBLEM);
        }
        as("engineer")
                .contentType(JSON)
                .body("{\"title\":\" \",\"set\":{\"/following/operation\":\"painting\"}}")
                .post("/api/assessments/" + kept.assessment() + "/variants")
                .then()
                .statusCode(422);
        assertEquals(
                List.of(),
                as("engineer")
                        .get("/api/tasks?size=200")
                        .path("items.findAll { it.variantOf == '" + kept.task() + "' }"));
    }

    @Test
    void a_reader_tries_but_keeps_nothing_and_others_see_nothing() throws IOException {
        Kept kept = kept(CLIPS);
        as("reader")
                .contentType(JSON)
                .body("{\"title\":\"x\",\"set\":{\"/following/operation\":\"painting\"}}")
                .post("/api/assessments/" + kept.assessment() + "/variants")
                .then()
                .statusCode(403);
        given().get("/api/assessments/" + kept.assessment() + "/comparison?with=" + kept.assessment())
                .then()
                .statusCode(401);
        String page = SignedInBrowser.as("reader")
                .request()
                .urlEncodingEnabled(false)
                .get(kept.page() + "/what-if?set=" + encoded("/following/operation=painting"))
                .then()
                .statusCode(200)
                .extract()
                .asString();
        assertTrue(page.contains("What moved, and why"));
        assertTrue(!page.contains("Keep it as a variant"));
    }

    @Test
    void the_link_to_a_what_if_shows_it_and_the_form_leads_to_the_link() throws IOException {
        Kept kept = kept(CLIPS);
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String whatIf = kept.page() + "/what-if";
        Map<String, String> form = new LinkedHashMap<>();
        form.put("do", "try");
        form.put("change", "part.mass");
        form.put("part.mass", "2");
        form.put("part.mass.unit", "kg");
        Response sent = browser.post(whatIf, whatIf, form);
        sent.then().statusCode(303);
        assertTrue(sent.header("Location").endsWith("?set=" + encoded("/part/mass=2 kg")), sent.header("Location"));
        browser.request()
                .urlEncodingEnabled(false)
                .get(sent.header("Location"))
                .then()
                .statusCode(200)
                .body(containsString("value=\"/part/mass=2 kg\""))
                .body(containsString("Who stands where"));
        form.put("part.mass", "heavy");
        browser.post(whatIf, whatIf, form)
                .then()
                .statusCode(422)
                .body(containsString("id=\"part.mass-error\""))
                .body(containsString("value=\"heavy\""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "nonsense",
                "/no/such=1",
                "/part/areaPerHour=3 m2/h",
                "/soils/20/kind=cutting-oil",
                "/following/operation=<script>alert(1)</script>",
                "/soils/0/amount=5 parsec",
                "=",
                "/<img src=x>=\"'><b>",
            })
    void a_link_that_can_not_be_answered_says_why_and_shows_no_markup_of_its_own(String set) throws IOException {
        Kept kept = kept(CLIPS);
        String page = SignedInBrowser.as("reader")
                .request()
                .urlEncodingEnabled(false)
                .get(kept.page() + "/what-if?set=" + encoded(set))
                .then()
                .statusCode(422)
                .extract()
                .asString();
        assertTrue(page.contains("needs another look"), page);
        assertTrue(!page.contains("<script>alert") && !page.contains("<img src=x"), "typed markup is text");
    }

    @Test
    void a_link_with_too_many_changes_is_refused_in_one_sentence_and_one_with_hundreds_is_too_long()
            throws IOException {
        Kept kept = kept(CLIPS);
        String query = String.join("&", Collections.nCopies(60, "set=" + encoded("/part/mass=1 kg")));
        SignedInBrowser.as("reader")
                .request()
                .urlEncodingEnabled(false)
                .get(kept.page() + "/what-if?" + String.join("&", Collections.nCopies(4, query)))
                .then()
                .statusCode(414);
        SignedInBrowser.as("reader")
                .request()
                .urlEncodingEnabled(false)
                .get(kept.page() + "/what-if?" + query)
                .then()
                .statusCode(422)
                .body(containsString("at most 50 are allowed"));
    }

    @Test
    void changes_too_long_for_a_link_are_shown_all_the_same() throws IOException {
        Kept kept = kept(CLIPS);
        Map<String, Object> form = new LinkedHashMap<>();
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        form.put("csrf-token", browser.formToken(kept.page() + "/what-if"));
        form.put("do", "try");
        form.put("change", "part.mass");
        form.put("part.mass", "2 kg");
        form.put(
                "set",
                java.util.stream.IntStream.range(0, 20)
                        .mapToObj(i -> "/features/" + i + "=[" + "thread, ".repeat(20) + "thread]")
                        .toList());
        browser.request()
                .contentType("application/x-www-form-urlencoded; charset=UTF-8")
                .formParams(form)
                .post(kept.page() + "/what-if")
                .then()
                .statusCode(200)
                .body(containsString("Who stands where"))
                .body(not(containsString("Hand this on")));
    }

    @Test
    void keeping_a_variant_on_the_page_lands_on_the_comparison_and_a_bad_title_keeps_what_was_typed()
            throws IOException {
        Kept kept = kept(CLIPS);
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String whatIf = kept.page() + "/what-if";
        Response made = browser.post(
                whatIf, whatIf + "/keep", Map.of("set", "/following/operation=painting", "title", "Clips, painted"));
        made.then().statusCode(303);
        browser.request()
                .get(made.header("Location"))
                .then()
                .statusCode(200)
                .body(containsString("Two answers compared"))
                .body(containsString("Clips, painted"));
        browser.post(whatIf, whatIf + "/keep", Map.of("set", "/following/operation=painting", "title", ""))
                .then()
                .statusCode(422)
                .body(containsString("The task has no title"))
                .body(containsString("Who stands where"));
        browser.post(whatIf, whatIf + "/keep", Map.of("title", "Without a change"))
                .then()
                .statusCode(422)
                .body(containsString("Nothing is changed"));
    }

    @Test
    void a_task_is_asked_again_by_an_edition_of_choice() throws IOException {
        Kept kept = kept(CLIPS);
        String edition = as("engineer")
                .get("/api/assessments/" + kept.assessment() + "/envelope")
                .path("editionId");
        as("engineer")
                .contentType(JSON)
                .body("{\"asOf\":\"2026-01-01\"}")
                .post("/api/tasks/" + kept.task() + "/assessments?edition=" + edition)
                .then()
                .statusCode(201)
                .body("editionId", equalTo(edition));
        as("engineer")
                .contentType(JSON)
                .body("{}")
                .post("/api/tasks/" + kept.task() + "/assessments?edition=" + UUID.randomUUID())
                .then()
                .statusCode(404);
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String choose = kept.page() + "/compare-with";
        Response again = browser.post(choose, choose, Map.of("edition", edition));
        again.then().statusCode(303);
        browser.request().get(again.header("Location")).then().statusCode(200).body(containsString("Nothing differs"));
        browser.post(choose, choose, Map.of()).then().statusCode(422).body(containsString("No edition is chosen"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static Kept kept(Path file) throws IOException {
        String task = as("engineer")
                .contentType(YAML)
                .body(Files.readAllBytes(file))
                .post("/api/tasks")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        String assessment = as("engineer")
                .contentType(JSON)
                .body("{\"asOf\":\"2026-01-01\"}")
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        return new Kept(task, assessment);
    }

    private static List<Object> assessments(String task) {
        return as("engineer").get("/api/tasks/" + task + "/assessments").path("$");
    }

    private static String hash(Kept kept) {
        return as("engineer")
                .get("/api/assessments/" + kept.assessment() + "/envelope")
                .path("answerHash");
    }

    private static FrozenAnswer frozen(Kept kept) throws IOException {
        return FrozenAnswer.read(
                as("engineer").get("/api/assessments/" + kept.assessment()).asByteArray());
    }

    private static RequestSpecification as(String who) {
        return given().spec(TOKENS.computeIfAbsent(who, SignedInBrowser::bearer));
    }
}
