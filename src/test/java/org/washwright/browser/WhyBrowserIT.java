package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From an answer to its reasons, to why not, to an objection and its reply, by page and partly by keyboard. */
@Tag("browser")
class WhyBrowserIT {
    private static final double FIRST_ANSWER = 240_000;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_engineer_asks_why_and_why_not_and_objects_and_a_consultant_replies(int width) {
        String because = "Not so in our shop, width " + width;
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            Page page = session.page();
            // The first answer of a run compiles the rules.
            page.setDefaultNavigationTimeout(FIRST_ANSWER);
            page.setDefaultTimeout(FIRST_ANSWER);
            page.navigate("/tasks");
            page.getByLabel("Task, or a table of tasks").setInputFiles(Path.of("demo-data/tasks/bearing-rings.yaml"));
            button(page, "Bring it in");
            page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            button(page, "Assess");
            page.waitForURL(url -> url.contains("/assessments/"));
            String assessment = page.url();

            link(page, "Why");
            assertThat(page.locator(".verdict-sentence")).containsText(".", patient());
            check(session, "why-headline-" + width);
            followTheDrawingByKeyboard(page);

            page.navigate(assessment + "/why?of=/ruledOut/0/reasons/0");
            assertThat(page.locator(".reasons").first()).containsText("by the rule:");
            check(session, "why-ruled-out-" + width);
            page.getByLabel("Say what is wrong with it").fill(because);
            button(page, "This reason is wrong");
            assertThat(page.locator(".mark-list")).containsText(because);
            check(session, "why-objected-" + width);

            page.navigate(assessment + "/why-not");
            check(session, "why-not-ask-" + width);
            page.locator("#process").selectOption("acid-pickling");
            button(page, "Ask why not");
            assertThat(page.locator(".verdict-sentence")).containsText("acid pickling is");
            check(session, "why-not-process-" + width);
            page.locator("#rule").selectOption("AT-10");
            button(page, "Ask why not");
            assertThat(page.locator(".conditions").first()).containsText("here:");
            check(session, "why-not-rule-" + width);

            page.navigate(assessment + "/proof");
            assertThat(page.locator(".verdict-sentence")).containsText("The proof holds");
            check(session, "proof-" + width);
            session.assertQuiet();
        }
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            Page page = session.page();
            page.navigate("/marks");
            Locator mark = page.locator(".mark").filter(new Locator.FilterOptions().setHasText(because));
            check(session, "marks-" + width);
            mark.getByText("Answer", new Locator.GetByTextOptions().setExact(true))
                    .click();
            mark.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("The rule stands"))
                    .click();
            assertThat(page.locator(".wrong-text")).containsText("Say why the rule stands.");
            check(session, "marks-refused-" + width);
            page.locator("textarea[aria-invalid]").fill("It holds above the limit of the hall.");
            page.locator(".mark:has(textarea[aria-invalid])")
                    .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("The rule stands"))
                    .click();
            assertThat(page.locator(".mark").filter(new Locator.FilterOptions().setHasText(because)))
                    .containsText("It holds above the limit of the hall.");
            session.assertQuiet();
        }
    }

    /** A box of the drawing is a link: with the key it leads to its row of the table. */
    private static void followTheDrawingByKeyboard(Page page) {
        Locator box = page.locator(".reason-drawing a").nth(1);
        box.focus();
        page.keyboard().press("Enter");
        String row = String.valueOf(box.getAttribute("href"));
        assertEquals("#reason-2", row);
        assertTrue(page.url().endsWith(row), page.url());
        assertThat(page.locator(row)).isVisible();
    }

    private static LocatorAssertions.ContainsTextOptions patient() {
        return new LocatorAssertions.ContainsTextOptions().setTimeout(FIRST_ANSWER);
    }

    private static void link(Page page, String name) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true))
                .first()
                .click();
    }

    private static void button(Page page, String name) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .click();
    }

    private static void check(BrowserSession session, String name) {
        session.screenshot(name);
        session.assertAccessible();
        session.assertNoSidewaysScrolling();
    }
}
