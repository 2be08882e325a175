package org.washwright.app;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.cli.ExitCode;

/** What happens to the data when things go wrong; each test uses the packaged program as a process of its own. */
@Tag("slow")
class DataFolderIT {
    @TempDir
    Path temp;

    @Test
    void what_was_kept_survives_the_killing_of_the_service_and_a_clean_stop_leaves_no_server() throws Exception {
        Path data = temp.resolve("data");
        PackagedService first = PackagedService.start(data);
        given().get(first.address() + "/q/health/ready").then().statusCode(200);
        write(data, "CREATE TABLE kept AS SELECT 42 AS answer");
        long orphan = serverOf(data);
        first.kill();
        assertTrue(ProcessHandle.of(orphan).isPresent(), "the killed service leaves its database server behind");

        try (PackagedService second = PackagedService.start(data)) {
            given().get(second.address() + "/q/health/ready").then().statusCode(200);
            assertEquals(42, read(data, "SELECT answer FROM kept"));
            assertEquals(1, read(data, "SELECT count(*) FROM workspace"));
            assertEquals(1, read(data, "SELECT count(*) FROM pg_settings WHERE name = 'fsync' AND setting = 'on'"));
        }
        assertFalse(Files.exists(data.resolve("database").resolve("postmaster.pid")), "a clean stop stops the server");
    }

    @Test
    void a_second_start_on_the_same_folder_says_which_folder_and_what_to_do() throws Exception {
        Path data = temp.resolve("data");
        try (PackagedService first = PackagedService.start(data)) {
            first.address();
            PackagedService second = PackagedService.start(data);
            assertEquals(ExitCode.CANNOT_START, second.exitCode());
            assertTrue(second.output().contains(data.toRealPath().toString()), second.output());
            assertTrue(second.output().contains("-Dwashwright.data-dir=FOLDER"), second.output());
            given().get(first.address() + "/q/health/ready").then().statusCode(200);
        }
    }

    @Test
    void a_service_that_others_can_reach_has_no_demo_accounts() {
        try (PackagedService service = PackagedService.start(
                temp.resolve("data"),
                "-Dquarkus.http.host=0.0.0.0",
                "-Dwashwright.administrator.password=a long enough one")) {
            String address = "http://127.0.0.1:" + service.address().getPort();
            assertFalse(service.output().contains("password: "), service.output());
            String page = given().get(address + "/sign-in").asString();
            assertFalse(page.contains("demo"), page);
            assertTrue(service.output().contains("first administrator 'admin'"), service.output());
        }
    }

    private static long serverOf(Path data) throws Exception {
        return Long.parseLong(pidFile(data).get(0));
    }

    private static List<String> pidFile(Path data) throws Exception {
        return Files.readAllLines(data.resolve("database").resolve("postmaster.pid"));
    }

    private static void write(Path data, String sql) throws Exception {
        try (Connection connection = connect(data)) {
            connection.createStatement().execute(sql);
        }
    }

    private static long read(Path data, String sql) throws Exception {
        try (Connection connection = connect(data);
                ResultSet rows = connection.createStatement().executeQuery(sql)) {
            rows.next();
            return rows.getLong(1);
        }
    }

    /** The fourth line of the server's process file is its port. */
    private static Connection connect(Path data) throws Exception {
        String password = Files.readString(data.resolve("database.password")).strip();
        return DriverManager.getConnection(
                "jdbc:postgresql://127.0.0.1:" + pidFile(data).get(3).strip() + "/washwright", "washwright", password);
    }
}
