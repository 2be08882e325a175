package org.washwright.cli;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import org.washwright.assessment.Program;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * Decides whether the arguments ask for a headless command and, if so, runs it.
 *
 * <p>A headless command is answered before Quarkus starts: no server, no database. New commands are added to
 * {@link #commandLine()}. Exit codes are those of {@link ExitCode}.
 */
public final class CommandLineEntry {
    private static final String SERVE = "serve";

    private CommandLineEntry() {}

    /** The exit code of the headless command, or empty when the service is to be started. */
    public static OptionalInt run(String[] args) {
        if (args.length == 0 || args.length == 1 && args[0].equals(SERVE)) {
            return OptionalInt.empty();
        }
        QuietLog.apply();
        // Text is UTF-8 whatever the terminal's locale says, so that the bytes of an answer are its hashed bytes.
        PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), true);
        PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
        return OptionalInt.of(commandLine().setOut(out).setErr(err).execute(args));
    }

    /** The whole command line; package-private so that tests can give it their own writers. */
    static CommandLine commandLine() {
        return new CommandLine(new Washwright())
                .addSubcommand(new Serve())
                .addSubcommand(new Assess())
                .addSubcommand(new WhyCommand())
                .addSubcommand(new WhyNotCommand())
                .addSubcommand(new VerifyCommand())
                .addSubcommand(new KeepCaseCommand())
                .addSubcommand(new MarkCommand())
                .addSubcommand(new MarksCommand())
                .addSubcommand(new ReportCommand())
                .addSubcommand(new Bulk())
                .addSubcommand(new PlantCommand())
                .addSubcommand(new ChangesCommand())
                .addSubcommand(new FindOutCommand())
                .addSubcommand(new Check())
                .addSubcommand(new Cases())
                .addSubcommand(new Examine())
                .addSubcommand(new ProposeCases())
                .addSubcommand(new CoverageCommand())
                .addSubcommand(new GridCommand())
                .addSubcommand(new ReplayCommand())
                .addSubcommand(new ExerciseCommand())
                .addSubcommand(new CompareCommand())
                .addSubcommand(new WhatIfCommand())
                .addSubcommand(new Template())
                .addSubcommand(new TableCommand())
                .setExecutionExceptionHandler((failure, line, parsed) -> {
                    line.getErr().println("washwright: internal error: " + failure);
                    line.getErr().println("This is a fault of the program; please report it with the command used.");
                    return ExitCode.INTERNAL;
                });
    }

    /** The top command: help and version only. */
    @Command(
            name = "washwright",
            mixinStandardHelpOptions = true,
            versionProvider = Version.class,
            description = "Turns a parts-cleaning task into defensible cleaning processes, with every reason shown.",
            footerHeading = "%nExit codes:%n",
            footer = {
                "  0   done",
                "  1   the task has no recommended process, some of many tasks were refused,",
                "      a plant can't serve one of its tasks, no change that was looked for was found,",
                "      or the edition has errors, a case that fails or a finding nobody accepted,",
                "      or an answer does not follow from its request",
                "  2   the command line is wrong",
                "  3   a task, a change of it, an answer, a plant, an input or an edition could not be read;",
                "      the reasons are listed",
                "  69  the service could not start",
                "  70  a fault of the program",
                "  74  the output could not be written",
                "  130 ended by a signal, after what was begun was written",
                "  141 nobody read the output any more"
            })
    static final class Washwright implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Override
        public void run() {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "No command given; start the service with no arguments or with 'serve'.");
        }
    }

    /** Named here for the help text; {@link #run} hands it back to the caller instead of running it. */
    @Command(name = SERVE, description = "Starts the service (the same as no arguments at all).")
    static final class Serve implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Override
        public void run() {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "'serve' takes no arguments; settings come from the environment or a file.");
        }
    }

    /** Tells picocli the version. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"washwright " + Program.version()};
        }
    }
}
