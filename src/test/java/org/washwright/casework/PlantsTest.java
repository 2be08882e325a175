package org.washwright.casework;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;

/** Plants over REST and on their pages. What is expected follows from the files of the demo, worked by hand where it is a number. */
@QuarkusTest
class PlantsTest {
    private static final String YAML = "application/yaml";
    private static final Path LINE = Path.of("demo-data/plants/two-chamber-line.yaml");
    private static final Path TITANIUM = Path.of("demo-data/tasks/titanium-brackets.yaml");
    private static final Path FRAME = Path.of("demo-data/tasks/welded-frame.yaml");

    @Inject
    OtherWorkspace others;

    @BeforeEach
    void people() {
        others.inDemo("reader", Roles.TRAINEE);
    }

    private static RequestSpecification as(String account) {
        return given().spec(SignedInBrowser.bearer(account));
    }

    private static String keep(String address, Path file) throws IOException {
        return as("engineer")
                .contentType(YAML)
                .body(Files.readAllBytes(file))
                .post(address)
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static Response load(String plant, Object body) {
        return as("engineer").contentType(ContentType.JSON).body(body).post("/api/plants/" + plant + "/load");
    }

    @Test
    void a_plant_is_kept_read_changed_under_its_tag_and_deleted() throws IOException {
        String id = keep("/api/plants", LINE);
        Response read = as("reader").get("/api/plants/" + id);
        read.then()
                .statusCode(200)
                .body("name", equalTo("Two-chamber aqueous line, hall 2"))
                .body("plant.process", equalTo("neutral-ultrasonic"));
        assertEquals(
                Files.readString(LINE),
                as("reader").get("/api/plants/" + id + "/document").asString());
        as("reader").get("/api/plants").then().statusCode(200).body("items.id", hasItem(id));
        String other = Files.readString(LINE).replace("hours: 80 h", "hours: 120 h");
        RequestSpecification engineer = as("engineer").contentType(YAML).body(other.getBytes(StandardCharsets.UTF_8));
        engineer.put("/api/plants/" + id).then().statusCode(428);
        String tag = read.header("ETag");
        as("engineer")
                .contentType(YAML)
                .header("If-Match", tag)
                .body(other.getBytes(StandardCharsets.UTF_8))
                .put("/api/plants/" + id)
                .then()
                .statusCode(200)
                .body("plant.hours", equalTo("120 h"));
        as("engineer")
                .header("If-Match", tag)
                .delete("/api/plants/" + id)
                .then()
                .statusCode(412);
        String now = as("engineer").get("/api/plants/" + id).header("ETag");
        as("reader").header("If-Match", now).delete("/api/plants/" + id).then().statusCode(403);
        as("engineer")
                .header("If-Match", now)
                .delete("/api/plants/" + id)
                .then()
                .statusCode(204);
        as("engineer").get("/api/plants/" + id).then().statusCode(404);
    }

    @Test
    void a_wrong_plant_is_refused_with_every_error_and_its_place() {
        as("engineer")
                .contentType(YAML)
                .body("name: X\nprocess: aqueous\nstages: [rinze]\nsettings:\n  main: {temperature: 60}\nhours: 300 h\n"
                        .getBytes(StandardCharsets.UTF_8))
                .post("/api/plants")
                .then()
                .statusCode(422)
                .contentType("application/problem+json")
                .body("errors.pointer", equalTo(List.of("/process", "/stages/0", "/hours")))
                .body("errors[1].advice", containsString("Did you mean"));
        as("reader")
                .contentType(YAML)
                .body("name: X".getBytes(StandardCharsets.UTF_8))
                .post("/api/plants")
                .then()
                .statusCode(403);
    }

    @Test
    void kept_and_inline_tasks_are_held_against_a_kept_and_an_inline_plant_alike() throws IOException {
        String plant = keep("/api/plants", LINE);
        String titanium = keep("/api/tasks", TITANIUM);
        Map<String, Object> frame =
                as("engineer").get("/api/tasks/" + keep("/api/tasks", FRAME)).path("task");
        Map<String, Object> body = new HashMap<>(Map.of(
                "tasks",
                List.of(Map.of("id", titanium, "partsPerWeek", 660), Map.of("task", frame)),
                "asOf",
                "2026-11-25"));
        Response kept = load(plant, body);
        kept.then()
                .statusCode(200)
                .body("tasks.verdict", equalTo(List.of("serves", "does not serve")))
                .body("tasks[0].load.partsFrom", equalTo("given"))
                // Worked by hand: 60 000 cm² ÷ 900 cm² = 66 parts in a load, so ten loads of 660 parts; the dryer holds
                // each for the middle of 3..6 min and 0.5 min; 10 × 5 min ÷ 60 ÷ 0.85 = 0.980392 h.
                .body("tasks[0].load.loads.low", equalTo(10.0f))
                .body("tasks[0].load.hours.low", equalTo(0.98039216f))
                .body("tasks[1].load", equalTo(null))
                .body("tasks[1].blocks.rules.flatten()", hasItem("GE-03"))
                .body("week.order.fits", equalTo(List.of("fits")));
        body.put("plant", as("engineer").get("/api/plants/" + plant).path("plant"));
        Response inline = as("reader").contentType(ContentType.JSON).body(body).post("/api/plants/load");
        inline.then().statusCode(200);
        assertEquals(kept.asString(), inline.asString());
    }

    @Test
    void errors_of_a_set_come_all_at_once_with_their_places() throws IOException {
        String plant = keep("/api/plants", LINE);
        load(
                        plant,
                        "{\"tasks\": [{\"id\": \"00000000-0000-0000-0000-000000000000\"}, {}, {\"task\": {\"title\": \"X\","
                                + " \"part\": {\"mass\": \"2 mm\"}}, \"partsPerWeek\": \"many\"}], \"asOf\": \"soon\"}")
                .then()
                .statusCode(422)
                .contentType("application/problem+json")
                .body("errors.pointer", hasItem("/tasks/0/id"))
                .body("errors.pointer", hasItem("/tasks/1"))
                .body("errors.pointer", hasItem("/tasks/2/task/part/mass"))
                .body("errors.pointer", hasItem("/tasks/2/partsPerWeek"))
                .body("errors.pointer", hasItem("/asOf"));
        load(plant, "{}").then().statusCode(422);
        as("engineer")
                .contentType(ContentType.JSON)
                .body("{\"tasks\": []}")
                .post("/api/plants/load")
                .then()
                .statusCode(422);
        load("00000000-0000-0000-0000-000000000000", "{\"tasks\": []}").then().statusCode(404);
        load(plant, "{\"tasks\": []}").then().statusCode(200).body("week.needs.high", equalTo(0.0f));
    }

    // ---- The pages.

    @Test
    void the_form_keeps_a_plant_says_what_is_wrong_beside_its_field_and_changes_it() {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        Map<String, String> form = new LinkedHashMap<>();
        form.put("do", "save");
        form.put("/name", "Typed plant");
        form.put("/process", "neutral-spray");
        form.put("stages-known", "yes");
        form.put("/stages", "rinse");
        form.put("/settings/main/temperature", "warm");
        form.put("/hours", "40 h");
        browser.post("/plants/new", "/plants/new", form)
                .then()
                .statusCode(422)
                .body(containsString("id=\"/settings/main/temperature-error\""))
                .body(containsString("value=\"warm\""))
                .body(containsString("href=\"#/settings/main/temperature\""));
        form.put("/settings/main/temperature", "50..60 °C");
        String made = browser.post("/plants/new", "/plants/new", form)
                .then()
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]+", "");
        browser.request().get(made).then().statusCode(200).body(containsString("temperature 50 to 60 °C"));
        browser.request().get(made + "/file.yaml").then().body(containsString("temperature: 50..60 °C"));
        String edit = browser.request().get(made + "/edit").asString();
        assertTrue(edit.contains("value=\"50..60 °C\""));
        form.put("version", "0");
        form.put("/hours", "60 h");
        browser.post(made + "/edit", made + "/edit", form).then().statusCode(303);
        // The version is outdated now; what was typed stays and the reason is told.
        form.put("/hours", "61 h");
        browser.post(made + "/edit", made + "/edit", form)
                .then()
                .statusCode(422)
                .body(containsString("changed this plant since you opened it"))
                .body(containsString("value=\"61 h\""));
        browser.post(made, made + "/delete", Map.of("version", "1")).then().statusCode(303);
        browser.request().get(made).then().statusCode(404);
    }

