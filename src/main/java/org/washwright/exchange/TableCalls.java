package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.washwright.document.Place;
import org.washwright.rule.FactTypes;
import org.washwright.rule.syntax.SyntaxCall;
import org.washwright.rule.syntax.SyntaxCall.Argument;

/** Makes the consequence of a table's row out of its argument cells. */
final class TableCalls {

    /** Argument columns of each verb, in the order of the verb's arguments. */
    static final Map<String, List<String>> ARGUMENTS = Map.of(
            "support", List.of("target", "criterion", "points", "reason"),
            "oppose", List.of("target", "criterion", "points", "reason"),
            "ruleOut", List.of("target", "role", "reason"),
            "require", List.of("target", "stage", "after", "before", "reason"),
            "limit", List.of("target", "stage", "parameter", "min", "max", "reason"),
            "caution", List.of("hazard", "target", "reason"),
            "ask", List.of("attribute", "reason"),
            "verify", List.of("method", "reason"),
            "conclude", List.of("conclusion", "subject", "reason"));

    private TableCalls() {}

    static List<SyntaxCall> call(String verb, Map<String, String> cells, Place place, Set<String> types) {
        List<Argument> arguments = new ArrayList<>();
        for (String name : ARGUMENTS.get(verb)) {
            String cell = cells.getOrDefault(name, "");
            switch (name) {
                case "target" -> {
                    if (!cell.isEmpty() || !verb.equals("caution")) {
                        arguments.add(target(cell, types));
                    }
                }
                case "points" ->
                    arguments.add(
                            cell.matches("[0-9]")
                                    ? new Argument.Whole(Integer.parseInt(cell))
                                    : new Argument.Text(cell));
                case "subject" -> {
                    if (!cell.isEmpty()) {
                        arguments.add(new Argument.Variable(variable(cell), ""));
                    }
                }
                case "after" -> placement(cells, arguments);
                case "min" -> bound(cells, arguments);
                case "before", "max" -> {
                    // read together with the column before it
                }
                default -> arguments.add(new Argument.Text(cell));
            }
        }
        return List.of(new SyntaxCall(verb, arguments, place));
    }

    private static Argument target(String cell, Set<String> types) {
        return cell.equals(variable(FactTypes.PROCESS)) && types.contains(FactTypes.PROCESS)
                ? new Argument.Variable(cell, "")
                : new Argument.Text(cell);
    }

    private static void placement(Map<String, String> cells, List<Argument> arguments) {
        String after = cells.getOrDefault("after", "");
        String before = cells.getOrDefault("before", "");
        if (!after.isEmpty() && !before.isEmpty()) {
            arguments.add(new Argument.Nested("between", List.of(new Argument.Text(after), new Argument.Text(before))));
        } else if (!after.isEmpty()) {
            arguments.add(new Argument.Nested("after", List.of(new Argument.Text(after))));
        } else {
            arguments.add(new Argument.Nested("before", List.of(new Argument.Text(before))));
        }
    }

    private static void bound(Map<String, String> cells, List<Argument> arguments) {
        String min = cells.getOrDefault("min", "");
        String max = cells.getOrDefault("max", "");
        arguments.add(
                max.isEmpty()
                        ? new Argument.Nested("min", List.of(new Argument.Text(min)))
                        : new Argument.Nested("max", List.of(new Argument.Text(max))));
    }

    /** Name by which the rows of a table call facts of a type. */
    static String variable(String type) {
        return "$" + type.substring(0, 1).toLowerCase(Locale.ROOT) + type.substring(1);
    }
}
