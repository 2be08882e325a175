package org.washwright.rulebook;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.TaskMaker;
import org.washwright.problem.Conflict;
import org.washwright.task.CleaningTask;

/** The way of a draft to a release and of a release out of use; on a small edition, withdrawn at the end of each test. */
@QuarkusTest
class ReviewTest {
    private static final String WORD = "{\"note\":\"read\",\"despite\":\"it has no cases\"}";

    @Inject
    OtherWorkspace others;

    @Inject
    DataSource database;

    @Inject
    Editions editions;

    @BeforeEach
    void people() {
        others.inDemo("author-who-reviews", Roles.CONSULTANT, Roles.REVIEWER);
        others.inDemo("reader", Roles.TRAINEE);
    }

    @Test
    void the_gate_tells_what_is_in_the_way_what_is_open_and_what_is_met() {
        String draft = draft();
        List<String> open = gate(draft).jsonPath().getList("findAll { it.mark == 'open' }.id");
        assertTrue(open.containsAll(List.of("cases", "examination")), open.toString());
        gate(draft)
                .then()
                .body("find { it.id == 'files' }.mark", equalTo("met"))
                .body("find { it.id == 'approval' }.mark", equalTo("at the release"));
        as("consultant")
                .contentType("text/plain")
                .header("If-None-Match", "*")
                .body("rule oops")
                .put("/api/editions/" + draft + "/files/rules/broken.drl")
                .then()
                .statusCode(200);
        gate(draft).then().body("[0].id", equalTo("files")).body("[0].mark", equalTo("in the way"));
    }

    @Test
    void an_open_remark_keeps_an_edition_from_being_released_until_it_is_settled() {
        String draft = draft();
        String at = "/api/editions/" + draft;
        Response remark = json("reviewer", at + "/remarks", "{\"rule\":\"R1\",\"text\":\"Why so hot?\"}");
        remark.then().statusCode(201);
        json("reviewer", at + "/remarks", "{\"text\":\" \"}").then().statusCode(422);
        json("reader", at + "/remarks", "{\"text\":\"me too\"}").then().statusCode(403);
        String asked = step("consultant", at + "/review", tag(draft), "{}").header("ETag");
        step("reviewer", at + "/release", asked, WORD)
                .then()
                .statusCode(422)
                .body("errors.pointer", hasItem("remarks"));
        as("reader").get(at).then().body("state", equalTo("asked for review"));
        String settle = at + "/remarks/" + remark.jsonPath().getString("id") + "/settlement";
        step("consultant", settle, remark.header("ETag"), "{\"note\":\"cooled\"}")
                .then()
                .statusCode(200);
        step("consultant", settle, remark.header("ETag"), "{\"note\":\"again\"}")
                .then()
                .statusCode(412);
        step("reviewer", at + "/release", asked, WORD).then().statusCode(200);
        as("reader")
                .get(at + "/release")
                .then()
                .body("state.unique()", equalTo(List.of("done")))
                .body("step", hasItem("compiled"));
        withdraw(draft);
    }

    @Test
    void whoever_ever_wrote_in_a_draft_neither_approves_nor_releases_it() {
        String draft = draft();
        String at = "/api/editions/" + draft;
        for (String who : List.of("author-who-reviews", "consultant")) {
            as(who).contentType("text/plain")
                    .header("If-None-Match", "*")
                    .body("// by " + who)
                    .put(at + "/files/rules/by-" + who + ".drl")
                    .then()
                    .statusCode(200);
        }
        String asked = step("consultant", at + "/review", tag(draft), "{}").header("ETag");
        step("author-who-reviews", at + "/approval", asked, WORD).then().statusCode(403);
        step("author-who-reviews", at + "/release", asked, WORD).then().statusCode(403);
        SQLException refusal = assertThrows(
                SQLException.class,
                () -> run("UPDATE edition SET state = 'released', number = 998, released_at = now(), released_by ="
                        + " (SELECT account_id FROM edition_writer w WHERE w.edition_id = edition.id"
                        + " AND account_id <> created_by AND account_id <> changed_by)"
                        + " WHERE id = '" + draft + "'"));
        assertTrue(refusal.getMessage().contains("nobody_releases_what_they_wrote"), refusal.getMessage());
        SignedInBrowser.as("author-who-reviews")
                .request()
                .get("/rulebooks/" + draft + "/review")
                .then()
                .body(containsString("Somebody else releases it"));
    }

