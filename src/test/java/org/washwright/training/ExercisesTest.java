package org.washwright.training;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;

/** Exercises over REST and on their pages. What is expected follows from the answer that the exercise was made from. */
@QuarkusTest
class ExercisesTest {

    /** In the answer to the bearing rings: the first, a conditional one if any, one that is out. */
    private static final String FIRST = "mild-alkaline-ultrasonic";

    private static final String OUT = "acid-pickling";

    @Inject
    OtherWorkspace others;

    private static String assessment;

    @BeforeEach
    void answered() throws IOException {
        others.inDemo("apprentice", Roles.TRAINEE);
        others.inDemo("second-apprentice", Roles.TRAINEE);
        if (assessment == null) {
            String task = as("engineer")
                    .contentType("application/yaml")
                    .body(Files.readAllBytes(Path.of("demo-data/tasks/bearing-rings.yaml")))
                    .post("/api/tasks")
                    .path("id");
            assessment = as("engineer")
                    .contentType(ContentType.JSON)
                    .body("{\"asOf\": \"2026-11-25\"}")
                    .post("/api/tasks/" + task + "/assessments")
                    .then()
                    .statusCode(201)
                    .extract()
                    .path("id");
        }
    }

    private static RequestSpecification as(String account) {
        return given().spec(SignedInBrowser.bearer(account)).contentType(ContentType.JSON);
    }

