package org.washwright.assessment;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * How the order came about and how firm it is.
 *
 * @param weighing how the weights of the five areas were set, in words
 * @param consistency consistency ratio of the pairwise comparisons; null when the weights were set directly
 * @param notes what stands against relying on it, in words
 * @param reason why the first leads the second, in one sentence; empty when only one stands
 * @param shares share of all weightings of the areas in which a process leads, for those of the first one's status
 */
@JsonInclude(JsonInclude.Include.ALWAYS)
public record Ranking(String weighing, Double consistency, List<String> notes, String reason, List<Share> shares) {

    /** Share of all weightings in which a process is first, 0 to 1. */
    public record Share(String process, String name, double share) {}
}
