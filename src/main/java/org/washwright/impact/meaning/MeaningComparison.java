package org.washwright.impact.meaning;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.rule.Edition;

/**
 * How one edition differs from another in meaning, as plain data. The differences that count as {@code meaning} are none
 * exactly when both editions have the same meaning hash.
 *
 * @param format version of this form, now 1
 * @param sentence what it comes to in one sentence
 * @param before the earlier edition
 * @param after the later one
 * @param differences what differs: rules first, then terms, trees, grading, assumptions, sources and cases
 */
public record MeaningComparison(int format, String sentence, Side before, Side after, List<Difference> differences) {

    private static final int FORMAT = 1;

    /** Keeps a copy. */
    public MeaningComparison {
        differences = List.copyOf(differences);
    }

    /** One of the two editions. */
    public record Side(String name, String title, int rules, int cases, String meaningHash, String textHash) {

        static Side of(State state) {
            Edition e = state.edition();
            return new Side(e.name(), e.title(), e.rules().size(), state.cases().size(), e.meaningHash(), e.textHash());
        }
    }

    /** Compares two states. */
    public static MeaningComparison of(State before, State after) {
        List<Difference> all = new java.util.ArrayList<>(RuleDifferences.of(before.edition(), after.edition()));
        all.addAll(CatalogueFacets.compare(
                before.edition().catalogue(), after.edition().catalogue()));
        all.addAll(RestFacets.compare(before.edition(), after.edition()));
        all.addAll(CaseFacets.compare(before, after));
        Side old = Side.of(before);
        Side now = Side.of(after);
        return new MeaningComparison(FORMAT, Sentence.of(all, old.textHash().equals(now.textHash())), old, now, all);
    }

    /** True when both mean the same. */
    @JsonIgnore
    public boolean isSameMeaning() {
        return differences.stream().noneMatch(Difference::meaning);
    }

    /** Differences by which answers may change. */
    public List<Difference> changing() {
        return differences.stream().filter(Difference::answers).toList();
    }

    /** Differences of words, cases and what else shapes no answer, without what only moved. */
    public List<Difference> wording() {
        return differences.stream()
                .filter(d -> !d.answers() && d.what() != What.MOVED)
                .toList();
    }

    /** What says the same and stands elsewhere. */
    public List<Difference> moved() {
        return differences.stream().filter(d -> d.what() == What.MOVED).toList();
    }

    /** New ids of rules that are only called otherwise, by their old ids. */
    public Map<String, String> renamed() {
        Map<String, String> out = new TreeMap<>();
        differences.stream()
                .filter(d -> d.subject() == Subject.RULE && d.what() == What.RENAMED)
                .forEach(d -> out.put(d.details().get(0).before(), d.id()));
        return out;
    }
}
