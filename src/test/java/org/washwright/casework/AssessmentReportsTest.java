package org.washwright.casework;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;

@QuarkusTest
class AssessmentReportsTest {
    private static final Map<String, RequestSpecification> TOKENS = new ConcurrentHashMap<>();

    @Inject
    OtherWorkspace others;

    private String task;
    private String answer;
    private String hash;

    @BeforeEach
    void an_answer() throws IOException {
        others.inDemo("reader", Roles.TRAINEE);
        task = as("engineer")
                .contentType("application/yaml")
                .body(Files.readAllBytes(Path.of("demo-data/tasks/bearing-rings.yaml")))
                .post("/api/tasks")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        Response made = as("engineer")
                .contentType("application/json")
                .body("{\"asOf\":\"2026-01-01\"}")
                .post("/api/tasks/" + task + "/assessments");
        answer = made.then().statusCode(201).extract().path("id");
        hash = made.header("Washwright-Answer-Hash");
    }

    @Test
    void a_report_comes_as_pdf_workbook_and_page_under_the_hash_of_its_answer() throws IOException {
        String address = "/api/assessments/" + answer + "/report";
        byte[] pdf = file(address, "application/pdf", ".pdf\"");
        assertArrayEquals(pdf, file(address + "?format=pdf", "application/pdf", ".pdf\""));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals("Answer " + hash, document.getDocumentInformation().getSubject());
        }
        byte[] book = file(
                address + "?format=xlsx",
                "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
                ".xlsx\"");
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(book))) {
            assertTrue(workbook.findSheet("figures").isPresent());
        }
        file(address + "?format=html", "text/html", ".html\"");
        as("reader")
                .header("If-None-Match", "\"" + hash + "\"")
                .get(address)
                .then()
                .statusCode(304);
    }

    private byte[] file(String address, String type, String ending) {
        return as("reader")
                .get(address)
                .then()
                .statusCode(200)
                .contentType(startsWith(type))
                .header("ETag", "\"" + hash + "\"")
                .header("Content-Disposition", startsWith("attachment; filename=\"bearing-rings-ground-and-honed"))
                .header("Content-Disposition", endsWith(ending))
                .extract()
                .asByteArray();
    }

    @Test
    void the_process_that_is_asked_for_is_written_out_and_an_unknown_one_is_a_problem() {
        String address = "/api/assessments/" + answer + "/report?format=html";
        as("reader")
                .get(address + "&process=neutral-ultrasonic")
                .then()
                .statusCode(200)
                .header("Content-Disposition", containsString("neutral-ultrasonic"))
                .body(containsString("Neutral immersion with ultrasonics</b>"));
        for (String wrong : List.of("acid-pickling", "moon-dust", "%22%0D%0Ax")) {
            as("reader")
                    .urlEncodingEnabled(false)
                    .get(address + "&process=" + wrong)
                    .then()
                    .statusCode(404)
                    .contentType("application/problem+json")
                    .body("detail", containsString("no process"));
        }
        as("reader")
                .get("/api/assessments/" + answer + "/report?format=doc")
                .then()
                .statusCode(404)
                .body("detail", containsString("pdf, xlsx, html"));
    }

    @Test
    void reports_of_another_workspace_are_not_there() {
        others.withPerson("over-there", "visitor");
        as("visitor")
                .get("/api/assessments/" + answer + "/report")
                .then()
                .statusCode(404)
                .contentType("application/problem+json");
        SignedInBrowser.as("visitor")
                .request()
                .get("/tasks/" + task + "/assessments/" + answer + "/report")
                .then()
                .statusCode(404);
    }

    @Test
    void a_change_of_the_task_shows_in_the_tag_and_in_the_report() {
        as("engineer")
                .contentType("application/yaml")
                .header("If-Match", "\"v0\"")
                .body("title: Renamed rings\n".getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .put("/api/tasks/" + task)
                .then()
                .statusCode(200);
        as("reader")
                .header("If-None-Match", "\"" + hash + "\"")
                .get("/api/assessments/" + answer + "/report?format=html")
                .then()
                .statusCode(200)
                .header("ETag", "\"" + hash + "-v1\"")
                .body(containsString("The task was changed after this answer"))
                .body(containsString("62 HRC"));
    }

    @Test
    void pages_lead_to_the_report_and_the_print_view_keeps_to_the_policy() {
        SignedInBrowser browser = SignedInBrowser.as("reader");
        String page = "/tasks/" + task + "/assessments/" + answer;
        String shown = get(browser, page);
        for (String link : List.of("/report.pdf\"", "/report.xlsx\"", "/report\"")) {
            assertTrue(shown.contains("href=\"" + page + link), link);
        }
        String candidate = get(browser, page + "/processes/neutral-ultrasonic");
        assertTrue(candidate.contains("href=\"" + page + "/report.pdf?process=neutral-ultrasonic\""));
        String print = browser.request()
                .get(page + "/report?process=neutral-ultrasonic")
                .then()
                .statusCode(200)
                .header("Content-Security-Policy", containsString("default-src 'self'"))
                .contentType("text/html;charset=UTF-8")
                .body(not(containsString("<style")))
                .body(not(containsString("<script")))
                .extract()
                .asString();
        assertTrue(print.contains(hash));
        assertFalse(print.contains(" style="));
        for (String sheet : List.of("/assets/report.css", "/assets/report-screen.css")) {
            assertTrue(print.contains(sheet));
            given().get(sheet).then().statusCode(200).contentType(startsWith("text/css"));
        }
        browser.request().get(page + "/report.pdf").then().statusCode(200).contentType("application/pdf");
        browser.request().get(page + "/report?process=moon-dust").then().statusCode(404);
    }

    private static String get(SignedInBrowser browser, String address) {
        return browser.request().get(address).then().statusCode(200).extract().asString();
    }

    private static RequestSpecification as(String who) {
        return given().spec(TOKENS.computeIfAbsent(who, SignedInBrowser::bearer));
    }
}
