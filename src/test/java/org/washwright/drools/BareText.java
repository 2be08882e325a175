package org.washwright.drools;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The text of an expert's rules made palatable to plain Drools, by a few replacements in the text. Nothing here knows the
 * rule tree, the checker or the canonical form. Replaced is only what DRL can't say:
 *
 * <ul>
 *   <li>quantities become numbers in SI, {@code true} and {@code false} the terms yes and no;
 *   <li>a field behind a dot is a field of its own, {@code kind_polarity}; each declared attribute is a type of its own, and a
 *       process is not that of java.lang;
 *   <li>what is not applicable is null, and null takes part in no comparison: where Drools would find null different from a
 *       term, or two nulls equal, a guard is put before the comparison;
 *   <li>the groups of a process are a set that {@code contains} one;
 *   <li>verbs are calls of a recorder; annotations go; the order of levels is salience.
 * </ul>
 */
final class BareText {

    private static final Pattern COMPARISON = Pattern.compile(
            "([a-z]\\w*(?:\\.\\w+)?) (==|!=|<=|>=|<|>|not in|in) (\\([^)]*\\)|\"[^\"]*\"|\\$\\w+(?:\\.\\w+)*|true|false)");
    private static final Pattern BINDING = Pattern.compile("(\\$\\w+ : )([a-z]\\w*\\.\\w+)");
    private static final Pattern ATTRIBUTE = Pattern.compile("Attribute\\(id == \"([a-z-]+)\"");
    private static final Pattern PROCESS = Pattern.compile("\\bProcess\\(");
    private static final Pattern RULE =
            Pattern.compile("rule \"([^\"]+)\".*?when\n(.*?)then\n(.*?)end\n", Pattern.DOTALL);
    private static final Pattern CONCLUDED = Pattern.compile("conclude\\(\"([^\"]+)\"(?:, (\\$\\w+))?");
    private static final Pattern MATCHED = Pattern.compile("Conclusion\\(id (?:==|in) (\"[^\"]+\"|\\([^)]+\\))");
    private static final Pattern QUANTITY = Pattern.compile("\"(-?[0-9.]+)(?: (\\S+))?\"");
    private static final Pattern DATE = Pattern.compile("\"(\\d{4}-\\d{2}-\\d{2})\"");
    private static final MathContext EXACT = new MathContext(60);

    /** Multiples of the SI unit, and what is divided by; written down here once more, from the SI brochure; a year has 365 days. */
    private static final Map<String, String> FACTORS = Map.ofEntries(
            Map.entry("mm", "0.001"),
            Map.entry("µm", "0.000001"),
            Map.entry("cm²", "0.0001"),
            Map.entry("L", "0.001"),
            Map.entry("m³", "1"),
            Map.entry("g", "0.001"),
            Map.entry("s", "1"),
            Map.entry("K", "1"),
            Map.entry("g/m²", "0.001"),
            Map.entry("1/h", "1/3600"),
            Map.entry("1/year", "1/31536000"),
            Map.entry("m²/h", "1/3600"),
            Map.entry("g/h", "0.001/3600"),
            Map.entry("L/h", "0.001/3600"),
            Map.entry("m³/h", "1/3600"),
            Map.entry("kPa", "1000"),
            Map.entry("MPa", "1000000"),
            Map.entry("g/L", "1"),
            Map.entry("mg/m³", "0.000001"),
            Map.entry("kg/m³", "1"),
            Map.entry("kHz", "1000"),
            Map.entry("kW", "1000"),
            Map.entry("W/L", "1000"),
            Map.entry("kWh", "3600000"),
            Map.entry("A/dm²", "100"),
            Map.entry("m/s", "1"),
            Map.entry("L/m²", "0.001"),
            Map.entry("µS/cm", "0.0001"),
            Map.entry("mN/m", "0.001"),
            Map.entry("mPa·s", "0.001"),
            Map.entry("m²/s", "1"),
            Map.entry("g/mol", "0.001"),
            Map.entry("MPa^0.5", "1000"),
            Map.entry("%", "0.01"),
            Map.entry("ppm", "0.000001"),
            Map.entry("€", "1"),
            Map.entry("°", "3.14159265358979323846264338328/180"));

    private static final Set<String> SCALES = Set.of("HRC", "HV");

    /** A rule of an expert. */
    record Raw(String id, String when, String then) {}

    private BareText() {}

    static List<Raw> rules(String drl) {
        return RULE.matcher(drl)
                .results()
                .map(m -> new Raw(m.group(1), m.group(2), m.group(3)))
                .toList();
    }

