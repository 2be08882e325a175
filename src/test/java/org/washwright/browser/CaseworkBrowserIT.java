package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("browser")
class CaseworkBrowserIT {
    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_engineer_describes_a_task_mends_an_error_plays_the_tree_and_reads_the_answer_to_its_rules(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            Page page = session.page();
            page.navigate("/tasks/new");
            check(session, "task-form-empty", width);

            page.getByLabel("What do you call it?").fill("Steel pins before plating, " + width);
            field(page, "part.rate").fill("600");
            choose(page, "materials.0.substrate", "carbon steel");
            field(page, "materials.0.hardness").fill("thirty");
            button(page, "Add a feature").click();
            choose(page, "features.0.kind", "blind hole");
            field(page, "features.0.diameter").fill("6");
            field(page, "features.0.depth").fill("48");
            choose(page, "following.operation", "electroplating");
            button(page, "Save the task").last().click();

            assertThat(page.locator(".errors")).isFocused();
            assertThat(page.locator(".errors")).containsText("hardness");
            assertEquals("thirty", field(page, "materials.0.hardness").inputValue());
            assertEquals("48", field(page, "features.0.depth").inputValue());
            check(session, "task-form-error", width);
            field(page, "materials.0.hardness").fill("30..40");

            page.locator("button[value='play:soils.0.kind']").click();
            check(session, "question", width);
            button(page, "A film or a paste").click();
            button(page, "It beads and slides").click();
            button(page, "Smooth and thin").click();
            button(page, "Can't be tried").click();
            assertThat(page.locator("[id='soils.0.kind.played']")).containsText("cutting oil");
            assertEquals("30..40", field(page, "materials.0.hardness").inputValue());
            check(session, "task-form-played", width);
            button(page, "Save the task").last().click();

            page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            check(session, "task", width);
            button(page, "Assess").click();
            page.waitForURL(url -> url.contains("/assessments/"));
            check(session, "assessment", width);
            String assessment = page.url();
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("See every reason"))
                    .click();
            page.waitForURL("**/trace");
            check(session, "trace", width);
            Locator rule = page.locator("a.rule-id").first();
            String id = rule.innerText();
            rule.click();
            page.waitForURL(url -> url.contains("/rules#"));
            assertThat(page.locator("[id='" + id + "']")).isVisible();
            page.navigate(assessment);
            page.locator(".processes th a").first().click();
            page.waitForURL("**/processes/**");
            check(session, "candidate", width);
            page.navigate("/tasks");
            check(session, "tasks", width);
            session.assertQuiet();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void the_verdict_on_an_intended_process_is_read_at_a_glance_and_leads_to_its_rules(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            Page page = session.page();
            // A process and a temperature far above every window of aqueous cleaning.
            intend(page, "neutral aqueous spray", "95");
            Locator verdict =
                    page.getByRole(AriaRole.REGION, new Page.GetByRoleOptions().setName("The intended process"));
            assertThat(verdict).containsText("temperature 95 °C: keep it");
            verdict.getByText("Settings:").click();
            assertThat(verdict.getByRole(AriaRole.TABLE)).isVisible();
            check(session, "assessment-intended", width);
            session.assertQuiet();
        }
    }

    private static void intend(Page page, String process, String temperature) {
        page.navigate("/tasks/new");
        page.getByLabel("What do you call it?").fill("Pins with a process in mind");
        // Folds hold what few tasks need.
        page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
        choose(page, "intended.process", process);
        field(page, "intended.temperature").fill(temperature);
        button(page, "Save the task").last().click();
        page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
        button(page, "Assess").click();
        page.waitForURL(url -> url.contains("/assessments/"));
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void the_pages_of_rulebooks_are_clear_and_accessible(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            Page page = session.page();
            page.navigate("/");
            check(session, "home", width);
            page.navigate("/rulebooks");
            check(session, "rulebooks", width);
            // Drafts of other tests may stand first, and with errors nothing of them can be shown.
            page.locator(".records tr", new Page.LocatorOptions().setHasText("answers tasks now"))
                    .locator("th a")
                    .click();
            page.waitForURL(url -> url.matches(".*/rulebooks/[0-9a-f-]{36}"));
            check(session, "rulebook", width);
            String edition = page.url();
            page.navigate(edition + "/rules");
            check(session, "rules", width);
            page.navigate(edition + "/trees");
            check(session, "trees", width);
            page.navigate(edition + "/diagnostics");
            check(session, "diagnostics", width);
            page.navigate("/glossary");
            page.getByLabel("Find a word").fill("oil");
            page.keyboard().press("Enter");
            assertThat(page.getByRole(AriaRole.STATUS).filter(new Locator.FilterOptions().setHasText("words for")))
                    .isVisible();
            check(session, "glossary", width);
            assertTrue(page.url().contains("q=oil"));
            session.assertQuiet();
        }
    }

    private static void check(BrowserSession session, String name, int width) {
        session.screenshot(name + "-" + width);
        session.assertAccessible();
        session.assertNoSidewaysScrolling();
    }

    private static Locator field(Page page, String name) {
        return page.locator("input[id='" + name + "']");
    }

    private static void choose(Page page, String name, String words) {
        // A short list is a plain choice, a long one is searched.
        if (page.locator("select[id='" + name + "']").count() > 0) {
            page.locator("select[id='" + name + "']").selectOption(new SelectOption().setLabel(words));
        } else {
            field(page, name).fill(words);
            page.keyboard().press("Enter");
        }
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(false));
    }
}
