package org.washwright.rule.check;

import java.util.ArrayList;
import java.util.List;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.rule.Rule;

/** Reads what a rule, table or tree cites: {@code ID, place in it; ID2}. */
public final class Citations {

    private Citations() {}

    /** The citations; those of unknown sources are reported and left out. */
    public static List<Rule.Cite> read(String text, Terms terms, Place place, Diagnostics diagnostics) {
        List<Rule.Cite> cites = new ArrayList<>();
        for (String one : text.split(";")) {
            if (one.isBlank()) {
                continue;
            }
            int comma = one.indexOf(',');
            String id = (comma < 0 ? one : one.substring(0, comma)).strip();
            String locator = comma < 0 ? "" : one.substring(comma + 1).strip();
            if (terms.sources().containsKey(id)) {
                cites.add(new Rule.Cite(id, locator));
            } else {
                diagnostics.add(
                        Message.UNKNOWN_SOURCE,
                        place,
                        id,
                        Similar.advice(id, terms.sources().keySet()));
            }
        }
        return cites;
    }
}
