package org.washwright.impact.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.washwright.cases.CaseResult;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.impact.meaning.Subject;

/** Reference cases run by both editions, each edition its own, held against each other by id. */
final class Cases {

    static final String HOLDS = "holds";
    static final String FAILS = "fails";
    static final String ABSENT = "not there";

    private Cases() {}

    static List<Impact.CaseTurn> turned(List<CaseResult> before, List<CaseResult> after, MeaningComparison change) {
        Map<String, CaseResult> old = byId(before);
        Map<String, CaseResult> now = byId(after);
        Set<String> edited = change.differences().stream()
                .filter(d -> d.subject() == Subject.CASE && d.meaning())
                .map(d -> d.id())
                .collect(Collectors.toSet());
        List<Impact.CaseTurn> out = new ArrayList<>();
        Set<String> ids = new TreeSet<>(old.keySet());
        ids.addAll(now.keySet());
        for (String id : ids) {
            String was = state(old.get(id));
            String is = state(now.get(id));
            boolean told = was.equals(ABSENT) ? is.equals(FAILS) : !was.equals(is);
            if (told) {
                CaseResult shown = now.getOrDefault(id, old.get(id));
                out.add(new Impact.CaseTurn(
                        id,
                        shown.reference().title(),
                        was,
                        is,
                        edited.contains(id),
                        is.equals(FAILS) ? unmet(now.get(id)) : List.of(),
                        shown.reference().place()));
            }
        }
        return out;
    }

    private static Map<String, CaseResult> byId(List<CaseResult> results) {
        Map<String, CaseResult> out = new LinkedHashMap<>();
        results.forEach(r -> out.put(r.reference().id(), r));
        return out;
    }

    private static String state(CaseResult result) {
        return result == null ? ABSENT : result.holds() ? HOLDS : FAILS;
    }

    private static List<String> unmet(CaseResult result) {
        List<String> out = new ArrayList<>();
        result.unmet().forEach(c -> out.add("Expected: " + c.expected() + ". Found: " + c.found()));
        result.refused().forEach(d -> out.add("The task is refused: " + d));
        return out;
    }
}
