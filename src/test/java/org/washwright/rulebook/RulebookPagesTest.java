package org.washwright.rulebook;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;

@QuarkusTest
class RulebookPagesTest {
    private static final String BROKEN =
            "rule \"x\"\n  @id(\"X-1\")\nwhen\n  Materiel(porous == true)\nthen\n  shout(\"a\");\nend\n";

    @Inject
    OtherWorkspace others;

    @BeforeEach
    void people() {
        others.inDemo("onlooker", Roles.TRAINEE);
        others.inDemo("author-and-reviewer", Roles.CONSULTANT, Roles.REVIEWER);
    }

    @Test
    void the_list_tells_which_edition_answers_and_what_each_role_may_do() {
        page("onlooker", "/rulebooks")
                .then()
                .statusCode(200)
                .body(allOf(
                        containsString("answers new tasks"),
                        containsString("answers tasks now"),
                        containsString("The way of an edition"),
                        not(containsString("You can do this")),
                        not(containsString("type=\"file\""))));
        page("consultant", "/rulebooks").then().body(containsString("type=\"file\""));
        page("reviewer", "/rulebooks").then().body(containsString("for what others wrote"));
    }

    @Test
    void only_a_consultant_uploads_and_only_with_the_form_token() {
        SignedInBrowser onlooker = SignedInBrowser.as("onlooker");
        send(onlooker, "/account", "/rulebooks", Bundle.starter().zip()).then().statusCode(403);
        SignedInBrowser.as("consultant")
                .request()
                .multiPart("bundle", "x.zip", Bundle.starter().zip(), "application/zip")
                .post("/rulebooks")
                .then()
                .statusCode(400);
        given().redirects()
                .follow(false)
                .accept("text/html")
                .get("/rulebooks")
                .then()
                .statusCode(303);
    }

    @Test
    void a_bundle_that_is_none_is_refused_beside_its_field_and_nothing_is_stored() {
        SignedInBrowser consultant = SignedInBrowser.as("consultant");
        String before = total();
        send(consultant, "/rulebooks", "/rulebooks", "no zip".getBytes(StandardCharsets.UTF_8))
                .then()
                .statusCode(422)
                .body(allOf(
                        containsString("nothing was stored"),
                        containsString("role=\"alert\""),
                        containsString("aria-invalid=\"true\"")));
        send(consultant, "/rulebooks", "/rulebooks", Bundle.zipOf("run.sh", "x"))
                .then()
                .statusCode(422)
                .body(containsString("<code>run.sh</code>"));
        send(consultant, "/rulebooks", "/rulebooks", new byte[0])
                .then()
                .statusCode(422)
                .body(containsString("href=\"#bundle\""));
        assertEquals(before, total());
    }

    @Test
    void errors_inside_are_told_with_file_line_column_value_and_advice() {
        SignedInBrowser consultant = SignedInBrowser.as("consultant");
        Response made = send(
                consultant,
                "/rulebooks",
                "/rulebooks",
                Bundle.starter().with("rules/broken.drl", BROKEN).zip());
        String address = made.then().statusCode(303).extract().header("Location");
        assertTrue(address.endsWith("/diagnostics"), address);
        consultant
                .request()
                .get(address)
                .then()
                .statusCode(200)
                .body(allOf(
                        containsString("<code>rules/broken.drl</code>"),
                        containsString("line 4, column"),
                        containsString("<code class=\"found\">Materiel</code>"),
                        containsString("Materiel(porous == true)"),
                        containsString("to mend before a review")));
        String edition = address.replace("/diagnostics", "");
        consultant
                .request()
                .get(edition)
                .then()
                .statusCode(200)
                .body(allOf(containsString("from being read"), containsString(path(edition) + "/files")));
        page("engineer", path(edition)).then().body(containsString("A consultant mends the errors"));
        consultant.request().get(edition + "/rules").then().statusCode(409);
    }

    @Test
    void an_edition_is_released_by_page_by_a_second_person_only() {
        SignedInBrowser author = SignedInBrowser.as("author-and-reviewer");
        String at = path(send(
                        author,
                        "/rulebooks",
                        "/rulebooks",
                        Bundle.starter()
                                .with("rules/by-page.drl", "// by page\n")
                                .zip())
                .then()
                .statusCode(303)
                .extract()
                .header("Location"));
        author.request().get(at).then().body(containsString("A draft that answers no task yet"));
        page("reviewer", at)
                .then()
                .body(allOf(containsString("A consultant asks for a review"), not(containsString("/release\""))));
        String review = at + "/review";
        author.post(review, review, Map.of("version", version(author, review), "note", "more <soap>"))
                .then()
                .statusCode(303);

        author.request()
                .get(review)
                .then()
                .body(allOf(containsString("Somebody else releases it"), not(containsString("/release\""))));
        author.post(review, at + "/release", Map.of("version", "1", "note", "fine", "sure", "yes"))
                .then()
                .statusCode(403)
                .body(allOf(containsString("Two persons stand behind"), containsString("role=\"alert\"")));

        SignedInBrowser reviewer = SignedInBrowser.as("reviewer");
        String version = version(reviewer, review);
        reviewer.request()
                .get(review)
                .then()
                .body(allOf(containsString("“more &lt;soap&gt;”"), containsString("/release\"")));
        reviewer.post(review, at + "/release", Map.of("version", version))
                .then()
                .statusCode(422)
                .body(allOf(containsString("href=\"#note\""), containsString("href=\"#sure\"")));
        reviewer.post(review, at + "/release", Map.of("version", "0", "note", "stale", "sure", "yes"))
                .then()
                .statusCode(412)
                .body(allOf(containsString("That was not done"), containsString(">stale</textarea>")));
        int unanswered = reviewer.post(
                        review, at + "/release", Map.of("version", version, "note", "read all", "sure", "yes"))
                .statusCode();
        assertTrue(unanswered == 303 || unanswered == 422, "begun, and over sooner or later");
        assertTrue(
                unanswered == 422 || ended(reviewer, review).contains("say in “despite” why"),
                "an open gate needs a reason");
        reviewer.post(
                        review,
                        at + "/release",
                        Map.of("version", version, "note", "read all", "despite", "a test", "sure", "yes"))
                .then()
                .statusCode(303);
        assertTrue(ended(reviewer, review).contains("it never changes"), "released");
        reviewer.request()
                .get(at)
                .then()
                .body(allOf(
                        containsString("This edition answers new tasks"),
                        containsString("by reviewer: “read all”"),
                        not(containsString("/release\""))));
        author.post(review, review, Map.of("version", "2", "note", "again"))
                .then()
                .statusCode(409);
    }

