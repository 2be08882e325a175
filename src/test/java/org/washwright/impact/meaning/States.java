package org.washwright.impact.meaning;

import java.util.Map;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;

/** States of rulebooks for tests. */
public final class States {

    private States() {}

    /** Reads texts that have to be sound. */
    public static State read(Map<String, String> texts) {
        return read(SmallEdition.files(texts));
    }

    /** Reads files that have to be sound. */
    public static State read(EditionFiles files) {
        EditionReader.Result result = new EditionReader(new DrlReader()).read(files);
        return State.of(
                result.edition()
                        .orElseThrow(() ->
                                new AssertionError(result.diagnostics().all().toString())),
                result.checks().cases(),
                files.files());
    }
}
