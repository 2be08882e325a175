package org.washwright.app;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusBindException;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.washwright.cli.CommandLineEntry;
import org.washwright.cli.ExitCode;

/**
 * The entry point. A headless command is answered at once; otherwise the database is brought up, then the service.
 */
@QuarkusMain
public final class Main {
    private Main() {}

    /** Starts the program. */
    public static void main(String... args) {
        OptionalInt answered = CommandLineEntry.run(args);
        if (answered.isPresent()) {
            System.exit(answered.getAsInt());
        }
        try {
            serve(Settings.read());
        } catch (StartFailure e) {
            System.err.println("Washwright could not start.");
            System.err.println(e.getMessage());
            System.exit(ExitCode.CANNOT_START);
        }
    }

    private static void serve(Settings settings) {
        if (settings.externalDatabase()) {
            Quarkus.run(Service.class);
            return;
        }
        EmbeddedDatabase database = startDatabase(settings);
        database.connection().forEach(System::setProperty);
        CountDownLatch stopped = new CountDownLatch(1);
        // A signal ends the process as soon as all hooks are done: this one waits until the service has let go of the
        // database and the database is down. After kill -9 the next start stops the server left behind.
        Runtime.getRuntime().addShutdownHook(new Thread(() -> await(stopped), "database-closer"));
        int[] code = {0};
        try {
            Quarkus.run(Service.class, (exitCode, failure) -> {
                code[0] = failure == null ? exitCode : ExitCode.CANNOT_START;
                tell(failure);
            });
        } finally {
            stop(database);
            stopped.countDown();
        }
        System.exit(code[0]);
    }

    /** The operator is told why the service failed, in full: this is a terminal or a log, not a caller. */
    private static void tell(Throwable failure) {
        if (failure == null) {
            return;
        }
        System.err.println("Washwright could not start.");
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof QuarkusBindException bind) {
                System.err.println(
                        "The port " + bind.getPort() + " on " + bind.getHost() + " is taken by another program."
                                + " Stop that one, or choose another port with -Dquarkus.http.port=PORT.");
                return;
            }
        }
        StringWriter trace = new StringWriter();
        failure.printStackTrace(new PrintWriter(trace));
        System.err.println(trace);
    }

    private static void await(CountDownLatch stopped) {
        try {
            if (!stopped.await(30, TimeUnit.SECONDS)) {
                System.err.println("The database is still stopping; the next start waits for it.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static EmbeddedDatabase startDatabase(Settings settings) {
        DataFolder folder = DataFolder.lock(settings.dataFolder());
        System.out.println("Washwright keeps its data in " + folder.root()
                + (folder.isNew() ? "; preparing it takes about ten seconds." : "."));
        return EmbeddedDatabase.start(folder, settings.databasePort());
    }

    private static void stop(EmbeddedDatabase database) {
        try {
            database.close();
        } catch (IOException e) {
            System.err.println("The database did not stop cleanly (" + e + "); the next start recovers it.");
        }
    }
}
