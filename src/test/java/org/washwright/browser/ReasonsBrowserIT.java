package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("browser")
class ReasonsBrowserIT {
    private static final double FIRST_ANSWER = 240_000;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_engineer_asks_what_would_change_it_and_what_to_find_out(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            Page page = session.page();
            // The first answer of a run compiles the rules.
            page.setDefaultNavigationTimeout(FIRST_ANSWER);
            page.setDefaultTimeout(FIRST_ANSWER);
            page.navigate("/tasks");
            page.getByLabel("Task, or a table of tasks").setInputFiles(Path.of("demo-data/tasks/steel-clips.yaml"));
            button(page, "Bring it in");
            page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            button(page, "Assess");
            page.waitForURL(url -> url.contains("/assessments/"));
            String assessment = page.url();

            link(page, "What would change it");
            check(session, "changes-ask-" + width);
            page.locator("#process").selectOption("grit-blasting");
            button(page, "Search");
            assertThat(page.locator(".verdict-sentence")).containsText("blasting with grit or beads", patient());
            assertThat(page.locator(".proposals > li").first()).containsText("First");
            check(session, "changes-found-" + width);

            page.navigate(assessment);
            link(page, "What to find out");
            assertThat(page.locator(".verdict-sentence")).containsText("How hard is it (HRC)?", patient());
            page.getByText("Each outcome of hardness").first().click();
            assertThat(page.locator(".to-find-out table").first()).containsText("HRC");
            check(session, "find-out-" + width);
            session.assertQuiet();
        }
    }

    private static LocatorAssertions.ContainsTextOptions patient() {
        return new LocatorAssertions.ContainsTextOptions().setTimeout(FIRST_ANSWER);
    }

    private static void link(Page page, String name) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true))
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
