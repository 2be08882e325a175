package org.washwright.drools;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.drl.ast.descr.AnnotationDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.QueryDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import org.kie.internal.builder.conf.LanguageLevelOption;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.rule.syntax.RuleTextReader;
import org.washwright.rule.syntax.SyntaxPattern;
import org.washwright.rule.syntax.SyntaxRule;

/**
 * Reads rule text with Drools' own parser and keeps only what the closed profile allows. The text itself never reaches a
 * compiler: whatever is not understood here is refused with its place.
 */
public final class DrlReader implements RuleTextReader {

    /** Most characters of one file. */
    public static final int MAX_LENGTH = 1_000_000;

    private static final int MAX_NESTING = 24;

    @Override
    public List<SyntaxRule> read(String file, String text, Diagnostics diagnostics) {
        if (!readable(file, text, diagnostics)) {
            return List.of();
        }
        DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
        PackageDescr descr;
        try {
            descr = parser.parse(false, text);
        } catch (DroolsParserException | RuntimeException e) {
            diagnostics.add(Message.DRL_SYNTAX, Place.ofFile(file), "", firstLine(e.getMessage()));
            return List.of();
        }
        for (DroolsError error : parser.getErrors()) {
            int line = error.getLines().length == 0 ? 0 : error.getLines()[0];
            diagnostics.add(
                    Message.DRL_SYNTAX, new Place(file, Math.max(line, 0), 0, ""), "", firstLine(error.getMessage()));
        }
        if (descr == null || parser.hasErrors()) {
            return List.of();
        }
        refuseAllButRules(file, descr, diagnostics);
        List<SyntaxRule> rules = new ArrayList<>();
        for (RuleDescr rule : descr.getRules()) {
            rules.add(rule(file, rule, diagnostics));
        }
        return rules;
    }

    /** Refuses what would be dangerous or endless already for a parser. */
    private static boolean readable(String file, String text, Diagnostics diagnostics) {
        if (text.length() > MAX_LENGTH) {
            diagnostics.add(
                    Message.TOO_LARGE, Place.ofFile(file), text.length() + " characters", MAX_LENGTH + " characters");
            return false;
        }
        int escape = text.indexOf("\\u");
        if (escape >= 0) {
            diagnostics.add(Message.UNICODE_ESCAPE, placeOf(file, text, escape), "\\u");
            return false;
        }
        int depth = 0;
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\') {
                i++;
            } else if (c == '"' || c == '\n') {
                quoted = c == '"' && !quoted;
            } else if (!quoted && (c == '(' || c == '[' || c == '{')) {
                depth++;
                if (depth > MAX_NESTING) {
                    diagnostics.add(Message.TOO_DEEP, placeOf(file, text, i), "", MAX_NESTING);
                    return false;
                }
            } else if (!quoted && (c == ')' || c == ']' || c == '}')) {
                depth = Math.max(0, depth - 1);
            }
        }
        return true;
    }

    private static Place placeOf(String file, String text, int offset) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < offset; i++) {
            column = text.charAt(i) == '\n' ? 1 : column + 1;
            line += text.charAt(i) == '\n' ? 1 : 0;
        }
        return new Place(file, line, column, "");
    }

    private static void refuseAllButRules(String file, PackageDescr p, Diagnostics diagnostics) {
        Place place = Place.ofFile(file);
        String advice = "A rule file holds rules only";
        refuse(!p.getImports().isEmpty(), place, "import", "imports", advice, diagnostics);
        refuse(!p.getFunctionImports().isEmpty(), place, "import function", "function imports", advice, diagnostics);
        refuse(
                !p.getAccumulateImports().isEmpty(),
                place,
                "import accumulate",
                "accumulate imports",
                advice,
                diagnostics);
        refuse(!p.getGlobals().isEmpty(), place, "global", "globals", advice, diagnostics);
        refuse(!p.getFunctions().isEmpty(), place, "function", "functions", advice, diagnostics);
        refuse(!p.getTypeDeclarations().isEmpty(), place, "declare", "declared types", advice, diagnostics);
        refuse(!p.getEnumDeclarations().isEmpty(), place, "declare enum", "declared enums", advice, diagnostics);
        refuse(
                !p.getEntryPointDeclarations().isEmpty(),
                place,
                "declare entry-point",
                "entry points",
                advice,
                diagnostics);
        refuse(!p.getWindowDeclarations().isEmpty(), place, "declare window", "windows", advice, diagnostics);
        refuse(!p.getAttributes().isEmpty(), place, "attributes", "attributes of a file", advice, diagnostics);
        refuse(p.getUnit() != null, place, "unit", "units of rules", advice, diagnostics);
    }

    private static void refuse(
            boolean present, Place place, String value, String what, String advice, Diagnostics diagnostics) {
        if (present) {
            diagnostics.add(Message.REFUSED, place, value, what, advice);
        }
    }

    private SyntaxRule rule(String file, RuleDescr rule, Diagnostics diagnostics) {
        Place place = new Place(file, rule.getLine(), rule.getColumn() + 1, "");
        String name = rule.getName() == null ? "" : rule.getName();
        refuse(rule instanceof QueryDescr, place, name, "a query", "Write a rule", diagnostics);
        refuse(
                rule.getParentName() != null,
                place,
                "extends",
                "a rule that extends another",
                "Repeat its patterns",
                diagnostics);
        refuse(
                !rule.getNamedConsequences().isEmpty(),
                place,
                name,
                "a named consequence",
                "Write a rule of its own",
                diagnostics);
        rule.getAttributes()
                .forEach((key, attribute) -> refuse(
                        true,
                        place,
                        key,
                        "an attribute of a rule",
                        "The order of rules follows from conclusions",
                        diagnostics));
        List<SyntaxPattern> patterns = new PatternReader(file, diagnostics).read(rule.getLhs());
        String consequence = rule.getConsequence() instanceof String s ? s : "";
        return new SyntaxRule(
                name,
                annotations(rule, place, diagnostics),
                patterns,
                new ConsequenceReader(file, diagnostics).read(consequence, rule.getConsequenceLine()),
                place);
    }

    private static Map<String, SyntaxRule.Text> annotations(RuleDescr rule, Place place, Diagnostics diagnostics) {
        Map<String, SyntaxRule.Text> out = new HashMap<>();
        for (String key : rule.getAnnotationNames()) {
            AnnotationDescr annotation = rule.getAnnotation(key);
            Object value = annotation == null ? null : annotation.getValueMap().get("value");
            String raw = value instanceof String s ? s.strip() : "";
            boolean quoted = raw.length() >= 2 && raw.startsWith("\"") && raw.indexOf('"', 1) == raw.length() - 1;
            if (annotation == null || annotation.getValueMap().size() != 1 || !quoted || raw.contains("\\")) {
                diagnostics.add(
                        Message.REFUSED,
                        place,
                        "@" + key,
                        "an annotation that is not one text in quotes",
                        "Write @" + key + "(\"...\")");
            } else {
                out.put(key, new SyntaxRule.Text(raw.substring(1, raw.length() - 1), place));
            }
        }
        return out;
    }

    private static String firstLine(String message) {
        return message == null ? "no details" : message.lines().findFirst().orElse("no details");
    }
}