    @Test
    void a_text_is_brought_in_or_refused_with_its_lines() throws IOException {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String token = browser.formToken("/plants/new");
        browser.request()
                .multiPart("csrf-token", token)
                .multiPart("text", "name: X\nprocess: none-such\n")
                .post("/plants/import")
                .then()
                .statusCode(422)
                .body(containsString("pasted text"))
                .body(containsString("line 2"));
        browser.request()
                .multiPart("csrf-token", token)
                .multiPart("file", "line.yaml", Files.readAllBytes(LINE), YAML)
                .multiPart("text", "")
                .post("/plants/import")
                .then()
                .statusCode(303);
    }

    @Test
    void the_page_judges_the_tasks_of_its_address_in_the_turn_given() throws IOException {
        String plant = keep("/api/plants", LINE);
        String titanium = keep("/api/tasks", TITANIUM);
        String frame = keep("/api/tasks", FRAME);
        String query = "/plants/" + plant + "?task=" + frame + "&task=" + titanium + "&turn-" + titanium + "=1&parts-"
                + titanium + "=660";
        String page = SignedInBrowser.as("reader")
                .request()
                .get(query)
                .then()
                .statusCode(200)
                .body(containsString("Of 2 tasks it serves 1 and can&#39;t serve 1."))
                .body(containsString("class=\"week-bar\""))
                .body(not(containsString("/edit\"")))
                .extract()
                .asString();
        assertTrue(page.indexOf("Titanium brackets") < page.indexOf("Welded frames"), page);
        SignedInBrowser.as("reader")
                .request()
                .get("/plants/" + plant + "?task=" + titanium + "&parts-" + titanium + "=plenty")
                .then()
                .statusCode(200)
                .body(containsString("aria-invalid=\"true\""));
    }

    @Test
    void a_line_of_an_answer_fills_the_form_of_a_planned_plant() throws IOException {
        String task = keep("/api/tasks", TITANIUM);
        String assessment = as("engineer")
                .contentType(ContentType.JSON)
                .body("{}")
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String address = "/plants/new?assessment=" + assessment + "&process=";
        String page = browser.request()
                .get(address + "neutral-ultrasonic")
                .then()
                .statusCode(200)
                .extract()
                .asString();
        assertTrue(page.contains("Planned: neutral immersion with ultrasonics for Titanium brackets"));
        assertTrue(page.contains("value=\"50 kg\""), "the basket of the edition");
        browser.request().get(address + "none-such").then().statusCode(404);
    }

    @Test
    void a_plant_of_another_workspace_is_not_there() throws IOException {
        String plant = keep("/api/plants", LINE);
        others.withPerson("over-there", "visitor");
        as("visitor").get("/api/plants/" + plant).then().statusCode(404);
    }
}
