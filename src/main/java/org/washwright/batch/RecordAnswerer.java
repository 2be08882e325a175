package org.washwright.batch;

import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.library.Evaluation;

/** Makes the line of a record. Safe for many threads. */
final class RecordAnswerer {

    private static final byte[] NONE = new byte[0];

    private final RecordSource source;
    private final Evaluating evaluating;
    private final boolean full;

    /** Answers the task document of a record. */
    interface Evaluating {
        Evaluation evaluate(String name, byte[] task);
    }

    /**
     * What came of a record.
     *
     * @param document the task document; empty unless it was answered
     * @param hash of the answer; empty unless it was answered
     * @param trouble why it was not answered, in words; empty when it was
     */
    record Result(byte[] line, Status status, byte[] document, String hash, List<String> trouble) {}

    RecordAnswerer(RecordSource source, Evaluating evaluating, boolean full) {
        this.source = source;
        this.evaluating = evaluating;
        this.full = full;
    }

    Result answer(InputRecord record) {
        try {
            Diagnostics diagnostics = new Diagnostics();
            record.unusable().forEach(d -> diagnostics.add(d.at(placeOf(record))));
            Optional<byte[]> document =
                    diagnostics.hasErrors() ? Optional.empty() : source.document(record, diagnostics);
            if (document.isEmpty()) {
                return refused(record, new Evaluation.Refused("", diagnostics.all()));
            }
            Evaluation evaluation = evaluating.evaluate(record.key(), document.get());
            if (evaluation instanceof Evaluation.Answered answered) {
                byte[] line = ResultLine.answered(record, answered, full);
                return new Result(line, Status.ANSWERED, document.get(), answered.hash(), List.of());
            }
            Evaluation.Refused refused = (Evaluation.Refused) evaluation;
            List<Diagnostic> placed = refused.diagnostics().stream()
                    .map(d -> source.placed(d, record))
                    .toList();
            return refused(record, new Evaluation.Refused(refused.title(), placed));
        } catch (RuntimeException | StackOverflowError e) {
            // A fault on one record of a million must not cost the others; it is written, told and ends the run badly.
            String failure = e.toString();
            return new Result(ResultLine.failed(record, failure), Status.FAILED, NONE, "", List.of(failure));
        }
    }

    private static Place placeOf(InputRecord record) {
        return new Place(record.key(), (int) record.line(), 0, "");
    }

    private static Result refused(InputRecord record, Evaluation.Refused refused) {
        return new Result(
                ResultLine.refused(record, refused),
                Status.REFUSED,
                NONE,
                "",
                refused.diagnostics().stream().map(Diagnostic::toString).toList());
    }
}
