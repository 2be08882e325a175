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

    @Inject
    OtherWorkspace others;

    @BeforeEach
    void somebody_who_only_reads() {
        others.inDemo("reader", Roles.TRAINEE);
    }

    @Test
    void cases_are_listed_before_they_are_run_and_run_on_demand() {
        String id = upload(Bundle.starter()
                .with(
                        "cases/wrong.yaml",
                        "cases:\n  - id: wrong\n    title: wrong\n    task: {title: t, permittedSolvents: []}\n"
                                + "    expect: {proposes: [hydrocarbon-vacuum]}\n")
                .zip());
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
    void coverage_counts_rules_and_conditions() {
        as("reader")
                .get("/api/editions/" + starter() + "/coverage")
                .then()
                .statusCode(200)
                .body("rulesFired", greaterThan(50))
                .body("rules.find { it.rule == 'MA-06' }.fired", greaterThan(0));
    }

    @Test
    void an_examination_is_begun_and_asked_for_until_it_is_there() throws InterruptedException {
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.put("rules/r.drl", rule("NV-01", "\"40 HRC\", hardness < \"30 HRC\"") + rule("FI-01", "\"40 HRC\""));
        String id = upload(SmallEdition.files(texts).toZip());
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
