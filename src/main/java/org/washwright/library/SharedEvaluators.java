package org.washwright.library;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionFiles;

/**
 * Evaluators shared by everything that runs in this JVM. Each edition is loaded once however many threads ask for it: the
 * tasks of a distributed job that land on one worker share one evaluator. Editions are told apart by their text hash.
 */
public final class SharedEvaluators {

    /** Most evaluators kept; the one not asked for longest goes first. */
    static final int KEPT = 8;

    private static final Map<Key, Holder> HOLDERS = new LinkedHashMap<>(16, 0.75f, true);

    private SharedEvaluators() {}

    private record Key(String textHash, Engine engine) {}

    /**
     * The evaluator for the bytes of a zip bundle.
     *
     * @throws UnusableEdition when the edition has errors
     */
    public static TaskEvaluator of(byte[] bundle, Engine engine) {
        Diagnostics diagnostics = new Diagnostics();
        return of(EditionFiles.ofZip(bundle, diagnostics), diagnostics, engine);
    }

    /**
     * The evaluator for a folder or zip bundle that each worker can read.
     *
     * @throws UnusableEdition when the edition has errors
     * @throws IOException when it can't be read at all
     */
    public static TaskEvaluator of(Path folderOrBundle, Engine engine) throws IOException {
        Diagnostics diagnostics = new Diagnostics();
        return of(EditionInput.files(folderOrBundle, diagnostics), diagnostics, engine);
    }

    private static TaskEvaluator of(EditionFiles files, Diagnostics diagnostics, Engine engine) {
        if (diagnostics.hasErrors()) {
            throw new UnusableEdition(diagnostics.all());
        }
        return holder(new Key(files.textHash(), engine)).get(files, diagnostics, engine);
    }

    private static Holder holder(Key key) {
        synchronized (HOLDERS) {
            Holder holder = HOLDERS.computeIfAbsent(key, k -> new Holder());
            if (HOLDERS.size() > KEPT) {
                HOLDERS.remove(HOLDERS.keySet().iterator().next());
            }
            return holder;
        }
    }

    /** Loads under its own lock, so that a slow edition holds up nobody who asks for another. */
    private static final class Holder {
        private TaskEvaluator evaluator;

        synchronized TaskEvaluator get(EditionFiles files, Diagnostics diagnostics, Engine engine) {
            if (evaluator == null) {
                evaluator = TaskEvaluator.of(files, diagnostics, engine);
            }
            return evaluator;
        }
    }
}
