package org.washwright.access;

import static io.restassured.RestAssured.given;

import io.restassured.builder.RequestSpecBuilder;
import io.restassured.filter.cookie.CookieFilter;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A browser without a screen for tests: keeps cookies, brings the form token along, follows no redirect by itself. */
public final class SignedInBrowser {
    private static final Pattern TOKEN = Pattern.compile("name=\"csrf-token\" value=\"([^\"]+)\"");

    private final CookieFilter cookies = new CookieFilter();

    /** A browser signed in with one of the demo accounts. */
    public static SignedInBrowser as(String demoAccount) {
        SignedInBrowser browser = new SignedInBrowser();
        browser.post("/sign-in", "/sign-in", Map.of("name", demoAccount, "password", DemoAccounts.PASSWORD))
                .then()
                .statusCode(303);
        return browser;
    }

    /** A request specification that carries a fresh bearer token of a demo account; for tests of the REST API. */
    public static RequestSpecification bearer(String demoAccount) {
        String token = as(demoAccount)
                .request()
                .header("X-Washwright", "1")
                .contentType("application/json")
                .body("{\"label\":\"test\"}")
                .post("/api/tokens")
                .then()
                .statusCode(201)
                .extract()
                .path("token");
        return new RequestSpecBuilder()
                .addHeader("Authorization", "Bearer " + token)
                .build();
    }

    /** A request with this browser's cookies. */
    public RequestSpecification request() {
        return given().filter(cookies).redirects().follow(false).accept("text/html, */*;q=0.5");
    }

    /** Sends a form that stands on a page, with that page's form token. */
    public Response post(String page, String action, Map<String, String> fields) {
        return request()
                .contentType("application/x-www-form-urlencoded; charset=UTF-8")
                .formParam("csrf-token", formToken(page))
                .formParams(fields)
                .post(action);
    }

    /** The form token on a page. */
    public String formToken(String page) {
        Matcher matcher = TOKEN.matcher(request().get(page).asString());
        if (!matcher.find()) {
            throw new AssertionError("no form token on " + page);
        }
        return matcher.group(1);
    }
}
