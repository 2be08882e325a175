package org.washwright.impact.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What a change does to answers, in one sentence. */
final class ImpactSentence {

    private ImpactSentence() {}

    static String of(
            int tried,
            List<Impact.AnswerChange> changed,
            List<Impact.Refused> refused,
            List<Impact.CaseTurn> cases,
            List<Impact.Part> parts) {
        List<String> said = new ArrayList<>();
        said.add(answers(tried, changed));
        count(
                said,
                refused.stream().filter(Impact.Refused::onlyNow).count(),
                "task is refused only now",
                "tasks are refused only now");
        count(
                said,
                refused.stream().filter(r -> r.after().isEmpty()).count(),
                "task was refused and is answered now",
                "tasks were refused and are answered now");
        count(
                said,
                refused.stream()
                        .filter(r -> !r.onlyNow() && !r.after().isEmpty())
                        .count(),
                "task is refused by both",
                "tasks are refused by both");
        count(
                said,
                cases.stream().filter(Impact.CaseTurn::failsNow).count(),
                "reference case fails that did not",
                "reference cases fail that did not");
        count(
                said,
                parts.stream().filter(Impact.Part::touchesNothing).count(),
                "part of the change leaves every answer as it was",
                "parts of the change leave every answer as it was");
        return String.join("; ", said) + ".";
    }

    private static String answers(int tried, List<Impact.AnswerChange> changed) {
        if (tried == 0) {
            return "No task was tried";
        }
        long words = changed.stream().filter(c -> c.weight() == Weight.WORDING).count();
        long weighty = changed.size() - words;
        String of = tried == 1 ? "the one tried" : tried + " tried";
        String other = words == 0 ? "" : "; " + words + (words == 1 ? " differs" : " differ") + " in words alone";
        if (weighty == 0) {
            return "No answer of " + of + " changes" + other;
        }
        List<String> kinds = new ArrayList<>();
        kind(kinds, changed, c -> c.weight() == Weight.LEADER, "another first process");
        kind(kinds, changed, c -> c.weight() == Weight.STATUS, "other processes that stand, or other statuses");
        String detail = kinds.isEmpty() ? "" : " (" + String.join(", ", kinds) + ")";
        return weighty + " of " + of + (weighty == 1 ? " changes" : " change") + detail + other;
    }

    private static void kind(
            List<String> kinds,
            List<Impact.AnswerChange> changed,
            Predicate<Impact.AnswerChange> wanted,
            String words) {
        long n = changed.stream().filter(wanted).count();
        if (n > 0) {
            kinds.add(n + " with " + words);
        }
    }

    private static void count(List<String> said, long n, String one, String many) {
        if (n > 0) {
            said.add(n + " " + (n == 1 ? one : many));
        }
    }
}
