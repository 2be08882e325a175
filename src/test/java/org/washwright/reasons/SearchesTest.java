package org.washwright.reasons;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.washwright.access.SignedInBrowser;

/** Searches over kept answers by REST and on their pages. What is found follows from the demo tasks; see the tests of the core. */
@QuarkusTest
class SearchesTest {
    private static final Path ZINC = Path.of("demo-data/tasks/zinc-housings.yaml");
    private static final Path CLIPS = Path.of("demo-data/tasks/steel-clips.yaml");
    private static final int TRIES = 200;

    private static RequestSpecification engineer() {
        return given().spec(SignedInBrowser.bearer("engineer"));
    }

    /** Keeps a task and has it answered; the task's id, then the answer's. */
    private static List<String> answered(Path file) throws IOException {
        String task = engineer()
                .contentType("application/yaml")
                .body(Files.readAllBytes(file))
                .post("/api/tasks")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        String answer = engineer()
                .contentType(ContentType.JSON)
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        return List.of(task, answer);
    }

    /** Asks until the search is over; each time but the last it says how far it is. */
    private static Response over(String address) throws InterruptedException {
        Response response = engineer().get(address);
        for (int i = 0; i < TRIES && response.statusCode() == 202; i++) {
            response.then().header("Retry-After", equalTo("2")).body("of", greaterThan(0));
            Thread.sleep(500);
            response = engineer().get(address);
        }
        return response;
    }

    @Test
    void a_program_asks_what_brings_a_process_in_and_holds_the_result() throws Exception {
        List<String> ids = answered(ZINC);
        String address = "/api/assessments/" + ids.get(1) + "/changes?goal=bring-in&process=chlorinated-vapour&most=2";
        Response found = over(address);
        found.then()
                .statusCode(200)
                .body("process", equalTo("chlorinated-vapour"))
                .body("proposals.changes.flatten().pointer", equalTo(List.of("/permittedSolvents/0/solventClass")))
                .body(
                        "proposals[0].changes[0].steps",
                        equalTo(List.of("/permittedSolvents/0/solventClass=chlorinated")))
                .body("proposals[0].effort", equalTo("SITE"))
                .body("search.complete", equalTo(true));
        engineer()
                .header("If-None-Match", found.header("ETag"))
                .get(address)
                .then()
                .statusCode(304);
    }

    @Test
    void what_is_wrong_with_a_question_is_told_all_at_once() throws IOException {
        String id = answered(ZINC).get(1);
        engineer()
                .get("/api/assessments/" + id + "/changes?goal=improve&process=none-such&free=soils,part&most=7")
                .then()
                .statusCode(422)
                .contentType("application/problem+json")
                .body("errors.pointer", equalTo(List.of("goal", "free", "most")));
        engineer()
                .get("/api/assessments/" + id + "/changes?goal=first&process=none-such")
                .then()
                .statusCode(422)
                .body("errors.pointer", equalTo(List.of("process")));
        engineer()
                .get("/api/assessments/00000000-0000-0000-0000-000000000000/changes?goal=displace-first")
                .then()
                .statusCode(404);
    }

    @Test
    void a_program_asks_what_to_find_out() throws Exception {
        String id = answered(CLIPS).get(1);
        over("/api/assessments/" + id + "/find-out")
                .then()
                .statusCode(200)
                .body("matters.pointer", equalTo(List.of("/materials/0/hardness")))
                .body("matters[0].outcomes.pointer", everyItem(equalTo("/materials/0/hardness")))
                .body("assumption", containsString("equally likely"))
                .body("notTried", equalTo(List.of()));
    }

    @Test
    void the_pages_hold_the_same_and_lead_to_trying_it() throws Exception {
        List<String> ids = answered(ZINC);
        String page = "/tasks/" + ids.get(0) + "/assessments/" + ids.get(1);
        over("/api/assessments/" + ids.get(1) + "/changes?goal=bring-in&process=chlorinated-vapour");
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        browser.request()
                .get(page)
                .then()
                .statusCode(200)
                .body(containsString(page + "/changes"))
                .body(containsString(page + "/find-out"));
        browser.request().get(page + "/changes").then().statusCode(200).body(containsString("What is to change?"));
        browser.request()
                .get(page + "/changes?goal=bring-in&process=chlorinated-vapour")
                .then()
                .statusCode(200)
                .body(containsString("One more permitted solvent class"))
                .body(containsString("/what-if?set=%2FpermittedSolvents%2F0%2FsolventClass%3Dchlorinated"))
                .body(not(containsString("hx-trigger=\"load")));
        browser.request()
                .get(page + "/changes?goal=improve")
                .then()
                .statusCode(422)
                .body(containsString("is no goal"));
    }

    @Test
    void both_are_described_for_programs() {
        String paths = given().get("/q/openapi?format=json").asString();
        assertEquals(
                List.of(true, true),
                List.of(
                        paths.contains("/api/assessments/{id}/changes"),
                        paths.contains("/api/assessments/{id}/find-out")));
    }
}
