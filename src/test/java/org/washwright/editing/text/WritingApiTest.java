package org.washwright.editing.text;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.SignedInBrowser;
import org.washwright.generate.SmallEdition;

/** Help while a file is written, over REST; nothing of it is stored. Expected words are those of the small edition. */
@QuarkusTest
class WritingApiTest {
    private static final String FILE = "rules/new.drl";
    private static final String RULE = "rule \"n\" @id(\"N-1\") @basis(\"common practice\")\nwhen\n"
            + "  Soil(kind == \"soil-a\")\nthen\n  caution(\"hazard-a\", \"So it is.\");\nend\n";

    private String id;

    @BeforeEach
    void a_draft() {
        id = as("consultant")
                .contentType("application/zip")
                .body(SmallEdition.files(SmallEdition.withFewRules()).toZip())
                .post("/api/editions")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static RequestSpecification as(String name) {
        return given().spec(SignedInBrowser.bearer(name));
    }

    private ValidatableResponse ask(String what, String file, String text) {
        return as("engineer")
                .contentType("text/plain; charset=UTF-8")
                .body(text.getBytes(StandardCharsets.UTF_8))
                .post("/api/editions/" + id + "/" + what + (what.contains("?") ? "&" : "?") + "file=" + file)
                .then();
    }

    @Test
    void a_text_that_is_not_stored_is_told_what_is_wrong_with_it_and_with_other_files() {
        ask("diagnostics-of", FILE, RULE)
                .statusCode(200)
                .body("errorCount", equalTo(0))
                .body("here", hasSize(0));
        ask("diagnostics-of", FILE, RULE.replace("soil-a", "mud"))
                .statusCode(200)
                .body("errorCount", equalTo(1))
                .body("here[0].error", equalTo(true))
                .body("here[0].what.line", equalTo(3))
                .body("here[0].what.value", equalTo("mud"))
                .body("here[0].what.advice", containsString("soil-a"));
        ask("diagnostics-of", FILE, RULE.replace("N-1", "S-01")).statusCode(200).body("here", hasSize(1));
        ask("diagnostics-of", "catalogue/hazard-terms.yaml", "kind: hazard\nterms: []\n")
                .statusCode(200)
                .body("here", hasSize(0))
                .body("elsewhere.what.file", hasItem("rules/all.drl"));
        as("engineer")
                .get("/api/editions/" + id + "/diagnostics")
                .then()
                .statusCode(200)
                .body("errorCount", equalTo(0));
    }

    @Test
    void what_may_stand_at_a_place_is_told_with_the_range_it_takes() {
        ask("completions?line=3&column=20", FILE, RULE)
                .statusCode(200)
                .body("list.label", hasItems("soil-a", "soil-b"))
                .body("list[0].name", equalTo("A"))
                .body("from", equalTo(RULE.indexOf("soil-a")))
                .body("to", equalTo(RULE.indexOf("soil-a") + "soil-a".length()));
    }

    @Test
    void a_word_is_explained_and_nothing_is_said_where_nothing_is_known() {
        ask("hover?line=3&column=20", FILE, RULE)
                .statusCode(200)
                .body("title", equalTo("A"))
                .body("lines", hasItem("melting point: 60 °C."));
        ask("hover?line=2&column=99", FILE, RULE + "\n\n").statusCode(200);
        ask("hover?line=99&column=1", FILE, RULE + "\n\n\n").statusCode(204);
    }

    @Test
    void rules_are_said_also_beside_a_broken_one() {
        ask("sentences", FILE, RULE + "rule \"half")
                .statusCode(200)
                .body("id", hasItem("N-1"))
                .body("[0].from", equalTo(1))
                .body("[0].sentence.then[0].because", equalTo("So it is."));
    }

    @Test
    void how_rules_stand_is_told_for_the_stored_files() {
        as("engineer")
                .get("/api/editions/" + id + "/standings")
                .then()
                .statusCode(200)
                .body("readable", equalTo(true))
                .body("rules", hasKey("S-01"))
                .body("rules.'S-01'.fired", equalTo(0));
    }

    @Test
    void what_can_be_no_file_is_refused_with_a_problem() {
        ask("diagnostics-of", "../etc/passwd", RULE).statusCode(422).contentType("application/problem+json");
        String huge = "x".repeat(5_000_000);
        ask("completions", FILE, huge).statusCode(413);
        given().contentType("text/plain")
                .body("x")
                .post("/api/editions/" + id + "/sentences?file=" + FILE)
                .then()
                .statusCode(401);
    }

    @Test
    void a_draft_of_another_workspace_is_not_there() {
        String other = "00000000-0000-0000-0000-000000000001";
        for (String what : new String[] {"diagnostics-of", "completions", "hover", "sentences"}) {
            int status = as("engineer")
                    .contentType("text/plain")
                    .body(RULE)
                    .post("/api/editions/" + other + "/" + what + "?file=" + FILE)
                    .statusCode();
            assertEquals(404, status, what);
        }
    }
}
