package org.washwright.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StaleServerTest {
    @TempDir
    Path cluster;

    private Process stranger;

    @BeforeEach
    void startStranger() throws Exception {
        stranger = new ProcessBuilder("sleep", "60").start();
    }

    @AfterEach
    void stopStranger() {
        stranger.destroyForcibly();
    }

    @Test
    void a_stranger_that_got_the_process_id_of_the_dead_server_is_left_alone_and_the_stale_file_goes()
            throws Exception {
        Path pidFile = Files.writeString(cluster.resolve("postmaster.pid"), stranger.pid() + "\n" + cluster + "\n");
        new StaleServer(cluster).stop();
        assertTrue(stranger.isAlive());
        assertFalse(Files.exists(pidFile));
    }

    @Test
    void a_file_that_names_nobody_alive_is_left_to_the_server_itself() throws Exception {
        stranger.destroyForcibly().waitFor();
        Path pidFile = Files.writeString(cluster.resolve("postmaster.pid"), stranger.pid() + "\n");
        new StaleServer(cluster).stop();
        assertTrue(Files.exists(pidFile));
    }

    @Test
    void a_file_that_cannot_be_read_is_told_with_its_path_and_advice() throws Exception {
        Path pidFile = Files.writeString(cluster.resolve("postmaster.pid"), "not a number\n");
        StartFailure failure = assertThrows(StartFailure.class, () -> new StaleServer(cluster).stop());
        assertTrue(failure.getMessage().contains(pidFile.toString()), failure.getMessage());
        assertTrue(failure.getMessage().contains("delete that file"), failure.getMessage());
    }
}
