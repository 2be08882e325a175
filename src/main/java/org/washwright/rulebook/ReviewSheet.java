package org.washwright.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemException;

/**
 * The review of an edition as shown to one reader.
 *
 * @param gate what is looked at before a release
 * @param remarks what was said, open remarks first
 * @param part what the reader may do now
 * @param work the release that goes on or went on last
 * @param refused why something was not done
 * @param typed what the reader had typed then, by field
 */
record ReviewSheet(
        List<GateItem> gate,
        List<RemarkView> remarks,
        Part part,
        Optional<ReleaseWork> work,
        Refusal refused,
        Map<String, String> typed) {

    /**
     * What a reader may do with an edition now.
     *
     * @param write change its files and ask for a review
     * @param remark say and settle remarks
     * @param decide approve it, give it back and release it
     * @param own true when only the rule of two persons keeps the reader from that
     * @param withdraw take a released edition out of use
     */
    record Part(boolean write, boolean remark, boolean decide, boolean own, boolean withdraw) {}

    /** Why something was not done. */
    record Refusal(String title, String detail, List<ProblemError> errors) {
        static final Refusal NONE = new Refusal("", "", List.of());

        static Refusal of(ProblemException e) {
            return new Refusal(e.title(), e.errors().isEmpty() ? e.getMessage() : "", e.errors());
        }
    }

    /** The first thing to know. */
    public String sentence() {
        if (work.filter(w -> !w.isOver()).isPresent()) {
            return "It is being released.";
        }
        long blocked = count(GateItem.Mark.BLOCKED);
        long open = Gate.toAnswerFor(gate).size();
        if (blocked > 0) {
            return blocked == 1 ? "One thing stands in the way of a release." : blocked + " things stand in the way.";
        }
        return open == 0
                ? "Nothing is left open before a release."
                : "Nothing stands in the way of a release; " + (open == 1 ? "one thing is" : open + " things are")
                        + " left open.";
    }

    /** What whoever releases has to answer for. */
    public List<GateItem> open() {
        return Gate.toAnswerFor(gate);
    }

    /** Whether it can be released at all now. */
    public boolean free() {
        return count(GateItem.Mark.BLOCKED) == 0;
    }

    /** Whether a release goes on just now. */
    public boolean running() {
        return work.filter(w -> !w.isOver()).isPresent();
    }

    /** Why the last release ended early; empty when it did not. */
    public Optional<Refusal> ended() {
        return work.flatMap(ReleaseWork::refusal)
                .map(e -> e instanceof ProblemException known
                        ? Refusal.of(known)
                        : new Refusal(
                                "It failed", "The program failed at this step; nothing was released.", List.of()));
    }

    /** What was typed into a field. */
    public String said(String field) {
        return typed.getOrDefault(field, "");
    }

    private long count(GateItem.Mark mark) {
        return gate.stream().filter(item -> item.mark() == mark).count();
    }

    /** The open remarks of each rule. */
    static Map<String, Long> openByRule(List<RemarkView> remarks) {
        Map<String, Long> open = new TreeMap<>();
        remarks.stream().filter(RemarkView::isOpen).forEach(remark -> open.merge(remark.rule(), 1L, Long::sum));
        return open;
    }
}
