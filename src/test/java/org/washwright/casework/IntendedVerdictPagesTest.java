package org.washwright.casework;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.washwright.access.SignedInBrowser;

/** The verdict on an intended process as a program reads it and as a page shows it. */
@QuarkusTest
class IntendedVerdictPagesTest {

    private record Kept(String task, String answer) {}

    private static Kept kept(String intended) throws IOException {
        String yaml = Files.readString(Path.of("demo-data/tasks/bearing-rings.yaml")) + intended;
        var spec = SignedInBrowser.bearer("engineer");
        String task = given().spec(spec)
                .contentType("application/yaml")
                .body(yaml.getBytes(StandardCharsets.UTF_8))
                .post("/api/tasks")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        String answer = given().spec(spec)
                .contentType("application/json")
                .body("{\"asOf\":\"2026-01-01\"}")
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        return new Kept(task, answer);
    }

    private static ValidatableResponse answer(Kept kept) {
        return given().spec(SignedInBrowser.bearer("engineer"))
                .get("/api/assessments/" + kept.answer())
                .then()
                .statusCode(200);
    }

    private static ValidatableResponse page(Kept kept, String more) {
        return SignedInBrowser.as("engineer")
                .request()
                .get("/tasks/" + kept.task() + "/assessments/" + kept.answer() + more)
                .then()
                .statusCode(200);
    }

    @Test
    void a_process_that_is_out_is_said_to_be_so_with_its_reasons_and_the_first_candidate() throws IOException {
        Kept kept = kept("intended: {process: acid-pickling, rest: not applicable}\n");
        List<String> reasons = answer(kept)
                .body("intended.verdict", equalTo("does not fit"))
                .body("intended.process", equalTo("acid-pickling"))
                .body("intended.rank", nullValue())
                .extract()
                .path("intended.reasons.text");
        assertTrue(!reasons.isEmpty());
        String first = answer(kept).extract().path("candidates[0].name");
        answer(kept).body("intended.first.name", equalTo(first));
        page(kept, "")
                .body(containsString("The intended process"))
                .body(containsString("Acid pickling does not fit because:"))
                .body(containsString("First of those that may clean it"));
        page(kept, "/trace").body(containsString("The intended process"));
    }

    @Test
    void a_temperature_outside_the_window_is_said_to_be_moved() throws IOException {
        // The starter runs neutral spray at 45 to 70 °C (a trade figure of its catalogue).
        Kept kept = kept("intended: {process: neutral-spray, temperature: 95 °C, rest: not applicable}\n");
        answer(kept).body("intended.verdict", equalTo("fits if")).body("intended.settings.state", hasItem("outside"));
        page(kept, "").body(containsString("temperature 95 °C: keep it ")).body(containsString("place "));
    }

    @Test
    void a_task_that_names_none_has_no_section() throws IOException {
        Kept kept = kept("");
        answer(kept).body("containsKey('intended')", equalTo(false));
        page(kept, "").body(not(containsString("The intended process")));
    }
}
