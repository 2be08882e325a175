package org.washwright.impact.replay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.cases.Case;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.impact.meaning.State;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;
import org.washwright.task.TaskWriter;

/**
 * A task to be answered by both editions. It is read anew by the words of each, as whoever gave it would find it read.
 *
 * @param key tells it from the others: id of a kept task or of a case, name of a file
 * @param title what people call it
 * @param origin where it comes from
 * @param asOf date for which law is read, ISO 8601; empty for that of the run
 * @param reader reads it by an edition
 */
public record Trial(String key, String title, Origin origin, Optional<String> asOf, Reader reader) {

    /** Reads a task by the words of an edition. */
    public interface Reader {
        /** The task; empty after what is wrong was added. */
        Optional<CleaningTask> read(Edition edition, Diagnostics diagnostics);
    }

    /** A task out of a document in YAML or JSON. */
    public static Trial of(String key, String title, Origin origin, Optional<String> asOf, byte[] document) {
        return new Trial(
                key, title, origin, asOf, (edition, wrong) -> TaskReader.read(title, document, edition, wrong));
    }

    /**
     * The tasks of the cases of both states, those of the later one first; cases with the same task and date are tried once,
     * under the first of them.
     */
    public static List<Trial> ofCases(State before, State after) {
        Map<String, Trial> out = new LinkedHashMap<>();
        Set<String> known = new HashSet<>();
        for (State state : List.of(after, before)) {
            for (Case c : state.cases()) {
                if (known.add(c.id())) {
                    Map<String, Object> data = new LinkedHashMap<>(TaskWriter.data(c.task(), state.edition()));
                    data.put("title", c.title());
                    data.remove("notes");
                    byte[] document = Hashes.canonical(data);
                    data.remove("title");
                    String same =
                            Hashes.sha256(Hashes.canonical(data)) + c.asOf().orElse("");
                    out.putIfAbsent(same, of(c.id(), c.title(), Origin.CASE, c.asOf(), document));
                }
            }
        }
        return new ArrayList<>(out.values());
    }
}
