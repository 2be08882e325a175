package org.washwright.rulebook;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;

@QuarkusTest
class EditionsApiTest {
    private static final String PROBLEM = "application/problem+json";
    private static final String ZIP = "application/zip";

    @Inject
    DataSource database;

    @Inject
    OtherWorkspace others;

    @BeforeEach
    void somebody_who_only_reads() {
        others.inDemo("reader", Roles.TRAINEE);
    }

    @Test
    void every_workspace_starts_with_the_starter_rulebook_as_its_first_released_edition() {
        JsonPath first = starter();
        assertEquals("starter", first.getString("rulebook"));
        assertEquals(1, first.getInt("number"));
        assertEquals("released", first.getString("state"));
        assertEquals(Bundle.starter().files().textHash(), first.getString("textHash"));
        assertTrue(first.getInt("rules") > 20);
    }

    @Test
    void a_bundle_comes_back_byte_for_byte() {
        byte[] zip = Bundle.starter().zip();
        JsonPath made =
                upload("consultant", zip).then().statusCode(201).extract().jsonPath();
        byte[] back = as("reader")
                .get("/api/editions/" + made.getString("id") + "/bundle")
                .then()
                .statusCode(200)
                .contentType(ZIP)
                .header("Washwright-Text-Hash", made.getString("textHash"))
                .header("Content-Disposition", containsString("starter-draft.zip"))
                .extract()
                .asByteArray();
        assertArrayEquals(zip, back);
    }