    private static String set(Map<String, Object> more) {
        Map<String, Object> body = new HashMap<>(Map.of("assessment", assessment, "title", "Rings"));
        body.putAll(more);
        return as("reviewer")
                .body(body)
                .post("/api/exercises")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static Map<String, Object> guess(String process, String status, List<String> reasons) {
        return Map.of("process", process, "status", status, "reasons", reasons, "words", "as I learnt it");
    }

    @Test
    void a_trainee_predicts_and_learns_what_was_right_missed_and_in_vain() {
        String id = set(Map.of("processes", List.of(FIRST, OUT), "due", "2026-12-24"));
        List<String> offered = as("apprentice")
                .get("/api/exercises/" + id)
                .then()
                .statusCode(200)
                .body("due", equalTo("2026-12-24"))
                .body("tries", equalTo(0))
                .body("processes.process", equalTo(List.of(OUT, FIRST)))
                .extract()
                .path("processes.find { it.process == '" + OUT + "' }.choices.rule");
        Response made = as("apprentice")
                .body(Map.of(
                        "first",
                        FIRST,
                        "predictions",
                        List.of(guess(FIRST, "recommended", List.of()), guess(OUT, "conditional", offered))))
                .post("/api/exercises/" + id + "/tries");
        made.then()
                .statusCode(201)
                .body("feedback.statuses", equalTo(1))
                .body("feedback.statusesOf", equalTo(2))
                .body("feedback.firstRight", equalTo(true))
                .body("feedback.processes[0].actual", equalTo("ruled out"))
                .body("feedback.processes[0].missed", hasSize(0))
                .body("feedback.processes[1].right", hasSize(0))
                .body("feedback.processes[0].inVain.whyNot", everyItem(not(equalTo(""))))
                .body("feedback.processes[0].words", equalTo("as I learnt it"));
        int right = made.path("feedback.processes[0].right.size()");
        int vain = made.path("feedback.inVain");
        assertTrue(right > 0 && vain >= 3);
        assertEquals(offered.size(), right + vain);
        as("apprentice").get("/api/exercises/" + id).then().body("tries", equalTo(1));
    }

    @Test
    void an_exercise_tells_a_trainee_nothing_of_its_answer_before_a_prediction_is_in() {
        String id = set(Map.of());
        String body = as("apprentice")
                .get("/api/exercises/" + id)
                .then()
                .statusCode(200)
                .extract()
                .asString();
        String list = as("apprentice").get("/api/exercises?size=200").asString();
        SignedInBrowser browser = SignedInBrowser.as("apprentice");
        String page = browser.request().get("/exercises/" + id).asString();
        List<Map<String, Object>> out =
                as("engineer").get("/api/assessments/" + assessment).path("ruledOut");
        List<String> sentences = new ArrayList<>();
        out.forEach(r -> {
            @SuppressWarnings("unchecked")
            List<Map<String, Object>> reasons = (List<Map<String, Object>>) r.get("reasons");
            reasons.forEach(s -> sentences.add((String) s.get("text")));
        });
        String headline = as("engineer").get("/api/assessments/" + assessment).path("headline.sentence");
        assertFalse(sentences.isEmpty());
        assertTrue(page.contains("Judge 8 processes for this task"));
        assertTrue(list.contains(id));
        for (String seen : List.of(body, list)) {
            assertFalse(seen.contains("\"status\"") || seen.contains("\"firings\""));
        }
        for (String seen : List.of(body, list, page)) {
            assertFalse(seen.contains(assessment), "the answer is not even named");
            assertFalse(seen.contains(headline));
            sentences.forEach(s -> assertFalse(seen.contains(s), s));
        }
        // On the page every process offers all three statuses alike, and none is chosen.
        assertFalse(page.contains(" checked>"));
        as("apprentice")
                .get("/api/exercises/" + id + "/tries")
                .then()
                .statusCode(200)
                .body("items", hasSize(0));
        as("apprentice").get("/api/exercises/" + id).then().body("assessment", nullValue());
        as("engineer").get("/api/exercises/" + id).then().body("assessment", equalTo(assessment));
    }

    @Test
    void everybody_sees_own_tries_and_a_trainer_sees_all_and_what_is_missed_most() {
        String id = set(Map.of("processes", List.of(FIRST)));
        Map<String, Object> nothing =
                Map.of("first", "none", "predictions", List.of(guess(FIRST, "ruled out", List.of())));
        String mine = as("apprentice")
                .body(nothing)
                .post("/api/exercises/" + id + "/tries")
                .path("id");
        as("apprentice")
                .body(nothing)
                .post("/api/exercises/" + id + "/tries")
                .then()
                .statusCode(201);
        String other = as("second-apprentice")
                .body(nothing)
                .post("/api/exercises/" + id + "/tries")
                .path("id");
        as("apprentice")
                .get("/api/exercises/" + id + "/tries")
                .then()
                .body("items.by", equalTo(List.of("apprentice", "apprentice")));
        as("apprentice").get("/api/exercises/" + id + "/tries/" + mine).then().statusCode(200);
        as("apprentice").get("/api/exercises/" + id + "/tries/" + other).then().statusCode(404);
        as("apprentice").get("/api/exercises/" + id + "/results").then().statusCode(403);
        as("engineer").get("/api/exercises/" + id + "/tries").then().body("items", hasSize(3));
        as("engineer")
                .get("/api/exercises/" + id + "/results")
                .then()
                .statusCode(200)
                .body("tries", equalTo(3))
                .body("people.person", equalTo(List.of("second-apprentice", "apprentice")))
                .body("missed.missed", everyItem(equalTo(3)))
                .body("statuses[0].wrong", equalTo(3));
    }

    @Test
    void only_trainers_set_exercises_and_other_workspaces_see_none() {
        Map<String, Object> body = Map.of("assessment", assessment, "title", "Rings");
        as("apprentice").body(body).post("/api/exercises").then().statusCode(403);
        as("administrator").body(body).post("/api/exercises").then().statusCode(403);
        for (String trainer : List.of("consultant", "reviewer", "engineer")) {
            as(trainer).body(body).post("/api/exercises").then().statusCode(201);
        }
        String id = set(Map.of());
        others.withPerson("exercise-elsewhere", "exercise-stranger");
        as("exercise-stranger").get("/api/exercises/" + id).then().statusCode(404);
        as("exercise-stranger").body(body).post("/api/exercises").then().statusCode(404);
        as("exercise-stranger")
                .body(Map.of())
                .post("/api/exercises/" + id + "/tries")
                .then()
                .statusCode(404);
        as("apprentice").get("/api/exercises?size=200").then().body("items.id", hasItem(id));
    }

    @Test
    void wrong_input_is_refused_with_every_error_at_once() {
        as("engineer")
                .body(Map.of("assessment", assessment, "due", "soon", "processes", List.of("no-such"), "seed", "x"))
                .post("/api/exercises")
                .then()
                .statusCode(422)
                .contentType("application/problem+json")
                .body("errors.pointer", equalTo(List.of("/seed", "/title", "/due")));
        as("engineer")
                .body(Map.of("assessment", assessment, "title", "T", "processes", List.of("no-such", "nor-this")))
                .post("/api/exercises")
                .then()
                .statusCode(422)
                .body("errors.value", equalTo(List.of("no-such", "nor-this")));
        String id = set(Map.of("processes", List.of(FIRST, OUT)));
        as("apprentice")
                .body(Map.of("first", "x", "predictions", List.of(guess(FIRST, "forbidden", List.of("no-such-rule")))))
                .post("/api/exercises/" + id + "/tries")
                .then()
                .statusCode(422)
                .body("errors", hasSize(4));
        as("apprentice").get("/api/exercises/" + id + "/tries").then().body("items", hasSize(0));
    }

    @Test
    void on_the_page_nothing_typed_is_lost_and_a_good_try_leads_to_its_feedback() {
        String id = set(Map.of("processes", List.of(FIRST, OUT)));
        SignedInBrowser browser = SignedInBrowser.as("apprentice");
        String page = "/exercises/" + id;
        Map<String, String> fields = new LinkedHashMap<>(Map.of("first", FIRST, "status." + OUT, "ruled out"));
        fields.put("words." + OUT, "acid & hydrogen");
        browser.post(page, page, fields)
                .then()
                .statusCode(422)
                .body(containsString("What becomes of mild alkaline immersion with ultrasonics is not said."))
                .body(containsString("acid &amp; hydrogen"))
                .body(containsString("name=\"status." + OUT + "\" value=\"ruled out\" checked"))
                .body(containsString("value=\"" + FIRST + "\" selected"));
        fields.put("status." + FIRST, "recommended");
        Response good = browser.post(page, page, fields);
        good.then().statusCode(303);
        browser.request()
                .get(good.header("Location"))
                .then()
                .statusCode(200)
                .body(containsString("2 of 2 statuses, 0 of "))
                .body(containsString("acid &amp; hydrogen"))
                .body(containsString("/trace#firing-"));
        browser.request().get(page + "/results").then().statusCode(403);
        browser.request().get("/exercises/new?assessment=" + assessment).then().statusCode(403);
    }

    @Test
    void a_trainer_sets_an_exercise_on_its_page_and_sees_errors_beside_the_fields() {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String page = "/exercises/new?assessment=" + assessment;
        browser.request().get(page).then().statusCode(200).body(containsString("checked"));
        browser.post(page, page, Map.of("/title", "", "/due", "soon", "/instruction", "Mind the oil"))
                .then()
                .statusCode(422)
                .body(containsString("The exercise has no title."))
                .body(containsString("This is no day."))
                .body(containsString("Mind the oil"));
        Response made = browser.post(page, page, Map.of("/title", "Oil on rings", "/processes", FIRST));
        made.then().statusCode(303);
        browser.request()
                .get(made.header("Location"))
                .then()
                .statusCode(200)
                .body(containsString("Oil on rings"))
                .body(containsString("Judge 1 process for this task"));
        String from = as("engineer")
                .get("/api/assessments/" + assessment + "/envelope")
                .path("taskId");
        browser.request()
                .get("/tasks/" + from + "/assessments/" + assessment + "/exercise")
                .then()
                .statusCode(303);
    }
}