    /** The rules as plain DRL, without a head. */
    static String plain(List<Raw> rules) {
        Map<String, Integer> levels = levels(rules);
        StringBuilder out = new StringBuilder();
        for (Raw r : rules) {
            out.append("rule \"" + r.id() + "\"\n  salience " + -levels.get(r.id()) + "\nwhen\n" + when(r.when())
                    + "then\n" + then(r.then()) + "end\n");
        }
        return out.toString();
    }

    private static String when(String text) {
        String typed = replace(ATTRIBUTE, text, m -> type("Attribute/" + m.group(1)) + "(id == \"" + m.group(1) + "\"");
        typed = replace(PROCESS, typed, m -> type("Process") + "(");
        String compared = replace(COMPARISON, typed, m -> comparison(flat(m.group(1)), m.group(2), m.group(3)));
        return replace(BINDING, compared, m -> m.group(1) + flat(m.group(2)));
    }

    private static String comparison(String field, String op, String operand) {
        if (field.equals("node")) {
            String contains = op.startsWith("not") || op.equals("!=") ? "node not contains " : "node contains ";
            String joint = contains.contains("not") ? " && " : " || ";
            return Pattern.compile("\"[^\"]+\"")
                    .matcher(operand)
                    .results()
                    .map(m -> contains + m.group())
                    .collect(Collectors.joining(joint, "(", ")"));
        }
        boolean joined = operand.startsWith("$");
        String right = joined ? joined(operand) : literal(operand);
        String plain = field + " " + op + " " + right;
        if (field.equals("subject")) {
            return plain;
        }
        String guard = joined ? field + " != null && " + right + " != null && " : field + " != null && ";
        return joined || op.equals("!=") || op.equals("not in") ? "(" + guard + plain + ")" : plain;
    }

    private static String literal(String text) {
        Matcher quantity = QUANTITY.matcher(text);
        if (quantity.matches()) {
            return String.valueOf(si(quantity.group(1), quantity.group(2)));
        }
        Matcher date = DATE.matcher(text);
        if (date.matches()) {
            return String.valueOf((double) LocalDate.parse(date.group(1)).toEpochDay());
        }
        return switch (text) {
            case "true" -> "\"yes\"";
            case "false" -> "\"no\"";
            default -> text;
        };
    }

    private static double si(String amount, String unit) {
        BigDecimal number = new BigDecimal(amount);
        if (unit == null || SCALES.contains(unit)) {
            return number.doubleValue();
        }
        if (unit.equals("°C")) {
            return number.add(new BigDecimal("273.15")).doubleValue();
        }
        String factor = FACTORS.get(unit);
        if (factor == null) {
            throw new AssertionError("no factor is written down for " + unit);
        }
        String[] parts = factor.split("/");
        BigDecimal si = number.multiply(new BigDecimal(parts[0]));
        return (parts.length == 1 ? si : si.divide(new BigDecimal(parts[1]), EXACT)).doubleValue();
    }

    /** Fields of a variable: the first dot stays, it leads from the variable to its field. */
    private static String joined(String variable) {
        int dot = variable.indexOf('.');
        return dot < 0 ? variable : variable.substring(0, dot + 1) + flat(variable.substring(dot + 1));
    }

    private static String then(String text) {
        StringBuilder out = new StringBuilder();
        for (MatchResult m : CONCLUDED.matcher(text).results().toList()) {
            out.append("  recorder.accept(\"" + m.group(1) + "\", " + m.group(2) + ");\n");
        }
        return out.toString();
    }

    /** Name of a field in plain Drools. */
    static String flat(String field) {
        return field.replace('.', '_');
    }

    /** Name of a fact type in plain Drools. */
    static String type(String name) {
        return name.equals("Process") ? "CleaningProcess" : name.replaceAll("[^A-Za-z]", "_");
    }

    /** The longest chain of conclusions that leads to each rule. */
    private static Map<String, Integer> levels(List<Raw> rules) {
        Map<String, Integer> levels = new TreeMap<>();
        rules.forEach(r -> levels.put(r.id(), 0));
        for (int round = 0; round <= rules.size(); round++) {
            for (Raw later : rules) {
                Set<String> needed = names(MATCHED, later.when());
                for (Raw earlier : rules) {
                    if (names(CONCLUDED, earlier.then()).stream().anyMatch(needed::contains)) {
                        levels.merge(later.id(), levels.get(earlier.id()) + 1, Math::max);
                    }
                }
            }
        }
        return levels;
    }

    private static Set<String> names(Pattern pattern, String text) {
        Set<String> out = new TreeSet<>();
        pattern.matcher(text)
                .results()
                .forEach(m ->
                        out.addAll(List.of(m.group(1).replaceAll("[()\" ]", "").split(","))));
        return out;
    }

    private static String replace(Pattern pattern, String text, Function<MatchResult, String> by) {
        return pattern.matcher(text).replaceAll(m -> Matcher.quoteReplacement(by.apply(m)));
    }
}
