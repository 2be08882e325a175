package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.rulebook.Bundle;

@Tag("browser")
class ChecksBrowserIT {
    private static final double LONG = 600_000;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void cases_coverage_examination_and_grid_are_accessible_quiet_and_fit_their_window(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            Page page = session.page();
            String edition = edition(page);
            page.navigate(edition + "/cases");
            Page.GetByRoleOptions run = new Page.GetByRoleOptions().setName(java.util.regex.Pattern.compile("Run.*"));
            page.getByRole(AriaRole.BUTTON, run).focus();
            page.keyboard().press("Enter");
            assertThat(page.getByText("cases hold")).isVisible(soon());
            check(session, "checks-cases-" + width);
            page.navigate(edition + "/coverage");
            assertThat(page.getByText("rules fired")).isVisible(soon());
            check(session, "checks-coverage-" + width);
            page.navigate(edition + "/examination");
            if (page.getByText("have not been examined").isVisible()) {
                page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Examine the rules"))
                        .click();
                check(session, "checks-examining-" + width);
            }
            assertThat(page.getByText("Tasks at the edge of each rule")).isVisible(soon());
            page.getByText("GE-01 A slender").click();
            check(session, "checks-examination-" + width);
            page.navigate(edition + "/grid");
            assertThat(page.locator("table.grid")).isVisible(soon());
            check(session, "checks-grid-" + width);
            page.getByLabel("following operation").selectOption("electroplating");
            page.waitForURL("**fourth=**");
            assertThat(page.locator("table.grid")).isVisible(soon());
            page.locator("table.grid td a").first().click();
            check(session, "checks-cell-" + width);
            session.assertQuiet();
        }
    }

    @Test
    void a_cell_of_the_grid_opens_as_a_task() {
        try (BrowserSession session = BrowserSession.open().signIn("consultant")) {
            Page page = session.page();
            page.navigate(edition(page) + "/grid");
            assertThat(page.locator("table.grid")).isVisible(soon());
            page.locator("table.grid td a").first().click();
            page.getByRole(
                            AriaRole.BUTTON,
                            new Page.GetByRoleOptions().setName(java.util.regex.Pattern.compile("Open as a task.*")))
                    .click();
            page.waitForURL("**/edit");
            assertThat(page.locator("main")).containsText("adhesive bonding");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void a_case_that_fails_says_what_was_found_instead(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            Page page = session.page();
            page.navigate("/rulebooks");
            String wrong = "cases:\n  - id: wrong-" + width + "\n    title: A case that can't hold\n"
                    + "    task: {title: t, permittedSolvents: []}\n    expect: {proposes: [hydrocarbon-vacuum]}\n";
            page.getByLabel("Bundle of an edition")
                    .setInputFiles(new FilePayload(
                            "bundle.zip",
                            "application/zip",
                            Bundle.starter()
                                    .withoutFolder("cases")
                                    .with("cases/wrong.yaml", wrong)
                                    .zip()));
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Bring it in"))
                    .click();
            assertThat(page.getByText("A draft that answers no task yet")).isVisible();
            page.navigate(page.url() + "/cases");
            check(session, "checks-cases-not-run-" + width);
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Run the cases"))
                    .click();
            assertThat(page.getByText("Found instead: ruled out")).isVisible();
            check(session, "checks-cases-failing-" + width);
        }
    }

    private static LocatorAssertions.IsVisibleOptions soon() {
        return new LocatorAssertions.IsVisibleOptions().setTimeout(LONG);
    }

    private static String edition(Page page) {
        page.navigate("/rulebooks");
        page.getByText("answers tasks now")
                .locator("xpath=ancestor::tr")
                .getByRole(AriaRole.LINK)
                .first()
                .click();
        return page.url();
    }

    private static void check(BrowserSession session, String name) {
        session.screenshot(name);
        session.assertAccessible();
        session.assertNoSidewaysScrolling();
    }
}
