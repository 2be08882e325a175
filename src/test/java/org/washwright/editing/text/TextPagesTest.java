package org.washwright.editing.text;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.SignedInBrowser;
import org.washwright.generate.SmallEdition;

/** A file as text on a page that needs no scripts. */
@QuarkusTest
class TextPagesTest {
    private static final Pattern TAG = Pattern.compile("name=\"tag\" value=\"([0-9a-f]+)\"");
    private static final String FILE = "rules/all.drl";

    private String id;
    private String page;
    private SignedInBrowser consultant;

    @BeforeEach
    void a_draft() {
        id = given().spec(SignedInBrowser.bearer("consultant"))
                .contentType("application/zip")
                .body(SmallEdition.files(SmallEdition.withFewRules()).toZip())
                .post("/api/editions")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        page = "/rulebooks/" + id + "/text?file=" + FILE;
        consultant = SignedInBrowser.as("consultant");
    }

    private static String tag(String html) {
        Matcher matcher = TAG.matcher(html);
        if (!matcher.find()) {
            throw new AssertionError("no tag on the page");
        }
        return matcher.group(1);
    }

    private String stored() {
        return given().spec(SignedInBrowser.bearer("engineer"))
                .get("/api/editions/" + id + "/files/" + FILE)
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    @Test
    void a_consultant_saves_by_the_form_and_lines_end_as_they_did() {
        String html =
                consultant.request().get(page).then().statusCode(200).extract().asString();
        Response saved = consultant.post(
                page, page, Map.of("tag", tag(html), "text", stored().replace("\n", "\r\n") + "// so\r\n"));
        assertEquals(303, saved.statusCode());
        assertEquals(SmallEdition.withFewRules().get(FILE) + "// so\n", stored());
        consultant
                .request()
                .urlEncodingEnabled(false)
                .get(saved.header("Location"))
                .then()
                .statusCode(200)
                .body(containsString(">saved<"));
    }

    @Test
    void what_is_wrong_and_what_rules_say_stands_on_the_page() {
        consultant
                .request()
                .get(page)
                .then()
                .statusCode(200)
                .body(containsString("Nothing is wrong in this file."))
                .body(containsString("warn of A"));
        String html = consultant.request().get(page).asString();
        String broken = stored().replace("hazard-a", "hazard-z");
        consultant
                .post(page, page, Map.of("tag", tag(html), "text", broken))
                .then()
                .statusCode(303);
        consultant
                .request()
                .get(page)
                .then()
                .statusCode(200)
                .body(containsString("Error, line 2"))
                .body(containsString("Did you mean"));
    }

    @Test
    void a_text_that_was_overtaken_comes_back_beside_the_other_and_can_be_saved_then() {
        String html = consultant.request().get(page).asString();
        String before = stored();
        consultant
                .post(page, page, Map.of("tag", tag(html), "text", "// theirs\n" + before))
                .then()
                .statusCode(303);
        Response refused = consultant.post(page, page, Map.of("tag", tag(html), "text", before + "// mine\n"));
        refused.then()
                .statusCode(412)
                .body(containsString("Somebody else changed this file"))
                .body(containsString("// theirs"))
                .body(containsString("// mine"));
        consultant
                .post(page, page, Map.of("tag", tag(refused.asString()), "text", before + "// mine\n"))
                .then()
                .statusCode(303);
        assertEquals(before + "// mine\n", stored());
    }

    @Test
    void who_is_no_consultant_reads_and_can_not_save() {
        SignedInBrowser engineer = SignedInBrowser.as("engineer");
        engineer.request()
                .get(page)
                .then()
                .statusCode(200)
                .body(containsString("readonly"))
                .body(not(containsString(">Save<")));
        engineer.post(page, page, Map.of("tag", "0", "text", "x")).then().statusCode(403);
    }

    @Test
    void a_file_that_is_not_there_is_not_found() {
        consultant
                .request()
                .get("/rulebooks/" + id + "/text?file=rules/none.drl")
                .then()
                .statusCode(404);
    }

    @Test
    void both_texts_are_merged_for_a_page_that_asks() {
        given().spec(SignedInBrowser.bearer("consultant"))
                .contentType("application/json")
                .accept("text/html")
                .body(Map.of("base", "a\nb\nc", "theirs", "A\nb\nc", "mine", "a\nb\nC"))
                .post("/rulebooks/" + id + "/text/differences?file=" + FILE)
                .then()
                .statusCode(200)
                .body(containsString("A\nb\nC</textarea>"))
                .body(containsString("2 lines differ"));
    }
}
