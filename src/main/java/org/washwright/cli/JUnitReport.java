package org.washwright.cli;

import java.util.List;
import org.washwright.cases.CaseResult;

/** Results of cases in the XML form that build servers read: a test case for each case, a failure for what is not met. */
final class JUnitReport {

    private JUnitReport() {}

    static String of(List<CaseResult> results) {
        long failures = results.stream().filter(r -> !r.holds()).count();
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                .append("<testsuite name=\"reference cases\" tests=\"")
                .append(results.size())
                .append("\" failures=\"")
                .append(failures)
                .append("\">\n");
        for (CaseResult r : results) {
            out.append("  <testcase classname=\"")
                    .append(escaped(r.reference().place().file()))
                    .append("\" name=\"")
                    .append(escaped(r.reference().id() + " " + r.reference().title()))
                    .append('"');
            if (r.holds()) {
                out.append("/>\n");
                continue;
            }
            out.append(">\n    <failure message=\"")
                    .append(escaped(r.reference().place().toString()))
                    .append("\">");
            r.unmet().forEach(c -> out.append(escaped("expected: " + c.expected() + "\nfound: " + c.found() + "\n")));
            r.refused().forEach(d -> out.append(escaped(d + "\n")));
            out.append("</failure>\n  </testcase>\n");
        }
        return out.append("</testsuite>\n").toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
