package org.washwright.editing.kept;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.washwright.access.SignedInBrowser;

@QuarkusTest
class KeptCaseTest {

    @Test
    void one_action_keeps_an_answer_as_a_case_that_reads_and_holds() throws IOException {
        String task = as("engineer")
                .contentType("application/yaml")
                .body(Files.readAllBytes(Path.of("demo-data/tasks/steel-clips.yaml")))
                .post("/api/tasks")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        String answer = as("engineer")
                .contentType("application/json")
                .body("{}")
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        as("engineer")
                .contentType("application/json")
                .post("/api/assessments/" + answer + "/case")
                .then()
                .statusCode(403);
        JsonPath put = as("consultant")
                .contentType("application/json")
                .post("/api/assessments/" + answer + "/case")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath();
        String draft = put.getString("draft");
        String text = as("consultant")
                .get("/api/editions/" + draft + "/files/" + put.getString("file"))
                .then()
                .statusCode(200)
                .body(containsString("proposes:"))
                .extract()
                .asString();
        as("consultant")
                .get("/api/editions/" + draft)
                .then()
                .body("errors", equalTo(0))
                .body("state", equalTo("draft"));

        SignedInBrowser consultant = SignedInBrowser.as("consultant");
        String page = "/tasks/" + task + "/assessments/" + answer;
        consultant.request().get(page).then().body(containsString("Keep as a case"));
        String second = consultant
                .post(page, page + "/case", Map.of())
                .then()
                .statusCode(303)
                .extract()
                .header("Location");
        assertTrue(second.contains("/rulebooks/" + draft + "/text?file=cases/"), second);
        assertNotEquals(put.getString("file"), second.substring(second.indexOf("cases/")), "a file of its own");

        String id = text.lines()
                .filter(line -> line.startsWith("  - id: "))
                .findFirst()
                .orElseThrow()
                .substring(8);
        JsonPath ran = as("consultant")
                .contentType("application/json")
                .post("/api/editions/" + draft + "/cases")
                .jsonPath();
        assertEquals(Boolean.TRUE, ran.getBoolean("cases.find { it.id == '" + id + "' }.holds"));
    }

    private static RequestSpecification as(String who) {
        return given().spec(SignedInBrowser.bearer(who));
    }
}
