package org.washwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The check of accessibility, asked for what is wrong alone, tells all that the whole check tells. */
@Tag("browser")
class AccessibleCheckIT {

    private static final String FAULTY = """
            <!doctype html><html><head><title>Faults</title></head><body><main><h1>Faults</h1>
            <img src="data:,"><button></button><a href="/"></a><input type="text">
            <p style="color:#999;background:#aaa">Pale</p><ul><p>No item</p></ul><table><tr><th></th></tr></table>
            <div role="button" aria-pressed="perhaps" tabindex="0">Half</div><p id="twice">a</p><label for="x">b</label>
            </main></body></html>
            """;

    @Test
    void what_the_whole_check_finds_is_told_place_by_place() {
        try (BrowserSession session = BrowserSession.open()) {
            session.page().setContent(FAULTY);
            Set<String> whole = new TreeSet<>();
            int places = 0;
            for (var rule : new AxeBuilder(session.page()).analyze().getViolations()) {
                whole.add(rule.getId());
                places += rule.getNodes().size();
            }
            String told = assertThrows(AssertionError.class, session::assertAccessible)
                    .getMessage();
            Set<String> ours = new TreeSet<>();
            int lines = 0;
            for (String line : told.lines().skip(1).toList()) {
                ours.add(line.substring(0, line.indexOf(' ')));
                lines += line.split(" \\| ").length;
            }
            assertEquals(whole, ours);
            assertEquals(places, lines);
            // WCAG 2.2, success criteria 1.1.1, 1.4.3, 3.1.1 and 4.1.2.
            assertTrue(whole.containsAll(Set.of("image-alt", "color-contrast", "html-has-lang", "button-name")), told);
        }
    }

    @Test
    void a_page_with_a_frame_is_not_passed_by_halves() {
        try (BrowserSession session = BrowserSession.open()) {
            session.page()
                    .setContent("<!doctype html><html lang=\"en\"><head><title>t</title></head><body><main><h1>t</h1>"
                            + "<iframe title=\"f\" srcdoc=\"x\"></iframe></main></body></html>");
            assertTrue(assertThrows(AssertionError.class, session::assertAccessible)
                    .getMessage()
                    .contains("frames"));
        }
    }
}
