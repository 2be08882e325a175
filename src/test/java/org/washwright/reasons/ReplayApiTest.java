package org.washwright.reasons;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;

/** A replay over REST and on its page, held against the answer it is of. */
@QuarkusTest
class ReplayApiTest {

    @Inject
    OtherWorkspace others;

    private String task;
    private String id;

    @BeforeEach
    void answered() throws IOException {
        others.inDemo("reader", Roles.TRAINEE);
        task = as("engineer")
                .contentType("application/yaml")
                .body(Files.readAllBytes(Path.of("demo-data/tasks/bearing-rings.yaml")))
                .post("/api/tasks")
                .path("id");
        id = as("engineer")
                .contentType("application/json")
                .body("{\"asOf\": \"2026-11-25\"}")
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static RequestSpecification as(String account) {
        return given().spec(SignedInBrowser.bearer(account));
    }

    @Test
    void its_parts_put_together_are_the_whole_and_tell_every_firing_of_the_answer() throws IOException {
        JsonNode answer = new ObjectMapper()
                .readTree(as("reader").get("/api/assessments/" + id).asString());
        List<Integer> told = new ArrayList<>();
        RequestSpecification reader = as("reader");
        int from = 1;
        int total = Integer.MAX_VALUE;
        int known = 0;
        while (from <= total) {
            JsonNode part = new ObjectMapper()
                    .readTree(given().spec(reader)
                            .get("/api/assessments/" + id + "/replay?size=400&from=" + from)
                            .asString());
            total = part.get("total").asInt();
            assertEquals(known, part.get("knownBefore").asInt());
            known = part.get("knownAfter").asInt();
            for (JsonNode step : part.get("steps")) {
                if (step.get("firing").asInt() > 0) {
                    told.add(step.get("firing").asInt());
                }
                from++;
            }
        }
        assertEquals(answer.get("firings").size(), told.size());
        int facts = 0;
        for (JsonNode fact : answer.get("facts")) {
            facts += 1 + fact.get("attributes").size();
        }
        assertEquals(facts, known);
    }

    @Test
    void the_story_of_one_process_is_short_carries_a_tag_and_ends_with_its_status_and_place() {
        String address = "/api/assessments/" + id + "/replay?process=mild-alkaline-ultrasonic";
        Response story = as("reader").get(address);
        story.then()
                .statusCode(200)
                .body("process", equalTo("mild-alkaline-ultrasonic"))
                .body("total", greaterThan(20))
                .body("steps[-1].id", equalTo("ranking"))
                .body("steps[-2].id", equalTo("status/mild-alkaline-ultrasonic"));
        as("reader")
                .header("If-None-Match", story.header("ETag"))
                .get(address)
                .then()
                .statusCode(304);
    }

    @Test
    void what_is_not_there_or_no_number_is_refused_with_all_errors_at_once() {
        as("reader")
                .get("/api/assessments/" + id + "/replay?process=no-such")
                .then()
                .statusCode(404);
        as("reader")
                .get("/api/assessments/" + id + "/replay?from=0&size=many")
                .then()
                .statusCode(422)
                .contentType("application/problem+json")
                .body("errors", hasSize(2));
        as("reader")
                .get("/tasks/" + id + "/assessments/" + id + "/replay")
                .then()
                .statusCode(404);
    }

    @Test
    void the_page_shows_the_step_that_its_address_names_and_leads_to_its_neighbours() {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String page = "/tasks/" + task + "/assessments/" + id + "/replay";
        browser.request()
                .get(page + "?process=acid-pickling&step=2")
                .then()
                .statusCode(200)
                .body(containsString("Acid pickling: ruled out, told in "))
                .body(containsString("process=acid-pickling&amp;step=3"))
                .body(containsString("process=acid-pickling&amp;step=1"));
        Response beyond = browser.request().get(page + "?step=99999");
        beyond.then().statusCode(422).body(containsString("There is no step “99999”"));
        assertTrue(beyond.asString().contains("role=\"alert\""));
        browser.request()
                .get("/tasks/" + task + "/assessments/" + id)
                .then()
                .body(containsString(page + "\">Replay</a>"));
    }
}
