package org.washwright.drools;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import org.drools.drl.parser.ParserError;
import org.kie.internal.builder.conf.LanguageLevelOption;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.SourceText;
import org.washwright.rule.syntax.RuleTextReader;
import org.washwright.rule.syntax.SyntaxRule;

/**
 * Reads rule text with Drools' own parser and keeps only what the closed profile allows. The text itself never reaches a
 * compiler: whatever is not understood here is refused with its place.
 */
public final class DrlReader implements RuleTextReader {

    /** Most characters of one file. */
    public static final int MAX_LENGTH = 1_000_000;

    private static final Pattern PACKAGE = Pattern.compile("[A-Za-z0-9_.]*");

    @Override
    public List<SyntaxRule> read(String file, String text, Diagnostics diagnostics) {
        SourceText source = new SourceText(file, text);
        if (!RuleTextGuard.passes(source, diagnostics)) {
            return List.of();
        }
        DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
        PackageDescr descr;
        try {
            descr = parser.parse(false, text);
        } catch (DroolsParserException | RuntimeException e) {
            syntax(source.at(1, 1), source, e.getMessage(), diagnostics);
            return List.of();
        }
        for (DroolsError error : parser.getErrors()) {
            int line = error.getLines().length == 0 ? 0 : error.getLines()[0];
            int column = error instanceof ParserError p ? p.getCol() + 1 : 1;
            syntax(source.at(line, column), source, error.getMessage(), diagnostics);
        }
        if (descr == null || parser.hasErrors()) {
            return List.of();
        }
        refuseAllButRules(source, descr, diagnostics);
        List<SyntaxRule> rules = new ArrayList<>();
        for (RuleDescr rule : descr.getRules()) {
            rules.add(new RuleReader(source, diagnostics).read(rule));
        }
        return rules;
    }

    private static void syntax(Place place, SourceText source, String why, Diagnostics diagnostics) {
        String first = why == null ? "no details" : why.lines().findFirst().orElse("no details");
        // The parser stumbles over its own end where a text stops halfway, and tells that by the name of an exception.
        first = first.replaceFirst("unexpected exception at input '<eof>'.*", "the text ends in the middle of a rule");
        diagnostics.add(Message.DRL_SYNTAX, place, source.line(place.line()), first);
    }

    private static void refuseAllButRules(SourceText source, PackageDescr p, Diagnostics diagnostics) {
        if (p.getName() != null && !PACKAGE.matcher(p.getName()).matches()) {
            diagnostics.add(
                    Message.REFUSED,
                    source.find("package", 1),
                    p.getName(),
                    "a package name of other signs than letters, digits and dots",
                    "Use plain letters");
        }
        refuse(p.getImports(), "an import", source, diagnostics);
        refuse(p.getFunctionImports(), "an import of a function", source, diagnostics);
        refuse(p.getAccumulateImports(), "an import of an accumulate function", source, diagnostics);
        refuse(p.getGlobals(), "a global", source, diagnostics);
        refuse(p.getFunctions(), "a function", source, diagnostics);
        refuse(p.getTypeDeclarations(), "a declared type", source, diagnostics);
        refuse(p.getEnumDeclarations(), "a declared enum", source, diagnostics);
        refuse(p.getEntryPointDeclarations(), "an entry point", source, diagnostics);
        refuse(p.getWindowDeclarations(), "a window", source, diagnostics);
        refuse(p.getAttributes(), "an attribute of a file", source, diagnostics);
        refuse(p.getUnit() == null ? List.of() : List.of(p.getUnit()), "a unit of rules", source, diagnostics);
    }

    private static void refuse(
            Collection<? extends BaseDescr> found, String what, SourceText source, Diagnostics diagnostics) {
        for (BaseDescr descr : found) {
            Place place = source.at(descr.getLine(), descr.getColumn() + 1);
            diagnostics.add(Message.REFUSED, place, source.line(place.line()), what, "A rule file holds rules only");
        }
    }
}