    @Test
    void an_approval_is_for_the_files_as_they_were_and_a_draft_can_be_given_back() {
        String draft = draft();
        String at = "/api/editions/" + draft;
        String asked = step("consultant", at + "/review", tag(draft), "{}").header("ETag");
        step("reviewer", at + "/approval", asked, "{\"note\":\" \"}").then().statusCode(422);
        String approved = step("reviewer", at + "/approval", asked, WORD)
                .then()
                .statusCode(200)
                .body("approved.by", equalTo("reviewer"))
                .extract()
                .header("ETag");
        gate(draft).then().body("find { it.id == 'approval' }.mark", equalTo("met"));
        String back = step("reviewer", at + "/return", approved, "{}")
                .then()
                .statusCode(200)
                .body("state", equalTo("draft"))
                .extract()
                .header("ETag");
        String again = step("consultant", at + "/review", back, "{}").header("ETag");
        step("reviewer", at + "/approval", again, WORD).then().statusCode(200);
        as("consultant")
                .contentType("text/plain")
                .header("If-None-Match", "*")
                .body("// after all\n")
                .put(at + "/files/rules/after.drl")
                .then()
                .statusCode(200);
        as("reader").get(at).then().body("state", equalTo("draft")).body("approved", equalTo(null));
    }

    @Test
    void a_withdrawn_edition_answers_no_new_tasks_and_stays_readable() throws SQLException {
        String before = as("reader").get("/api/editions?size=100").jsonPath().getString("items.find { it.starter }.id");
        String draft = draft();
        String at = "/api/editions/" + draft;
        String asked = step("consultant", at + "/review", tag(draft), "{}").header("ETag");
        String released = step("reviewer", at + "/release", asked, WORD).header("ETag");
        as("reader").get(at).then().body("despite", equalTo("it has no cases")).body("released.note", equalTo("read"));
        step("reviewer", at + "/withdrawal", released, "{\"note\":\"\"}").then().statusCode(422);
        step("consultant", at + "/withdrawal", released, WORD).then().statusCode(403);
        step("reviewer", at + "/withdrawal", released, "{\"note\":\"too hot\"}")
                .then()
                .statusCode(200)
                .body("state", equalTo("withdrawn"))
                .body("withdrawn.note", equalTo("too hot"));
        as("reader").get(at + "/rules").then().statusCode(200);
        as("reader").get(at + "/bundle").then().statusCode(200);
        SignedInBrowser.as("reader")
                .request()
                .get("/rulebooks/" + draft)
                .then()
                .body(containsString("Withdrawn: it answers no new tasks"));
        SignedInBrowser.as("reader")
                .request()
                .get("/rulebooks")
                .then()
                .body(containsString("answers new tasks"), not(containsString(draft + "\"><b>Small</b></a> answers")));
        String now = tag(draft);
        step("reviewer", at + "/withdrawal", now, WORD).then().statusCode(409);
        step("reviewer", at + "/release", now, WORD).then().statusCode(409);
        for (String change : List.of(
                "UPDATE edition SET withdrawn_reason = 'fine after all' WHERE id = '" + draft + "'",
                "UPDATE edition SET state = 'released', withdrawn_at = NULL, withdrawn_reason = NULL WHERE id = '"
                        + draft + "'",
                "DELETE FROM edition_file WHERE edition_id = '" + draft + "'")) {
            assertEquals(
                    "23000",
                    assertThrows(SQLException.class, () -> run(change), change).getSQLState(),
                    change);
        }
        assertTrue(!before.isEmpty());
    }

    @Test
    void work_in_flight_ends_on_the_edition_that_it_began_with() throws Exception {
        String draft = draft();
        String at = "/api/editions/" + draft;
        String asked = step("consultant", at + "/review", tag(draft), "{}").header("ETag");
        String hash = step("reviewer", at + "/release", asked, WORD).jsonPath().getString("textHash");
        UUID workspace = others.demo();
        Assessor begun = editions.assessor(workspace, UUID.fromString(draft));
        withdraw(draft);
        assertThrows(Conflict.class, () -> editions.assessor(workspace, UUID.fromString(draft)), "no new work");
        CleaningTask task = new TaskMaker(new Random(1), begun.edition()).task();
        Answer answer = begun.assess(task, Wishes.on("2026-11-28")).answer();
        assertEquals(hash, answer.request().textHash());
    }

    private void withdraw(String edition) {
        step("reviewer", "/api/editions/" + edition + "/withdrawal", tag(edition), "{\"note\":\"end of a test\"}")
                .then()
                .statusCode(200);
    }

    private static String draft() {
        return as("consultant")
                .contentType("application/zip")
                .body(Bundle.of(SmallEdition.files(SmallEdition.withFewRules())).zip())
                .post("/api/editions")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static Response gate(String edition) {
        return as("reader").get("/api/editions/" + edition + "/gate");
    }

    private static String tag(String edition) {
        return as("reader").get("/api/editions/" + edition).header("ETag");
    }

    private static Response step(String who, String path, String tag, String body) {
        return as(who).contentType("application/json")
                .header("If-Match", tag)
                .body(body)
                .post(path);
    }

    private static Response json(String who, String path, String body) {
        return as(who).contentType("application/json").body(body).post(path);
    }

    /** Signing in costs time on purpose; once for each person is enough. */
    private static final Map<String, RequestSpecification> TOKENS = new HashMap<>();

    private static RequestSpecification as(String who) {
        return given().spec(TOKENS.computeIfAbsent(who, SignedInBrowser::bearer));
    }

    private void run(String sql) throws SQLException {
        try (Connection connection = database.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
