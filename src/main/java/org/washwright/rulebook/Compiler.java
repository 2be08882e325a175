package org.washwright.rulebook;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.washwright.assessment.Assessor;
import org.washwright.drools.DroolsInference;
import org.washwright.drools.Units;
import org.washwright.problem.ProblemException;
import org.washwright.rule.Edition;

/**
 * Makes editions ready to answer, one at a time and on a thread of its own, and keeps the last few by the hash of their
 * files: the same files in two workspaces are made ready once.
 */
@ApplicationScoped
class Compiler {
    /** Editions kept ready. */
    static final int KEPT = 4;

    private static final int WAITING = 32;

    private final Recent<CompletableFuture<Assessor>> ready = new Recent<>(KEPT);
    private final ExecutorService thread =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING), task -> {
                Thread made = new Thread(task, "edition-compiler");
                made.setDaemon(true);
                made.setContextClassLoader(Compiler.class.getClassLoader());
                return made;
            });

    private final Units units;

    /** Keeps compiled rules below the data folder, so that a restart compiles nothing. */
    Compiler(@ConfigProperty(name = "washwright.data-dir") Path dataFolder) {
        units = Units.in(dataFolder.resolve("compiled-rules"));
    }

    /** An edition ready to answer, at once or when it is done; how far it is, is told in words. */
    CompletableFuture<Assessor> ready(String textHash, Supplier<Edition> edition, Consumer<String> progress) {
        CompletableFuture<Assessor> found = ready.get(textHash, key -> start(edition, progress));
        found.whenComplete((assessor, failure) -> {
            if (failure != null) {
                ready.remove(textHash, found);
            }
        });
        return found;
    }

    int kept() {
        return ready.size();
    }

    private CompletableFuture<Assessor> start(Supplier<Edition> edition, Consumer<String> progress) {
        try {
            return CompletableFuture.supplyAsync(
                    () -> Assessor.of(
                            edition.get(),
                            DroolsInference.factory(
                                    units, (done, all) -> progress.accept("part " + done + " of " + all))),
                    thread);
        } catch (RejectedExecutionException e) {
            throw new ProblemException(
                    503, "Busy", "Too many editions are being made ready; try again in a minute.", List.of());
        }
    }

    @PreDestroy
    void stop() {
        thread.shutdownNow();
    }
}
