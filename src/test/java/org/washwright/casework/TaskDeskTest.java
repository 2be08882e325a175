package org.washwright.casework;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;
import org.washwright.taskfile.TaskFormat;

/** Drafts, copies, remembered units, files in and out, and what the form says of what is not known. */
@QuarkusTest
class TaskDeskTest {
    private static final Path CLIPS = Path.of("demo-data/tasks/steel-clips.yaml");

    @Inject
    DataSource database;

    @Inject
    OtherWorkspace others;

    @Test
    void a_draft_keeps_what_was_typed_right_or_wrong_is_listed_goes_on_and_becomes_a_task() throws SQLException {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        long before = tasks();
        Map<String, String> typed = Map.of(
                "do",
                "draft",
                "title",
                "Half a task",
                "materials.0.hardness",
                "about thirty",
                "materials.0.row",
                "yes",
                "part.mass",
                "3",
                "part.mass.unit",
                "furlong",
                "notes",
                "x".repeat(5000));
        String draft = location(browser.post("/tasks/new", "/tasks/new", typed)).replaceFirst("\\?.*", "");
        assertTrue(draft.startsWith("/tasks/drafts/"), draft);
        browser.request().get("/tasks").then().body(containsString("Half a task"));
        Response kept = browser.request().get(draft);
        kept.then()
                .statusCode(200)
                .body("**.find { it.@id == 'materials.0.hardness' }.@value", equalTo("about thirty"))
                .body("**.find { it.@id == 'part.mass' }.@value", equalTo("3"))
                .body(containsString("furlong"))
                .body(containsString("x".repeat(5000)));
        assertEquals(before, tasks());

        Map<String, String> refused = new LinkedHashMap<>(typed);
        refused.put("do", "save");
        browser.post(draft, draft, refused).then().statusCode(422).body(containsString("action=\"" + draft + "\""));
        browser.post(draft, draft, Map.of("do", "save", "title", "A whole task"))
                .then()
                .statusCode(303);
        assertEquals(before + 1, tasks());
        browser.request().get(draft).then().statusCode(404);
    }

    @Test
    void a_draft_is_seen_by_its_author_alone_and_goes_when_it_is_deleted() {
        others.inDemo("colleague", Roles.ENGINEER);
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String draft = location(browser.post("/tasks/new", "/tasks/new", Map.of("do", "draft", "title", "Mine alone")))
                .replaceFirst("\\?.*", "");
        SignedInBrowser other = SignedInBrowser.as("colleague");
        other.request().get(draft).then().statusCode(404);
        other.request().get("/tasks").then().body(not(containsString("Mine alone")));
        other.post("/tasks", draft, Map.of("do", "discard")).then().statusCode(404);
        browser.post("/tasks", draft, Map.of("do", "discard")).then().statusCode(303);
        browser.request().get(draft).then().statusCode(404);
    }

    @Test
    void a_draft_of_a_change_changes_its_task_and_not_one_that_was_changed_since() {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String task = location(browser.post("/tasks/new", "/tasks/new", Map.of("do", "save", "title", "One")));
        String edit = task + "/edit";
        String draft = location(browser.post(edit, edit, Map.of("do", "draft", "title", "Two", "version", "0")))
                .replaceFirst("\\?.*", "");
        browser.post(edit, edit, Map.of("do", "save", "title", "Three", "version", "0"))
                .then()
                .statusCode(303);
        browser.post(draft, draft, Map.of("do", "save", "title", "Two")).then().statusCode(412);
        browser.request().get(draft).then().statusCode(200).body(containsString("value=\"Two\""));
        browser.request().get(task).then().body(containsString("Three"));
    }

    @Test
    void a_task_is_copied_into_a_new_form_and_nothing_is_stored_before_it_is_saved() throws Exception {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String id = imported("application/yaml", Files.readAllBytes(CLIPS)).path("tasks[0].id");
        long before = tasks();
        browser.request()
                .get("/tasks/new?from=" + id)
                .then()
                .statusCode(200)
                .body(containsString("value=\"Copy of "))
                .body(containsString("action=\"/tasks/new\""))
                .body("**.find { it.@id == 'materials.0.hardness' }.@value", equalTo("30..40"));
        assertEquals(before, tasks());
    }

    @Test
    void the_unit_typed_last_is_offered_next_time_to_the_same_person_and_values_stay_as_given() {
        others.inDemo("imperial", Roles.ENGINEER);
        SignedInBrowser browser = SignedInBrowser.as("imperial");
        String task = location(browser.post(
                "/tasks/new",
                "/tasks/new",
                Map.of("do", "save", "title", "In pounds", "part.mass", "2", "part.mass.unit", "lb")));
        browser.request().get("/tasks/new").then().body(containsString("<option value=\"lb\" selected>"));
        browser.request()
                .get(task + "/edit")
                .then()
                .body("**.find { it.@id == 'part.mass' }.@value", equalTo("2"))
                .body(containsString("<option value=\"lb\" selected>"));
        SignedInBrowser.as("engineer")
                .request()
                .get("/tasks/new")
                .then()
                .body(not(containsString("<option value=\"lb\" selected>")));
    }

