package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("browser")
class CompareBrowserIT {
    private static final double FIRST_ANSWER = 240_000;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_engineer_tries_a_harder_steel_mends_a_slip_keeps_a_variant_and_reads_what_moved(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            Page page = session.page();
            // The first answer of a run compiles the rules.
            page.setDefaultTimeout(FIRST_ANSWER);
            page.setDefaultNavigationTimeout(FIRST_ANSWER);
            page.navigate("/tasks");
            page.getByLabel("Task, or a table of tasks").setInputFiles(Path.of("demo-data/tasks/steel-clips.yaml"));
            button(page, "Bring it in");
            page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            button(page, "Assess");
            page.waitForURL(url -> url.contains("/assessments/"));
            link(page, "What if");
            assertThat(page.locator("h1")).hasText("What if…");
            check(session, "what-if-empty-" + width);

            page.locator("select[name=pick]").selectOption("materials.0.hardness");
            button(page, "Choose");
            assertThat(page.locator("[id='materials.0.hardness']")).hasValue("30..40");
            page.locator("[id='materials.0.hardness']").fill("very hard");
            button(page, "See what moves");
            assertThat(page.locator("[id='materials.0.hardness-error']")).containsText("very hard");
            check(session, "what-if-wrong-" + width);
            page.locator("[id='materials.0.hardness']").fill("45");
            button(page, "See what moves");
            page.waitForURL(url -> url.contains("?set="));
            assertThat(page.locator(".verdict-sentence")).containsText("With 45 HRC instead of 30 to 40 HRC");
            assertThat(page.locator(".verdict-sentence")).containsText("fall out");
            assertThat(page.locator("#moved + table, #moved ~ table").first()).containsText("Very hard steel");
            check(session, "what-if-" + width);

            button(page, "Keep and compare");
            page.waitForURL(url -> url.contains("/compare-with/"));
            assertThat(page.locator("h1")).hasText("Two answers compared");
            page.locator(".moved-line summary").first().focus();
            page.keyboard().press("Enter");
            check(session, "compared-" + width);
            link(page, "Compare with another answer");
            assertThat(page.getByText("variant: 45 HRC")).isVisible();
            check(session, "compare-choose-" + width);
            session.assertQuiet();
        }
    }

    private static void button(Page page, String name) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .click();
    }

    private static void link(Page page, String name) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true))
                .click();
    }

    private static void check(BrowserSession session, String name) {
        session.screenshot(name);
        session.assertAccessible();
        session.assertNoSidewaysScrolling();
    }
}
