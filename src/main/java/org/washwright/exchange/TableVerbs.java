package org.washwright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.rule.Effect;

/** What the rows of a table can say, and which columns that takes; for editors. */
public final class TableVerbs {

    private TableVerbs() {}

    /** The verbs in order, each with what it does in words. */
    public static Map<String, String> all() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("support", "speaks for a process");
        out.put("oppose", "speaks against a process");
        out.put("ruleOut", "rules a process out");
        out.put("require", "asks for a further stage");
        out.put("limit", "limits a setting");
        out.put("caution", "cautions");
        out.put("ask", "asks for something not known");
        out.put("verify", "says how to prove it");
        out.put("conclude", "draws a conclusion that other rules read");
        return out;
    }

    /** Columns beside the conditions that a table of this verb may have; those of every row when there is no such verb. */
    public static List<String> columns(String verb) {
        List<String> out = new ArrayList<>(TableCalls.ARGUMENTS.getOrDefault(verb, List.of("reason")));
        out.addAll(TableReader.ROW_KEYS);
        return out;
    }

    /** Where in a line a process can stand, with words. */
    public static Map<String, String> roles() {
        Map<String, String> out = new LinkedHashMap<>();
        for (Effect.Role role : Effect.Role.values()) {
            out.put(role.word(), role.phrase());
        }
        return out;
    }
}
