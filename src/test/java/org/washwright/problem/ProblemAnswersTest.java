package org.washwright.problem;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.washwright.access.SignedInBrowser;

@QuarkusTest
class ProblemAnswersTest {
    @Test
    void a_fault_of_the_program_is_told_by_a_reference_and_nothing_of_its_inside() {
        given().get("/api/failing/unexpected")
                .then()
                .statusCode(500)
                .contentType(Problem.MEDIA_TYPE)
                .body("detail", matchesPattern(".*reference [0-9a-f]{8}, which stands in the log.*"))
                .body(not(containsString("secret")))
                .body(not(containsString("Exception")));
        given().accept("text/html")
                .get("/failing/page")
                .then()
                .statusCode(500)
                .contentType("text/html")
                .body(allOf(containsString("Something went wrong"), not(containsString("secret"))));
    }

    @Test
    void named_refusals_carry_their_status_and_advice() {
        given().get("/api/failing/changed")
                .then()
                .statusCode(412)
                .body("title", equalTo("Changed meanwhile"))
                .body("detail", containsString("read it again"));
        given().get("/api/failing/conflict").then().statusCode(409).body("title", equalTo("Conflict"));
    }

    @Test
    void a_resource_that_forgets_to_name_a_role_is_closed_even_to_those_signed_in() {
        given().get("/api/failing/forgotten").then().statusCode(401);
        given().spec(SignedInBrowser.bearer("administrator"))
                .get("/api/failing/forgotten")
                .then()
                .statusCode(403)
                .contentType(Problem.MEDIA_TYPE);
    }
}
