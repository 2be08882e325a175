package org.washwright.rulebook;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.access.SignedInBrowser;
import org.washwright.generate.RuleWriter;
import org.washwright.generate.SmallEdition;

/** Two hundred releases of twenty rules each, all compiled anew: what is left over in memory would be a leak. */
@QuarkusTest
@Tag("load")
class ManyReleasesIT {
    private static final int RELEASES = 200;
    private static final int RULES = 20;

    private final Map<String, RequestSpecification> tokens = new HashMap<>();

    @Test
    void two_hundred_releases_of_twenty_rules_leave_memory_flat() {
        long[] heap = new long[4];
        long[] classes = new long[4];
        for (int i = 0; i < RELEASES; i++) {
            release(RuleWriter.write(new Random(i), SmallEdition.with(""), RULES));
            if (i % 5 == 4) {
                int quarter = i * 4 / RELEASES;
                System.gc();
                heap[quarter] += usedHeap();
                classes[quarter] += ManagementFactory.getClassLoadingMXBean().getLoadedClassCount();
            }
        }
        System.out.println("heap by quarters " + Arrays.toString(heap) + ", classes " + Arrays.toString(classes));
        // The first quarter warms up; 5 % is what this project allows itself.
        assertTrue(heap[3] < 1.05 * heap[1], "heap grew from " + heap[1] + " to " + heap[3]);
        assertTrue(classes[3] < 1.05 * classes[1], "classes grew from " + classes[1] + " to " + classes[3]);
    }

    private void release(String drl) {
        String id = as("consultant")
                .contentType("application/zip")
                .body(Bundle.of(SmallEdition.files(SmallEdition.texts()))
                        .with("rules/made.drl", drl)
                        .zip())
                .post("/api/editions")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        String at = "/api/editions/" + id;
        String asked = as("consultant")
                .contentType("application/json")
                .header("If-Match", as("consultant").get(at).header("ETag"))
                .body("{}")
                .post(at + "/review")
                .then()
                .statusCode(200)
                .extract()
                .header("ETag");
        as("reviewer")
                .contentType("application/json")
                .header("If-Match", asked)
                .body("{\"note\":\"read\",\"despite\":\"a load test\"}")
                .post(at + "/release")
                .then()
                .statusCode(200);
    }

    private static long usedHeap() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    private RequestSpecification as(String who) {
        return given().spec(tokens.computeIfAbsent(who, SignedInBrowser::bearer));
    }
}
