package org.washwright.rulebook;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.RestAssured;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.access.SignedInBrowser;
import org.washwright.app.PackagedService;
import org.washwright.exchange.EditionFiles;
import org.washwright.generate.SmallEdition;

/** A release that is killed right after each of its steps leaves the draft as it was or the whole released edition. */
@Tag("load")
class ReleaseKilledIT {
    private static final int KILLED = 137;
    private static final String WORD = "{\"note\":\"read\",\"despite\":\"it has no cases\"}";

    @TempDir
    Path temp;

    @Test
    void a_release_killed_after_any_step_leaves_a_whole_state() throws Exception {
        EditionFiles files = SmallEdition.files(SmallEdition.withFewRules());
        Path data = temp.resolve("data");
        String given = "-Dwashwright.rulebook.starter=" + unfolded(files);
        String edition = "";
        for (ReleaseStep step : ReleaseStep.values()) {
            PackagedService service =
                    PackagedService.start(data, given, "-Dwashwright.test.halt-after-step=" + step.name());
            listenTo(service);
            if (edition.isEmpty()) {
                edition = asked(
                        Bundle.of(files).with("rules/note.drl", "// " + step).zip());
            }
            JsonPath before = seen(edition);
            Response lost = releaseOrNothing(edition, before);
            assertEquals(KILLED, service.exitCode(), service.output());
            assertNull(lost, "no answer can come from a program that was killed");
            try (PackagedService again = PackagedService.start(data, given)) {
                listenTo(again);
                JsonPath after = seen(edition);
                boolean released = step.compareTo(ReleaseStep.NUMBERED) >= 0;
                assertEquals(before.getString("textHash"), after.getString("textHash"));
                assertEquals(released ? "released" : "asked for review", after.getString("state"), step.toString());
                assertEquals(released, after.get("number") != null, step.toString());
                String answering = SignedInBrowser.as("reviewer")
                        .request()
                        .get("/rulebooks/" + (released ? edition : starterId()))
                        .asString();
                assertTrue(answering.contains("This edition answers new tasks"), step.toString());
                if (released) {
                    withdraw(edition, after);
                    edition = "";
                }
            }
        }
    }

    private static void listenTo(PackagedService service) {
        RestAssured.baseURI = "http://127.0.0.1";
        RestAssured.port = service.address().getPort();
    }

    private Path unfolded(EditionFiles files) {
        Path folder = temp.resolve("starter");
        files.files().forEach((name, bytes) -> {
            try {
                Path file = folder.resolve(name);
                Files.createDirectories(file.getParent());
                Files.write(file, bytes);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return folder;
    }

    private static String asked(byte[] zip) {
        String id = as("consultant")
                .contentType("application/zip")
                .body(zip)
                .post("/api/editions")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        as("consultant")
                .contentType("application/json")
                .header("If-Match", "\"v" + seen(id).getInt("version") + "\"")
                .body("{}")
                .post("/api/editions/" + id + "/review")
                .then()
                .statusCode(200);
        return id;
    }

    /** The answer to a release; null when the connection breaks, as it does when the other side is killed. */
    private static Response releaseOrNothing(String id, JsonPath view) {
        RequestSpecification request = as("reviewer")
                .contentType("application/json")
                .header("If-Match", "\"v" + view.getInt("version") + "\"")
                .body(WORD);
        try {
            return request.post("/api/editions/" + id + "/release");
        } catch (Exception connectionBroke) {
            return null;
        }
    }

    private static void withdraw(String id, JsonPath view) {
        as("reviewer")
                .contentType("application/json")
                .header("If-Match", "\"v" + view.getInt("version") + "\"")
                .body("{\"note\":\"end of a step\"}")
                .post("/api/editions/" + id + "/withdrawal")
                .then()
                .statusCode(200);
    }

    private static JsonPath seen(String id) {
        return as("reviewer")
                .get("/api/editions/" + id)
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private static String starterId() {
        return as("reviewer").get("/api/editions?size=100").jsonPath().getString("items.find { it.starter }.id");
    }

    private static RequestSpecification as(String who) {
        return given().spec(SignedInBrowser.bearer(who));
    }
}
