package org.washwright.drools;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.drl.ast.descr.AnnotationDescr;
import org.drools.drl.ast.descr.QueryDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.SourceText;
import org.washwright.rule.syntax.SyntaxPattern;
import org.washwright.rule.syntax.SyntaxRule;

/** Reads one rule out of what Drools' parser made of it. */
final class RuleReader {

    private final SourceText source;
    private final Diagnostics diagnostics;

    RuleReader(SourceText source, Diagnostics diagnostics) {
        this.source = source;
        this.diagnostics = diagnostics;
    }

    SyntaxRule read(RuleDescr rule) {
        Place place = source.at(rule.getLine(), rule.getColumn() + 1);
        String name = rule.getName() == null ? "" : rule.getName();
        if (rule instanceof QueryDescr) {
            refuse(place, name, "a query", "Write a rule");
        }
        if (rule.getParentName() != null) {
            refuse(place, "extends", "a rule that extends another", "Repeat its patterns");
        }
        for (String consequence : rule.getNamedConsequences().keySet()) {
            refuse(
                    source.find("then[" + consequence, place.line()),
                    "then[" + consequence + "]",
                    "a named consequence",
                    "Write a rule of its own");
        }
        rule.getAttributes()
                .forEach((key, attribute) -> refuse(
                        source.at(attribute.getLine(), attribute.getColumn() + 1),
                        key,
                        "an attribute of a rule",
                        "The order of rules follows from conclusions"));
        List<SyntaxPattern> patterns = new PatternReader(source, place, diagnostics).read(rule.getLhs());
        String consequence = rule.getConsequence() instanceof String s ? s : "";
        return new SyntaxRule(
                name,
                annotations(rule, place),
                patterns,
                new ConsequenceReader(source, diagnostics).read(consequence, rule.getConsequenceLine()),
                place);
    }

    private Map<String, SyntaxRule.Text> annotations(RuleDescr rule, Place rulePlace) {
        Map<String, SyntaxRule.Text> out = new HashMap<>();
        for (AnnotationDescr annotation : rule.getAnnotations()) {
            String key = annotation.getName();
            Place place = source.find("@" + key, rulePlace.line());
            Object value = annotation.getValueMap().get("value");
            String raw = value instanceof String s ? s.strip() : "";
            boolean quoted = raw.length() >= 2 && raw.startsWith("\"") && raw.indexOf('"', 1) == raw.length() - 1;
            if (annotation.getValueMap().size() != 1 || !quoted || raw.contains("\\")) {
                refuse(place, "@" + key, "an annotation that is not one text in quotes", "Write @" + key + "(\"...\")");
            } else if (annotation.isDuplicated()) {
                refuse(place, "@" + key, "an annotation given twice", "Keep one of them");
            } else {
                out.put(key, new SyntaxRule.Text(raw.substring(1, raw.length() - 1), place));
            }
        }
        return out;
    }

    private void refuse(Place place, String value, String what, String advice) {
        diagnostics.add(Message.REFUSED, place, value, what, advice);
    }
}
