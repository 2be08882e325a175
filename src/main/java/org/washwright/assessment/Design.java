package org.washwright.assessment;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * A line as one can ask for quotes on it: its figures, its balances, and how baths and cleanliness are kept in hand.
 *
 * <p>Stages are named by their place in the candidate's line, from 1; 0 is the line as a whole.
 *
 * @param figures figures in the order of {@link Answer#figures()}, each for the line or for one stage
 * @param balances what goes in and comes out at the middle of every range
 * @param control what to measure in which bath
 * @param proofs how cleanliness is proven
 */
@JsonInclude(JsonInclude.Include.ALWAYS)
public record Design(List<Figure> figures, List<Balance> balances, List<Control> control, List<Proof> proofs) {

    /**
     * What a figure is, the same for every line.
     *
     * @param id its id
     * @param label what a reader calls it
     * @param group what it belongs to, for instance {@code water}
     * @param unit unit in which it is shown; empty for a plain number
     * @param formula how it is computed
     * @param source where the formula comes from
     * @param holds where it holds, in words; empty when it is a definition
     */
    public record Kind(
            String id, String label, String group, String unit, String formula, String source, String holds) {}

    /**
     * One figure.
     *
     * @param figure id of its kind
     * @param stage place of the stage in the line from 1; 0 for the whole line
     * @param text value with unit, or that it is not known
     * @param low lowest value in the unit of its kind; null when it is not known or has no end
     * @param high highest value; null as before
     * @param inputs what it was computed from: {@code part/rate} (a fact), {@code assumption/ID}, {@code KIND/TERM/PROPERTY} of
     *     the catalogue, {@code window/STAGE/PARAMETER}, {@code figure/ID/STAGE}
     * @param warnings what stands against trusting it, in words
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Figure(
            String figure,
            @JsonInclude(JsonInclude.Include.ALWAYS) int stage,
            String text,
            Double low,
            Double high,
            List<String> inputs,
            List<String> warnings) {

        /** Empty lists are left out of the bytes. */
        public Figure {
            inputs = inputs == null ? List.of() : inputs;
            warnings = warnings == null ? List.of() : warnings;
        }
    }

    /**
     * Something a figure was computed from that is neither a fact nor a figure.
     *
     * @param ref {@code assumption/ID} or {@code KIND/TERM/PROPERTY}
     * @param label what a reader calls it
     * @param value value with unit
     * @param source where it comes from
     * @param changed true for an assumption that was changed for this request
     */
    public record Input(String ref, String label, String value, String source, boolean changed) {}

    /** What goes into a line and comes out of it, in one unit; the sums of both sides are equal. */
    public record Balance(String id, String name, String unit, List<Flow> in, List<Flow> out) {}

    /** One flow of a balance at the middle of every range, 0 or more, for a stage or the line. */
    public record Flow(String name, int stage, double amount) {}

    /**
     * One thing to measure in a bath.
     *
     * @param stage place of the stage in the line
     * @param measure what is measured
     * @param how how, and what to do when it is out of its limits
     * @param every how often
     * @param limits within which it has to stay
     */
    public record Control(int stage, String measure, String how, String every, String limits) {}

    /**
     * One proof of cleanliness.
     *
     * @param method id of the test method
     * @param name what a reader calls it
     * @param sees the demand it proves, in words
     * @param acceptance what is accepted
     * @param reference attribute that sets the acceptance, for instance {@code demand/residue}
     * @param sampling which parts, and how many together
     * @param limit its detection limit against the demand, in words; empty when the edition states none
     * @param frequency how often
     * @param blindTo what it can't see
     * @param enough false when it can't see what is demanded
     * @param firings rules that name the method; empty when the demand alone does
     */
    public record Proof(
            String method,
            String name,
            String sees,
            String acceptance,
            String reference,
            String sampling,
            String limit,
            String frequency,
            String blindTo,
            boolean enough,
            List<Integer> firings) {}
}
