package org.washwright.access;

import static io.restassured.RestAssured.given;
import static io.restassured.matcher.RestAssuredMatchers.detailedCookie;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.anyOf;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.quarkus.test.junit.QuarkusTest;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class AccessTest {
    private static final String PROBLEM = "application/problem+json";

    @Test
    void a_right_password_opens_a_session_whose_cookie_scripts_and_foreign_forms_cannot_use() {
        new SignedInBrowser()
                .post("/sign-in", "/sign-in", Map.of("name", "Engineer", "password", DemoAccounts.PASSWORD))
                .then()
                .statusCode(303)
                .header("Location", endsWith("/"))
                .cookie(
                        SessionCookie.NAME,
                        detailedCookie()
                                .httpOnly(true)
                                .path("/")
                                .sameSite("Lax")
                                .maxAge(604_800));
    }

    @Test
    void a_wrong_password_and_an_unknown_name_are_told_in_the_same_words_beside_the_fields() {
        String forWrong = refusalFor("engineer", "wrong");
        String forUnknown = refusalFor("nobody-of-that-name", "wrong");
        assertEquals(forWrong, forUnknown);
    }

    private static String refusalFor(String name, String password) {
        return new SignedInBrowser()
                .post("/sign-in", "/sign-in", Map.of("name", name, "password", password))
                .then()
                .statusCode(401)
                .body("**.find { it.@id == 'name' }.@aria-describedby", equalTo("sign-in-error"))
                .extract()
                .htmlPath()
                .getString("**.find { it.@id == 'sign-in-error' }.text()");
    }

    @Test
    void after_too_many_wrong_passwords_even_the_right_one_has_to_wait_but_other_names_do_not() {
        SignedInBrowser browser = new SignedInBrowser();
        for (int i = 0; i < 5; i++) {
            browser.post("/sign-in", "/sign-in", Map.of("name", "trainee", "password", "wrong" + i))
                    .then()
                    .statusCode(401);
        }
        browser.post("/sign-in", "/sign-in", Map.of("name", "trainee", "password", DemoAccounts.PASSWORD))
                .then()
                .statusCode(429)
                .header("Retry-After", matchesPattern("[1-9][0-9]*"))
                .body(containsString("Too many wrong passwords"));
        SignedInBrowser.as("reviewer").request().get("/account").then().statusCode(200);
    }

    @Test
    void a_form_without_its_token_is_refused() {
        given().contentType("application/x-www-form-urlencoded")
                .formParam("name", "engineer")
                .formParam("password", DemoAccounts.PASSWORD)
                .post("/sign-in")
                .then()
                .statusCode(400)
                .contentType(PROBLEM)
                .body("detail", containsString("load the page again"));
        SignedInBrowser.as("engineer")
                .request()
                .contentType("application/x-www-form-urlencoded")
                .formParam("csrf-token", "forged-value-aaaaaaaaaa")
                .formParam("label", "x")
                .formParam("days", "3")
                .post("/account/tokens")
                .then()
                .statusCode(400);
    }

    @Test
    void signing_out_takes_a_form_and_ends_the_session_for_good() {
        SignedInBrowser browser = SignedInBrowser.as("consultant");
        browser.request().get("/sign-out").then().statusCode(405);
        browser.post("/account", "/sign-out", Map.of()).then().statusCode(303).header("Location", endsWith("/sign-in"));
        browser.request().get("/account").then().statusCode(303);
    }

    @Test
    void a_page_sends_a_stranger_to_the_sign_in_page_and_back() {
        SignedInBrowser browser = new SignedInBrowser();
        browser.request()
                .urlEncodingEnabled(false)
                .get("/account?from=x%20y")
                .then()
                .statusCode(303)
                .header("Location", endsWith("/sign-in?return=%2Faccount%3Ffrom%3Dx%2520y"));
        browser.post(
                        "/sign-in",
                        "/sign-in",
                        Map.of("name", "engineer", "password", DemoAccounts.PASSWORD, "return", "/account?from=x%20y"))
                .then()
                .statusCode(303)
                .header("Location", endsWith("/account?from=x%20y"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://elsewhere.example/",
                "//elsewhere.example/",
                "/\\elsewhere.example",
                "\\\\elsewhere.example",
                "/%2F/..//elsewhere.example\n",
                "javascript:alert(1)",
                "/sign-in?return=/",
                ""
            })
    void signing_in_never_leads_away_from_this_service(String wanted) {
        String location = new SignedInBrowser()
                .post(
                        "/sign-in",
                        "/sign-in",
                        Map.of("name", "engineer", "password", DemoAccounts.PASSWORD, "return", wanted))
                .then()
                .statusCode(303)
                .extract()
                .header("Location");
        assertEquals("/", URI.create(location).getPath());
        assertFalse(location.contains("elsewhere"), location);
    }

    @Test
    void a_program_without_a_token_is_told_so_in_problem_details() {
        given().get("/api/me")
                .then()
                .statusCode(401)
                .contentType(PROBLEM)
                .header("WWW-Authenticate", "Bearer")
                .body("status", equalTo(401))
                .body("instance", equalTo("/api/me"));
    }

    @Test
    void a_wrong_token_is_refused_even_beside_a_good_session() {
        SignedInBrowser.as("engineer")
                .request()
                .header("Authorization", "Bearer ww_wrong")
                .get("/api/me")
                .then()
                .statusCode(401)
                .contentType(PROBLEM)
                .body("detail", containsString("revoked"));
    }

    @Test
    void a_token_does_what_its_account_may_do_needs_no_extra_header_and_ends_when_revoked() {
        var token = SignedInBrowser.bearer("engineer");
        given().spec(token)
                .get("/api/me")
                .then()
                .statusCode(200)
                .body("name", equalTo("engineer"))
                .body("roles", contains(Roles.ENGINEER));
        given().spec(token)
                .contentType("application/json")
                .body("{\"label\":\"more\"}")
                .post("/api/tokens")
                .then()
                .statusCode(403)
                .contentType(PROBLEM)
                .body("detail", containsString("cannot make further tokens"));
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        var made = browser.request()
                .header("X-Washwright", "1")
                .contentType("application/json")
                .body("{\"label\":\"to be revoked\",\"expiresInDays\":3}")
                .post("/api/tokens")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath();
        String bearer = "Bearer " + made.getString("token");
        given().header("Authorization", bearer)
                .delete("/api/tokens/" + made.getString("id"))
                .then()
                .statusCode(204);
        given().header("Authorization", bearer).get("/api/me").then().statusCode(401);
    }

    @Test
    void nobody_can_revoke_the_token_of_another() {
        String id = SignedInBrowser.as("engineer")
                .request()
                .header("X-Washwright", "1")
                .contentType("application/json")
                .body("{\"label\":\"mine\"}")
                .post("/api/tokens")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        given().spec(SignedInBrowser.bearer("administrator"))
                .delete("/api/tokens/" + id)
                .then()
                .statusCode(404)
                .contentType(PROBLEM);
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "text/plain", "application/octet-stream"})
    void a_request_with_the_session_cookie_needs_the_header_no_foreign_page_can_send(String contentType) {
        SignedInBrowser.as("engineer")
                .request()
                .contentType(contentType)
                .body("{\"label\":\"x\"}".getBytes(StandardCharsets.UTF_8))
                .post("/api/tokens")
                .then()
                .statusCode(anyOf(equalTo(403), equalTo(415)))
                .contentType(PROBLEM);
    }

    @Test
    void all_errors_of_a_token_request_come_at_once_each_with_place_value_and_advice() {
        SignedInBrowser.as("engineer")
                .request()
                .header("X-Washwright", "1")
                .contentType("application/json")
                .body("{\"label\":\" \",\"expiresInDays\":1000}")
                .post("/api/tokens")
                .then()
                .statusCode(422)
                .contentType(PROBLEM)
                .body("errors.pointer", contains("/label", "/expiresInDays"))
                .body("errors.value", hasItem("1000"))
                .body("errors.advice", not(hasItem("")));
    }

    @Test
    void json_that_cannot_be_read_is_told_with_line_and_column() {
        SignedInBrowser.as("engineer")
                .request()
                .header("X-Washwright", "1")
                .contentType("application/json")
                .body("{\"label\":\n oops}")
                .post("/api/tokens")
                .then()
                .statusCode(400)
                .contentType(PROBLEM)
                .body("errors[0].line", equalTo(2))
                .body("errors[0].code", equalTo("json-unreadable"));
        SignedInBrowser.as("engineer")
                .request()
                .header("X-Washwright", "1")
                .contentType("application/json")
                .body("{\"label\": {\"a\":1}}")
                .post("/api/tokens")
                .then()
                .statusCode(400)
                .body("errors[0].pointer", equalTo("/label"));
    }

    @Test
    void the_account_page_shows_a_new_token_once_and_errors_beside_their_fields() {
        SignedInBrowser browser = SignedInBrowser.as("reviewer");
        browser.post("/account", "/account/tokens", Map.of("label", "", "days", "0"))
                .then()
                .statusCode(422)
                .body("**.find { it.@id == 'label' }.@aria-describedby", equalTo("label-error"))
                .body("**.find { it.@id == 'days' }.@aria-describedby", equalTo("days-error"));
        String token = browser.post("/account", "/account/tokens", Map.of("label", "night run", "days", "2"))
                .then()
                .statusCode(200)
                .extract()
                .htmlPath()
                .getString("**.find { it.@id == 'new-token' }.text()");
        browser.request()
                .get("/account")
                .then()
                .statusCode(200)
                .body(containsString("night run"))
                .body(not(containsString(token)));
        given().header("Authorization", "Bearer " + token).get("/api/me").then().statusCode(200);
    }

    @Test
    void every_answer_forbids_framing_and_foreign_sources_and_pages_are_not_kept_by_caches() {
        given().get("/sign-in")
                .then()
                .header(
                        "Content-Security-Policy",
                        allOf(containsString("default-src 'self'"), containsString("frame-ancestors 'none'")))
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin")
                .header("Cache-Control", "no-store");
    }

    @Test
    void an_address_that_leads_nowhere_is_a_page_for_people_and_a_problem_for_programs() {
        given().accept("text/html").get("/nowhere").then().statusCode(404).contentType("text/html");
        given().get("/api/nowhere").then().statusCode(404).contentType(PROBLEM).body("title", equalTo("Not found"));
    }
}
