package org.washwright.rulebook;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;
import org.washwright.generate.SmallEdition;

@QuarkusTest
class ChecksApiTest {
    private static final String ZIP = "application/zip";
    private static final String CASES = """
            cases:
              - id: hard
                title: Hard steel
                task: {title: t, materials: [{hardness: 45 HRC}]}
                expect: {fires: [FI-01]}
              - id: soft
                title: Soft steel
                change: {of: hard, set: {/materials/0/hardness: 20 HRC}}
                expect: {doesNotFire: [FI-01]}
            """;

    @Inject
    OtherWorkspace others;

    @BeforeEach
    void somebody_who_only_reads() {
        others.inDemo("reader", Roles.TRAINEE);
    }

    @Test
    void cases_are_listed_before_they_are_run_and_run_on_demand() {
        String wrong = "  - id: wrong\n    title: wrong\n    task: hard\n    expect: {doesNotFire: [FI-01]}\n";
        String id = upload(small("cases/c.yaml", CASES + wrong));
        as("reader")
                .get("/api/editions/" + id + "/cases")
                .then()
                .statusCode(200)
                .body("ran", equalTo(false))
                .body("cases.id", hasItem("wrong"));
        as("reader")
                .contentType("application/json")
                .post("/api/editions/" + id + "/cases")
                .then()
                .statusCode(200)
                .body("fail", equalTo(1))
                .body("cases.find { it.id == 'wrong' }.expectations[0].met", equalTo(false))
                .body("cases.findAll { it.id != 'wrong' }.holds", everyItem(equalTo(true)));
        as("reader")
                .get("/api/editions/" + id + "/cases")
                .then()
                .body("ran", equalTo(true))
                .body("fail", equalTo(1));
    }

    @Test
    void coverage_is_counted_until_it_is_there_for_rules_and_conditions() throws InterruptedException {
        String id = upload(small("cases/c.yaml", CASES));
        answered("/api/editions/" + id + "/coverage")
                .body("rulesFired", equalTo(1))
                .body("rulesHeldBack", equalTo(1))
                .body("rules[0].heldBack.silent", equalTo("soft"));
    }

    @Test
    void a_sheet_of_the_grid_is_computed_until_it_is_there_and_a_wrong_stop_is_told() throws InterruptedException {
        String plan = "axes:\n  - {attribute: Soil.kind}\n  - {attribute: Material.substrate}\n"
                + "  - {attribute: Feature.kind, orNone: yes}\n";
        String id = upload(small("grid.yaml", plan));
        String grid = "/api/editions/" + id + "/grid";
        answered(grid).body("stops[2].id", equalTo(List.of("none"))).body("all[2].size()", greaterThan(1));
        answered(grid + "?at=Soil.kind=soil-a&at=Feature.kind=feature-b")
                .body("stops[0].id", equalTo(List.of("soil-a")))
                .body("cells[0].at[2]", equalTo("feature-b"));
        as("reader")
                .get(grid + "?at=Soil.kind=soil-x&at=Shape.kind=b")
                .then()
                .statusCode(422)
                .body("errors.size()", equalTo(2));
    }

    private static io.restassured.response.ValidatableResponse answered(String path) throws InterruptedException {
        Response answer = as("reader").get(path);
        for (int i = 0; answer.statusCode() == 202 && i < 100; i++) {
            Thread.sleep(100);
            answer = as("reader").get(path);
        }
        return answer.then().statusCode(200);
    }

    @Test
    void an_examination_is_begun_and_asked_for_until_it_is_there() throws InterruptedException {
        String never = rule("NV-01", "\"40 HRC\", hardness < \"30 HRC\"");
        String id = upload(small("rules/never.drl", never));
        as("reader").get("/api/editions/" + id + "/examination").then().statusCode(404);
        Response answer = as("reader").contentType("application/json").post("/api/editions/" + id + "/examination");
        for (int i = 0; i < 600 && answer.statusCode() == 202; i++) {
            Thread.sleep(100);
            answer = as("reader").get("/api/editions/" + id + "/examination");
        }
        answer.then()
                .statusCode(200)
                .body("findings", hasSize(1))
                .body("findings[0].finding", equalTo("never fires"))
                .body("findings[0].rules", hasItem("NV-01"))
                .body("examples.'FI-01'.size()", greaterThan(2));
    }

    private static String rule(String id, String than) {
        return "rule \"" + id + "\"\n  @id(\"" + id + "\") @basis(\"common practice\")\nwhen\n  Material(hardness > "
                + than + ")\nthen\n  caution(\"hazard-a\", \"So.\");\nend\n";
    }

    @Test
    void a_grid_needs_a_plan() {
        Bundle bundle = Bundle.starter();
        String id = upload(bundle.without("grid.yaml").zip());
        as("reader")
                .get("/api/editions/" + id + "/grid")
                .then()
                .statusCode(409)
                .contentType("application/problem+json");
    }

    /** A small edition of one rule, FI-01 from 40 HRC on, with one more file. */
    private static byte[] small(String file, String text) {
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.put("rules/r.drl", rule("FI-01", "\"40 HRC\""));
        texts.put(file, text);
        return SmallEdition.files(texts).toZip();
    }

    private static String upload(byte[] zip) {
        return as("consultant")
                .contentType(ZIP)
                .body(zip)
                .post("/api/editions")
                .then()
                .statusCode(201)
                .body("errors", equalTo(0))
                .extract()
                .path("id");
    }

    private static String starter() {
        return as("reader")
                .get("/api/editions?size=200")
                .then()
                .extract()
                .jsonPath()
                .getString("items.find { it.starter }.id");
    }

    private static RequestSpecification as(String who) {
        return given().spec(SignedInBrowser.bearer(who));
    }
}
