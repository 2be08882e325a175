package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.assessment.Answer;
import org.washwright.assessment.IntendedVerdict;
import org.washwright.assessment.IntendedVerdict.First;
import org.washwright.assessment.IntendedVerdict.Rank;
import org.washwright.assessment.IntendedVerdict.Setting;

/** What templates ask of the verdict on an intended process; lists of none or one, since templates loop over lists. */
@TemplateExtension
public final class Intentions {

    private Intentions() {}

    /** The verdict, if the task names an intended process. */
    public static List<IntendedVerdict> judged(Answer answer) {
        return answer.intended().stream().toList();
    }

    /** The status whose mark stands beside the verdict; empty when nothing was judged. */
    public static String mark(IntendedVerdict verdict) {
        return switch (verdict.verdict()) {
            case "fits" -> "recommended";
            case "fits if" -> "conditional";
            case "does not fit" -> "ruled out";
            default -> "";
        };
    }

    /** Its place among the candidates, if it stands. */
    public static List<Rank> ranks(IntendedVerdict verdict) {
        return verdict.rank().stream().toList();
    }

    /** The candidate to look at instead, if there is one. */
    public static List<First> firsts(IntendedVerdict verdict) {
        return verdict.first().stream().toList();
    }

    /** How many settings are within their windows, outside, not given: {@code 2 within, 1 not given}. */
    public static String settingsInShort(IntendedVerdict verdict) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String state : List.of("outside", "partly outside", "within", "not given", "no window")) {
            counts.put(state, 0);
        }
        verdict.settings().forEach(s -> counts.merge(s.state(), 1, Integer::sum));
        List<String> said = new ArrayList<>();
        counts.forEach((state, n) -> {
            if (n > 0) {
                said.add(n + " " + state);
            }
        });
        return String.join(", ", said);
    }

    /** True when a setting has to be moved, at least in part. */
    public static boolean outside(Setting setting) {
        return setting.state().endsWith("outside");
    }
}
