package org.washwright.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.washwright.analysis.KnownFinding;
import org.washwright.cases.Case;
import org.washwright.document.Node;
import org.washwright.grid.GridPlan;
import org.washwright.rule.Edition;
import org.washwright.rule.QuestionTree;
import org.washwright.rule.check.CheckedRule;
import org.washwright.rule.syntax.SyntaxRule;

/**
 * What files of editions were read as, so that after a change of one file only that file, and what hangs on it, is read
 * again. Everything is kept by the hash of the bytes it was made from, so it can't speak of other bytes; a reading with a
 * memory and one without give the same. Bounded; safe for several threads.
 */
public final class ReadFiles {

    /** Most bytes of source that each kind of thing kept may come from: two of the largest editions. */
    private static final long MOST_BYTES = 2 * EditionFiles.MAX_TOTAL;

    private static final int MOST_FILES = 4 * EditionFiles.MAX_FILES;
    private static final int MOST_EDITIONS = 24;

    private final AtomicLong readings = new AtomicLong();

    final Memory<Optional<Node>> documents = new Memory<>(MOST_BYTES, MOST_FILES, readings::get);
    final Memory<Words> words = new Memory<>(MOST_BYTES, MOST_EDITIONS, readings::get);
    final Memory<List<SyntaxRule>> written = new Memory<>(MOST_BYTES, MOST_FILES, readings::get);
    final Memory<List<CheckedRule>> checked = new Memory<>(MOST_BYTES, MOST_FILES, readings::get);
    final Memory<Map<String, QuestionTree>> trees = new Memory<>(MOST_BYTES, MOST_EDITIONS, readings::get);
    final Memory<Map<String, Edition.Assumption>> assumptions = new Memory<>(MOST_BYTES, MOST_EDITIONS, readings::get);
    final Memory<List<Case>> cases = new Memory<>(MOST_BYTES, MOST_EDITIONS, readings::get);
    final Memory<List<KnownFinding>> known = new Memory<>(MOST_BYTES, MOST_EDITIONS, readings::get);
    final Memory<Optional<GridPlan>> grid = new Memory<>(MOST_BYTES, MOST_EDITIONS, readings::get);

    /** Notes that an edition is read now; what the readings before did not ask for can go. */
    void begin() {
        readings.incrementAndGet();
    }
}
