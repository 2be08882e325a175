package org.washwright.reasons;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;

/** Reasons and objections over REST and on their pages. */
@QuarkusTest
class ReasonsTest {
    private static final Path TASK = Path.of("demo-data/tasks/bearing-rings.yaml");

    @Inject
    OtherWorkspace others;

    private String task;
    private String assessment;

    @BeforeEach
    void answered() throws IOException {
        others.inDemo("reader", Roles.TRAINEE);
        task = as("engineer")
                .contentType("application/yaml")
                .body(Files.readAllBytes(TASK))
                .post("/api/tasks")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        assessment = as("engineer")
                .contentType(ContentType.JSON)
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static RequestSpecification as(String account) {
        return given().spec(SignedInBrowser.bearer(account));
    }

    private String api(String rest) {
        return "/api/assessments/" + assessment + rest;
    }

    private String page(String rest) {
        return "/tasks/" + task + "/assessments/" + assessment + rest;
    }

    @Test
    void why_is_told_to_programs_under_a_tag_and_refused_where_nothing_stands() {
        Response why = as("reader").queryParam("of", "/ruledOut/0").get(api("/why"));
        why.then()
                .statusCode(200)
                .body("of", equalTo("/ruledOut/0"))
                .body("things[0].kind", equalTo("said"))
                .body("identity.size()", greaterThan(3));
        as("reader")
                .queryParam("of", "/ruledOut/0")
                .header("If-None-Match", why.header("ETag"))
                .get(api("/why"))
                .then()
                .statusCode(304);
        as("reader").get(api("/why")).then().statusCode(200).body("at", hasItem("/headline"));
        as("reader")
                .queryParam("of", "/nowhere")
                .get(api("/why"))
                .then()
                .statusCode(404)
                .body("detail", containsString("/nowhere"));
        as("reader").queryParam("process", "<b>").get(api("/why")).then().statusCode(404);
    }

    @Test
    void why_not_names_the_conditions_of_rules_and_processes() {
        as("reader")
                .queryParam("process", "acid-pickling")
                .get(api("/why-not"))
                .then()
                .statusCode(200)
                .body("status", equalTo("ruled out"))
                .body("silent.size()", greaterThan(0));
        as("reader")
                .queryParam("rule", "AT-10")
                .get(api("/why-not"))
                .then()
                .statusCode(200)
                .body("rule", equalTo("AT-10"))
                .body("near[0].conditions.size()", greaterThan(0));
        as("reader").get(api("/why-not")).then().statusCode(200).body("size()", greaterThan(3));
        as("reader")
                .queryParam("process", "no-such")
                .get(api("/why-not"))
                .then()
                .statusCode(404);
        as("reader").queryParam("rule", "no-such").get(api("/why-not")).then().statusCode(404);
    }

    @Test
    void the_proof_of_a_kept_answer_holds_and_that_of_a_changed_one_does_not() {
        as("reader").get(api("/proof")).then().statusCode(200).body("holds", equalTo(true));
        String edition = as("reader").get(api("/envelope")).path("editionId");
        String changed = as("reader").get(api("")).asString().replace("\"recommended\"", "\"conditional\"");
        as("reader")
                .contentType(ContentType.JSON)
                .body(changed)
                .post("/api/editions/" + edition + "/proof")
                .then()
                .statusCode(200)
                .body("holds", equalTo(false))
                .body("breaches[0].at", containsString("/status"));
        as("reader")
                .contentType(ContentType.JSON)
                .body("nonsense")
                .post("/api/editions/" + edition + "/proof")
                .then()
                .statusCode(422);
    }

    @Test
    void an_objection_lands_at_its_rule_and_is_answered_by_a_consultant() {
        Map<String, String> mark = Map.of("of", "/ruledOut/0", "because", "We do this every day <script>");
        as("reader")
                .contentType(ContentType.JSON)
                .body(mark)
                .post(api("/marks"))
                .then()
                .statusCode(403);
        Response made = as("engineer").contentType(ContentType.JSON).body(mark).post(api("/marks"));
        made.then().statusCode(201).body("state", equalTo("open")).body("rules.size()", greaterThan(0));
        String id = made.path("id");
        List<String> rules = made.path("rules");
        as("consultant")
                .queryParam("rule", rules.get(0))
                .queryParam("state", "open")
                .get("/api/marks")
                .then()
                .statusCode(200)
                .body("id", hasItem(id));
        String url = "/api/marks/" + id;
        Map<String, String> stands = Map.of("state", "stands", "reply", "");
        String tag = made.header("ETag");
        as("engineer")
                .contentType(ContentType.JSON)
                .header("If-Match", tag)
                .body(stands)
                .put(url)
                .then()
                .statusCode(403);
        as("consultant")
                .contentType(ContentType.JSON)
                .body(stands)
                .put(url)
                .then()
                .statusCode(428);
        as("consultant")
                .contentType(ContentType.JSON)
                .header("If-Match", tag)
                .body(stands)
                .put(url)
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/reply"));
        Map<String, String> settled = Map.of("state", "stands", "reply", "Only below the limit of the hall.");
        as("consultant")
                .contentType(ContentType.JSON)
                .header("If-Match", tag)
                .body(settled)
                .put(url)
                .then()
                .statusCode(200);
        as("consultant")
                .contentType(ContentType.JSON)
                .header("If-Match", tag)
                .body(settled)
                .put(url)
                .then()
                .statusCode(412);
    }

    @Test
    void an_objection_without_words_or_place_is_refused_with_both_errors() {
        as("engineer")
                .contentType(ContentType.JSON)
                .body(Map.of("of", "/nowhere", "because", "  "))
                .post(api("/marks"))
                .then()
                .statusCode(422)
                .body("errors.size()", equalTo(2));
    }

    @Test
    void pages_lead_from_an_answer_to_reasons_and_from_there_to_the_rule() {
        SignedInBrowser engineer = SignedInBrowser.as("engineer");
        String answer = engineer.request().get(page("")).asString();
        assertTrue(answer.contains("/why?of=/headline") && answer.contains("/why-not?process="), answer);
        String why =
                engineer.request().get(page("/why?of=/ruledOut/0/reasons/0")).asString();
        assertTrue(why.contains("Is this reason wrong?") && why.contains("<svg"), why);
        assertEquals(200, engineer.request().get(page("/why")).statusCode());
        assertEquals(404, engineer.request().get(page("/why?of=/nowhere")).statusCode());
        assertEquals(200, engineer.request().get(page("/why-not")).statusCode());
        assertEquals(200, engineer.request().get(page("/proof")).statusCode());
        Map<String, String> empty = new HashMap<>(Map.of("of", "/ruledOut/0/reasons/0", "because", ""));
        String why0 = page("/why?of=/ruledOut/0/reasons/0");
        Response refused = engineer.post(why0, page("/why"), empty);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.asString().contains("Say in a sentence what is wrong with it."), refused.asString());
        empty.put("because", "Not so with us <img src=x>");
        Response kept = engineer.post(why0, page("/why"), empty);
        assertEquals(303, kept.statusCode());
        String marks = SignedInBrowser.as("consultant").request().get("/marks").asString();
        assertTrue(marks.contains("Not so with us &lt;img src=x&gt;"), marks);
    }
}