    @Test
    void a_draft_with_errors_is_kept_and_every_error_told_with_file_line_column_and_advice() {
        Bundle broken = Bundle.starter()
                .with(
                        "rules/broken.drl",
                        "rule \"x\"\n  @id(\"X-1\")\nwhen\n  Materiel(porous == true)\nthen\n  shout(\"a\");\nend\n");
        String id = upload("consultant", broken.zip())
                .then()
                .statusCode(201)
                .body("errors", greaterThan(1))
                .body("state", equalTo("draft"))
                .extract()
                .path("id");
        as("engineer")
                .get("/api/editions/" + id + "/diagnostics")
                .then()
                .statusCode(200)
                .body("errorCount", greaterThan(1))
                .body("errors.file", everyItem(equalTo("rules/broken.drl")))
                .body("errors.line", everyItem(greaterThan(0)))
                .body("errors.column", everyItem(greaterThan(0)))
                .body("errors.advice", everyItem(not(equalTo(""))))
                .body("errors.value", hasItem("Materiel"))
                .body("errors.code", hasItem("unknown-type"));
        as("engineer")
                .get("/api/editions/" + id + "/rules")
                .then()
                .statusCode(409)
                .contentType(PROBLEM);
        as("consultant")
                .contentType("application/json")
                .header("If-Match", "\"v0\"")
                .post("/api/editions/" + id + "/review")
                .then()
                .statusCode(422)
                .contentType(PROBLEM)
                .body("errors.file", hasItem("rules/broken.drl"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../edition.yaml",
                "rules/../../x.drl",
                "/edition.yaml",
                "rules\\x.drl",
                "C:/edition.yaml",
                "run.sh"
            })
    void a_bundle_with_a_name_that_is_no_file_of_an_edition_is_refused_whole(String name) throws SQLException {
        long before = rows();
        upload("consultant", Bundle.zipOf(name, "name: x"))
                .then()
                .statusCode(422)
                .contentType(PROBLEM)
                .body("errors[0].file", notNullValue())
                .body("errors[0].advice", not(equalTo("")));
        assertEquals(before, rows());
    }

    @Test
    void what_is_no_zip_or_holds_nothing_is_refused_and_nothing_stored() throws SQLException {
        long before = rows();
        upload("consultant", "PK not a zip".getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .then()
                .statusCode(422)
                .body("errors[0].code", equalTo("broken-zip"));
        upload("consultant", new byte[0]).then().statusCode(422);
        upload("consultant", Bundle.zipOf("README.md", "x"))
                .then()
                .statusCode(422)
                .body("errors[0].code", equalTo("empty-bundle"));
        given().spec(SignedInBrowser.bearer("consultant"))
                .contentType("application/json")
                .body("{}")
                .post("/api/editions")
                .then()
                .statusCode(415);
        assertEquals(before, rows());
    }

    @Test
    void an_edition_goes_from_draft_to_review_to_release_by_another_person_and_never_changes_then()
            throws SQLException {
        others.inDemo("both", Roles.CONSULTANT, Roles.REVIEWER);
        Response made = upload(
                "both",
                Bundle.starter().with("rules/added.drl", "// nothing yet\n").zip());
        String id =
                made.then().statusCode(201).header("ETag", "\"v0\"").extract().path("id");
        String at = "/api/editions/" + id;

        step("reviewer", at + "/release", "\"v0\"")
                .then()
                .statusCode(409)
                .body("detail", containsString("asked for a review"));
        as("both")
                .contentType("application/json")
                .body("{}")
                .post(at + "/review")
                .then()
                .statusCode(428)
                .contentType(PROBLEM);
        step("both", at + "/review", "\"v7\"").then().statusCode(412).contentType(PROBLEM);
        step("both", at + "/review", "*").then().statusCode(412);
        step("engineer", at + "/review", "\"v0\"").then().statusCode(403);
        String asked = step("both", at + "/review", "\"v0\"")
                .then()
                .statusCode(200)
                .body("state", equalTo("asked for review"))
                .body("asked.by", equalTo("both"))
                .body("asked.note", equalTo("look at it"))
                .extract()
                .header("ETag");

        step("both", at + "/release", asked)
                .then()
                .statusCode(403)
                .contentType(PROBLEM)
                .body("detail", containsString("what they wrote"));
        step("consultant", at + "/release", asked).then().statusCode(403);
        step("reviewer", at + "/release", asked)
                .then()
                .statusCode(200)
                .body("state", equalTo("released"))
                .body("number", greaterThan(1))
                .body("released.by", equalTo("reviewer"));

        as("both")
                .contentType(ZIP)
                .header("If-Match", asked)
                .body(Bundle.starter().zip())
                .put(at + "/bundle")
                .then()
                .statusCode(409);
        step("reviewer", at + "/release", asked).then().statusCode(409);
        for (String change : new String[] {
            "UPDATE edition SET title = 'other' WHERE id = '" + id + "'",
            "UPDATE edition SET state = 'draft' WHERE id = '" + id + "'",
            "DELETE FROM edition WHERE id = '" + id + "'",
            "UPDATE edition_file SET bytes = '' WHERE edition_id = '" + id + "' AND path = 'edition.yaml'",
            "DELETE FROM edition_file WHERE edition_id = '" + id + "'",
            "INSERT INTO edition_file SELECT id, workspace_id, 'rules/new.drl', '' FROM edition WHERE id = '" + id
                    + "'",
            "TRUNCATE edition_file",
            "TRUNCATE edition CASCADE"
        }) {
            SQLException refusal = assertThrows(SQLException.class, () -> run(change), change);
            assertEquals("23000", refusal.getSQLState(), change);
        }
        as("engineer").get(at).then().statusCode(200).body("state", equalTo("released"));
    }

    @Test
    void the_database_itself_lets_nobody_release_what_they_wrote() throws SQLException {
        String id = upload("consultant", Bundle.starter().zip())
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        SQLException refusal = assertThrows(
                SQLException.class,
                () -> run("UPDATE edition SET state = 'released', number = 999, released_at = now(),"
                        + " released_by = created_by WHERE id = '" + id + "'"));
        assertTrue(refusal.getMessage().contains("nobody_releases_what_they_wrote"), refusal.getMessage());
    }

    @Test
    void replacing_the_files_takes_back_the_request_for_a_review() {
        String id = upload("consultant", Bundle.starter().zip())
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        String asked = step("consultant", "/api/editions/" + id + "/review", "\"v0\"")
                .then()
                .statusCode(200)
                .extract()
                .header("ETag");
        as("consultant")
                .contentType(ZIP)
                .header("If-Match", asked)
                .body(Bundle.starter().with("rules/more.drl", "// more\n").zip())
                .put("/api/editions/" + id + "/bundle")
                .then()
                .statusCode(200)
                .body("state", equalTo("draft"))
                .body("asked", equalTo(null));
    }

    @Test
    void rules_come_in_pages_readable_with_basis_sources_and_place() {
        String id = starter().getString("id");
        Response page = as("reader").get("/api/editions/" + id + "/rules?size=5");
        page.then()
                .statusCode(200)
                .body("items.size()", equalTo(5))
                .body("total", greaterThan(20))
                .body("items.text", everyItem(startsWith("rule ")))
                .body("items.basis", everyItem(not(equalTo(""))))
                .body("items.file", everyItem(not(equalTo(""))))
                .body("items.line", everyItem(greaterThan(0)))
                .header("ETag", notNullValue());
        assertTrue(page.headers().getValues("Link").toString().contains("rel=\"next\""));
        as("reader")
                .header("If-None-Match", page.header("ETag"))
                .get("/api/editions/" + id + "/rules?size=5")
                .then()
                .statusCode(304);
        as("reader")
                .get("/api/editions/" + id + "/rules?size=5000&page=-1")
                .then()
                .statusCode(422)
                .body("errors.size()", equalTo(2))
                .body("errors.pointer", hasItem("?size"));
    }

    @Test
    void the_list_is_paged_and_tagged() {
        upload("consultant", Bundle.starter().zip()).then().statusCode(201);
        Response list = as("engineer").get("/api/editions?size=1");
        list.then().statusCode(200).body("items.size()", equalTo(1)).body("total", greaterThan(1));
        as("engineer")
                .header("If-None-Match", list.header("ETag"))
                .get("/api/editions?size=1")
                .then()
                .statusCode(304);
    }

    @Test
    void only_a_consultant_uploads() {
        upload("engineer", Bundle.starter().zip()).then().statusCode(403).contentType(PROBLEM);
        given().contentType(ZIP)
                .body(Bundle.starter().zip())
                .post("/api/editions")
                .then()
                .statusCode(401)
                .contentType(PROBLEM);
    }

    @Test
    void editions_of_another_workspace_are_not_there() {
        others.withPerson("across", "stranger");
        String id = starter().getString("id");
        for (String rest : new String[] {"", "/diagnostics", "/bundle", "/rules"}) {
            as("stranger")
                    .get("/api/editions/" + id + rest)
                    .then()
                    .statusCode(404)
                    .contentType(PROBLEM);
        }
        step("stranger", "/api/editions/" + id + "/release", "\"v0\"").then().statusCode(404);
        step("stranger", "/api/editions/" + id + "/review", "\"v0\"").then().statusCode(404);
        as("stranger").get("/api/editions").then().statusCode(200).body("items.id", not(hasItem(id)));
        SignedInBrowser.as("stranger").request().get("/rulebooks/" + id).then().statusCode(404);
    }

    @Test
    void a_body_that_is_too_large_is_told_as_a_problem_before_it_is_read() throws SQLException {
        long before = rows();
        upload("consultant", new byte[20_000_000])
                .then()
                .statusCode(413)
                .contentType(PROBLEM)
                .body("detail", containsString("20000000"));
        assertEquals(before, rows());
    }

    private JsonPath starter() {
        JsonPath list = as("engineer")
                .get("/api/editions?size=200")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        Map<String, Object> starter = list.getMap("items.find { it.starter }");
        return as("engineer")
                .get("/api/editions/" + starter.get("id"))
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private static Response upload(String who, byte[] zip) {
        return as(who).contentType(ZIP).body(zip).post("/api/editions");
    }

    private static Response step(String who, String path, String ifMatch) {
        return as(who).contentType("application/json")
                .header("If-Match", ifMatch)
                .body("{\"note\":\"look at it\",\"despite\":\"a test looks at nothing else\"}")
                .post(path);
    }

    private static RequestSpecification as(String who) {
        return given().spec(SignedInBrowser.bearer(who));
    }

    private long rows() throws SQLException {
        try (Connection connection = database.getConnection();
                Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(
                        "SELECT (SELECT count(*) FROM edition) + (SELECT count(*) FROM edition_file) + (SELECT count(*) FROM rulebook)")) {
            result.next();
            return result.getLong(1);
        }
    }

    private void run(String sql) throws SQLException {
        try (Connection connection = database.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
