package org.washwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.washwright.cases.CaseResult;

/** Results in the XML form that build servers read: a test case each, with a failure for what is not as it must be. */
final class JUnitReport {

    private JUnitReport() {}

    /**
     * One thing that was tested.
     *
     * @param group what it belongs to, such as a file
     * @param name what it is called
     * @param failure what is wrong in short; empty when nothing is
     * @param detail more of it, or a remark when nothing is wrong; may be empty
     */
    record Tested(String group, String name, String failure, String detail) {}

    static String of(List<CaseResult> results) {
        List<Tested> tested = new ArrayList<>();
        for (CaseResult r : results) {
            StringBuilder detail = new StringBuilder();
            r.unmet().forEach(c -> detail.append("expected: " + c.expected() + "\nfound: " + c.found() + "\n"));
            r.refused().forEach(d -> detail.append(d).append('\n'));
            tested.add(new Tested(
                    r.reference().place().file(),
                    r.reference().id() + " " + r.reference().title(),
                    r.holds() ? "" : r.reference().place().toString(),
                    detail.toString()));
        }
        return of("reference cases", tested);
    }

    /** A suite of things tested. */
    static String of(String suite, List<Tested> tested) {
        long failures = tested.stream().filter(t -> !t.failure().isEmpty()).count();
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                .append("<testsuite name=\"")
                .append(escaped(suite))
                .append("\" tests=\"")
                .append(tested.size())
                .append("\" failures=\"")
                .append(failures)
                .append("\">\n");
        for (Tested t : tested) {
            out.append("  <testcase classname=\"")
                    .append(escaped(t.group()))
                    .append("\" name=\"")
                    .append(escaped(t.name()))
                    .append('"');
            if (t.failure().isEmpty() && t.detail().isEmpty()) {
                out.append("/>\n");
            } else if (t.failure().isEmpty()) {
                out.append(">\n    <system-out>").append(escaped(t.detail())).append("</system-out>\n  </testcase>\n");
            } else {
                out.append(">\n    <failure message=\"")
                        .append(escaped(t.failure()))
                        .append("\">")
                        .append(escaped(t.detail()))
                        .append("</failure>\n  </testcase>\n");
            }
        }
        return out.append("</testsuite>\n").toString();
    }

    /** Characters that XML 1.0 can't hold at all (section 2.2) become a mark. */
    private static String escaped(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints()
                .map(c ->
                        c == '\n' || c == '\t' || c >= ' ' && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000
                                ? c
                                : 0xFFFD)
                .forEach(clean::appendCodePoint);
        return clean.toString()
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