    /** The page of a release when it goes on no more. */
    private static String ended(SignedInBrowser browser, String review) {
        for (int i = 0; i < 300; i++) {
            String page = browser.request().get(review).asString();
            if (!page.contains("The release goes on")) {
                return page;
            }
            try {
                Thread.sleep(200);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        throw new AssertionError("the release did not end within a minute");
    }

    @Test
    void the_overview_counts_and_tells_sources_licence_and_both_hashes() {
        String at = current();
        page("onlooker", at)
                .then()
                .statusCode(200)
                .body(allOf(
                        containsString("Apache-2.0"),
                        containsString("from memory"),
                        containsString("substrates"),
                        containsString(at + "/bundle"),
                        containsString(at + "/trees/what-is-this-soil")));
    }

    @Test
    void rules_are_told_in_words_and_text_and_can_be_looked_for() {
        String at = current() + "/rules";
        page("onlooker", at)
                .then()
                .statusCode(200)
                .body(allOf(
                        containsString("id=\"LN-01\""),
                        containsString("over the composed line"),
                        containsString("cited from memory"),
                        containsString("the line of the process needs the stage"),
                        containsString("id=\"MS-03\"")));
        page("onlooker", at + "?q=emulsion stays&basis=handbook")
                .then()
                .body(allOf(containsString("id=\"MA-03\""), not(containsString("id=\"LN-01\""))));
        page("onlooker", at + "?q=<script>")
                .then()
                .body(allOf(containsString("0 of"), not(containsString("<script>"))));
    }

    @Test
    void a_question_tree_is_unrolled_to_its_proposals() {
        page("onlooker", current() + "/trees/what-is-this-soil")
                .then()
                .statusCode(200)
                .body(allOf(
                        containsString("id=\"question-1\""), containsString("#soil-rust"), containsString("go to")));
        page("onlooker", current() + "/trees/none").then().statusCode(404);
    }

    @Test
    void the_glossary_tells_terms_with_values_cautions_blind_spots_and_rules() {
        for (String at : new String[] {"/glossary", current() + "/glossary"}) {
            page("onlooker", at)
                    .then()
                    .statusCode(200)
                    .body(allOf(
                            containsString("id=\"soil-honing-oil\""),
                            containsString("id=\"processes\""),
                            containsString("Take care."),
                            containsString("Can’t see:"),
                            containsString("see also <a href=\"#process-"),
                            containsString("/rules#")));
        }
        page("onlooker", "/glossary?q=honing")
                .then()
                .body(allOf(containsString("soil-honing-oil"), not(containsString("id=\"processes\""))));
    }

    private static Response page(String who, String path) {
        return SignedInBrowser.as(who).request().get(path);
    }

    private static Response send(SignedInBrowser browser, String page, String action, byte[] bytes) {
        return browser.request()
                .multiPart("csrf-token", browser.formToken(page))
                .multiPart("bundle", "bundle.zip", bytes, "application/zip")
                .post(action);
    }

    private static String current() {
        String html = page("onlooker", "/rulebooks").asString();
        int now = html.indexOf("answers tasks now");
        Matcher link = Pattern.compile("/rulebooks/([0-9a-f-]{36})\"").matcher(html.substring(0, now));
        String last = "";
        while (link.find()) {
            last = link.group(1);
        }
        return "/rulebooks/" + last;
    }

    private static String version(SignedInBrowser browser, String page) {
        Matcher matcher = Pattern.compile("name=\"version\" value=\"([0-9]+)\"")
                .matcher(browser.request().get(page).asString());
        assertTrue(matcher.find(), page);
        return matcher.group(1);
    }

    private static String total() {
        return given().spec(SignedInBrowser.bearer("consultant"))
                .get("/api/editions")
                .then()
                .extract()
                .path("total")
                .toString();
    }

    private static String path(String address) {
        return address.replaceFirst("^https?://[^/]+", "");
    }
}
