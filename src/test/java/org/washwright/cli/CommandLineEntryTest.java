package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class CommandLineEntryTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final CommandLine line =
            CommandLineEntry.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));

    @Test
    void no_arguments_and_serve_start_the_service() {
        assertTrue(CommandLineEntry.run(new String[0]).isEmpty());
        assertTrue(CommandLineEntry.run(new String[] {"serve"}).isEmpty());
    }

    @Test
    void the_version_is_the_one_of_the_build() {
        assertEquals(ExitCode.OK, line.execute("--version"));
        assertTrue(out.toString().strip().matches("washwright \\d+\\.\\d+\\.\\d+.*"), out.toString());
    }

    @Test
    void the_help_names_every_exit_code() {
        assertEquals(ExitCode.OK, line.execute("--help"));
        for (int code : new int[] {0, 1, 2, 3, 69, 70, 74, 130, 141}) {
            assertTrue(out.toString().contains("  " + code + " "), out.toString());
        }
    }

    @Test
    void an_unknown_command_is_a_usage_error_and_starts_nothing() {
        assertEquals(ExitCode.USAGE, line.execute("asess"));
        assertTrue(err.toString().contains("asess"), err.toString());
    }
}