    @ParameterizedTest
    @EnumSource(TaskFormat.class)
    void a_task_taken_out_as_a_file_and_brought_in_again_gets_the_same_answer(TaskFormat format) throws IOException {
        String id = imported("application/yaml", Files.readAllBytes(CLIPS)).path("tasks[0].id");
        byte[] file = as("reviewer")
                .get("/api/tasks/" + id + "/file?format=" + format.ending())
                .then()
                .statusCode(200)
                .header("Content-Disposition", containsString("." + format.ending() + "\""))
                .extract()
                .asByteArray();
        String again = imported(format.mediaType(), file).path("tasks[0].id");
        assertEquals(answer(id), answer(again));
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String token = browser.formToken("/tasks");
        browser.request()
                .multiPart("csrf-token", token)
                .multiPart("file", "clips." + format.ending(), file)
                .post("/tasks/import")
                .then()
                .statusCode(303)
                .header("Location", containsString("/tasks/"));
        browser.request()
                .get("/tasks/" + id + "/file." + format.ending())
                .then()
                .statusCode(200);
        browser.request()
                .get("/tasks/template." + format.ending())
                .then()
                .statusCode(200)
                .header("Content-Disposition", containsString("cleaning-task"));
    }

    @Test
    void a_table_with_one_wrong_row_is_refused_whole_with_its_cells() throws SQLException {
        long before = tasks();
        String table = "title,part/mass,part/rate\nA,12 g,100 1/h\nB,heavy,fast\n,1 g,\n";
        imported("text/csv", table.getBytes(StandardCharsets.UTF_8))
                .then()
                .statusCode(422)
                .body("errors.size()", equalTo(3))
                .body("errors[0].line", equalTo(3))
                .body("errors[0].column", equalTo(2))
                .body("errors[2].code", equalTo("no-title"));
        assertEquals(before, tasks());
        imported("text/csv", "title\nA\nB\n".getBytes(StandardCharsets.UTF_8))
                .then()
                .statusCode(201)
                .body("tasks.title", equalTo(List.of("A", "B")));
        assertEquals(before + 2, tasks());
    }

    @Test
    void a_file_of_another_kind_is_told_what_would_do() {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        browser.request()
                .multiPart("csrf-token", browser.formToken("/tasks"))
                .multiPart("file", "clips.doc", "title: x".getBytes(StandardCharsets.UTF_8))
                .post("/tasks/import")
                .then()
                .statusCode(422)
                .body(containsString(".xlsx"));
        as("engineer").get("/api/task-template?format=doc").then().statusCode(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"title: Nothing known", "title: Nothing known\nmaterials: [{}]\nsoils: [unknown]\npart: unknown"
            })
    void a_task_of_which_nothing_is_known_is_answered_by_what_to_find_out_first(String yaml) {
        String id = imported("application/yaml", yaml.getBytes(StandardCharsets.UTF_8))
                .path("tasks[0].id");
        Response made =
                as("engineer").contentType("application/json").body("").post("/api/tasks/" + id + "/assessments");
        String assessment = made.then().statusCode(201).extract().path("id");
        as("engineer")
                .get("/api/assessments/" + assessment)
                .then()
                .body("questions.size()", not(equalTo(0)))
                .body("candidates.findAll { it.status == 'recommended' }.size()", equalTo(0));
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        browser.request()
                .get("/tasks/" + id + "/assessments/" + assessment)
                .then()
                .statusCode(200)
                .body(containsString("Find out first"));
        browser.request()
                .get("/tasks/" + id + "/edit")
                .then()
                .statusCode(200)
                .body(containsString("Find out first"))
                .body(containsString("Decides whether "));
    }

    @Test
    void the_form_says_of_each_field_what_hangs_on_it_as_the_task_stands_and_folds_away_what_does_not_matter() {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        Map<String, String> steel = new LinkedHashMap<>(Map.of(
                "do",
                "look",
                "title",
                "x",
                "materials.0.substrate",
                "carbon-steel",
                "following.operation",
                "electroplating"));
        browser.post("/tasks/new", "/tasks/new", steel)
                .then()
                .statusCode(200)
                .body("**.find { it.@id == 'materials.0.hardness-note' }", containsString("acid pickling"))
                .body("**.find { it.@'data-fold' == 'materials.0' }.@open.toString()", not(equalTo("")));
        steel.put("materials.0.substrate", "brass");
        browser.post("/tasks/new", "/tasks/new", steel)
                .then()
                .body("**.find { it.@id == 'materials.0.hardness-note' }", containsString("Not needed unless"));
        steel.put("materials.0.hardness", "nonsense");
        browser.post("/tasks/new", "/tasks/new", steel)
                .then()
                .statusCode(200)
                .body(containsString("Find out first"))
                .body("**.find { it.@id == 'materials.0.hardness' }.@value", equalTo("nonsense"));
    }

    private static String location(Response response) {
        String location = response.then().statusCode(303).extract().header("Location");
        return java.net.URI.create(location).getPath()
                + (location.contains("?") ? location.substring(location.indexOf('?')) : "");
    }

    private static Response imported(String type, byte[] file) {
        return as("engineer").contentType(type).body(file).post("/api/tasks/import");
    }

    private static String answer(String task) {
        return as("engineer")
                .contentType("application/json")
                .body("{\"asOf\":\"2026-01-01\"}")
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(201)
                .extract()
                .header("Washwright-Answer-Hash");
    }

    private static final Map<String, RequestSpecification> TOKENS = new java.util.concurrent.ConcurrentHashMap<>();

    private static RequestSpecification as(String who) {
        return given().spec(TOKENS.computeIfAbsent(who, SignedInBrowser::bearer));
    }

    private long tasks() throws SQLException {
        try (Connection connection = database.getConnection();
                Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("SELECT count(*) FROM cleaning_task")) {
            result.next();
            return result.getLong(1);
        }
    }
}
