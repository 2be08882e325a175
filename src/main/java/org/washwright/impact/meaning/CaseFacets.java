package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.washwright.cases.Case;
import org.washwright.cases.ExpectationWords;
import org.washwright.task.TaskWriter;

/** What the reference cases of an edition say. They shape no answer; what they expect counts as their content. */
final class CaseFacets {

    private static final Pattern PLACE = Pattern.compile("place=[^,]*, ");

    private CaseFacets() {}

    static List<Difference> compare(State before, State after) {
        List<Difference> cases = Facets.compare(Subject.CASE, of(before), of(after));
        List<Difference> out = new ArrayList<>(cases);
        Set<String> told = new TreeSet<>();
        cases.stream().filter(Difference::meaning).forEach(d -> {
            told.add(d.before().file());
            told.add(d.after().file());
        });
        Set<String> files = new TreeSet<>(before.caseFiles().keySet());
        files.addAll(after.caseFiles().keySet());
        for (String file : files) {
            String was = before.caseFiles().getOrDefault(file, "");
            String is = after.caseFiles().getOrDefault(file, "");
            if (!was.equals(is) && !told.contains(file)) {
                out.add(file(file, was, is));
            }
        }
        return out;
    }

    /** A file that differs where its cases say the same: comments, their order, cases that moved, or a task that others take up. */
    private static Difference file(String file, String was, String is) {
        What what = was.isEmpty() ? What.ADDED : is.isEmpty() ? What.REMOVED : What.CHANGED;
        return new Difference(
                Subject.CASE_FILE,
                file,
                file,
                what,
                false,
                true,
                was.isEmpty() ? Difference.NOWHERE : org.washwright.document.Place.ofFile(file),
                is.isEmpty() ? Difference.NOWHERE : org.washwright.document.Place.ofFile(file),
                List.of());
    }

    private static Map<String, Facets> of(State state) {
        Map<String, Facets> out = new TreeMap<>();
        ExpectationWords words = new ExpectationWords(state.edition());
        for (Case c : state.cases()) {
            Facets facets = new Facets(c.title(), c.place())
                    .words("title", c.title())
                    .words("basis", c.basis().word())
                    .words("source", RestFacets.cites(c.sources()))
                    .matters("as of", c.asOf().orElse(""));
            flatten(facets, "task", TaskWriter.data(c.task(), state.edition()));
            // By ids, so that another title of a rule makes no other case.
            c.expectations()
                    .forEach(e -> facets.oneOf(
                            "expects", words.of(e), PLACE.matcher(e.toString()).replaceFirst("")));
            out.put(c.id(), facets);
        }
        return out;
    }

    private static void flatten(Facets facets, String at, Object data) {
        if (data instanceof Map<?, ?> map) {
            map.forEach((key, value) -> flatten(facets, at + "/" + key, value));
        } else if (data instanceof List<?> list && !list.isEmpty()) {
            for (int i = 0; i < list.size(); i++) {
                flatten(facets, at + "/" + i, list.get(i));
            }
        } else {
            facets.matters(at, data instanceof List<?> ? "none" : String.valueOf(data));
        }
    }
}
