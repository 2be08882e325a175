package org.washwright.report;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.assessment.Answer.Attribute;
import org.washwright.assessment.Design;
import org.washwright.assessment.Design.Figure;

/** What has to be known before a figure that is not known can be computed: followed back through the figures it rests on. */
final class Missing {

    private final Lookup lookup;
    private final Map<String, Figure> byRef = new HashMap<>();

    Missing(Design design, Lookup lookup) {
        this.lookup = lookup;
        design.figures().forEach(f -> byRef.put("figure/" + f.figure() + "/" + f.stage(), f));
    }

    /** True when a figure has neither end. */
    static boolean isUnknown(Figure figure) {
        return figure.low() == null && figure.high() == null;
    }

    /** Names of what is missing; empty when the answer does not tell. */
    Set<String> of(Figure figure) {
        Set<String> names = new LinkedHashSet<>();
        collect(figure.inputs(), names, new LinkedHashSet<>());
        return names;
    }

    private void collect(List<String> inputs, Set<String> names, Set<String> seen) {
        for (String ref : inputs) {
            if (seen.add(ref)) {
                lookup.attribute(ref).filter(Missing::tellsNothing).ifPresent(a -> {
                    // What was computed or looked up can't be asked for; what it was made from can.
                    if (a.origin().inputs().isEmpty()) {
                        names.add(lookup.nameOf(a));
                    } else {
                        collect(a.origin().inputs(), names, seen);
                    }
                });
                Figure figure = byRef.get(ref);
                if (figure != null && isUnknown(figure)) {
                    collect(figure.inputs(), names, seen);
                }
            }
        }
    }

    private static boolean tellsNothing(Attribute a) {
        return a.knowledge().equals("unknown") || a.knowledge().equals("not applicable");
    }
}
