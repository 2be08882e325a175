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
class RulebookBrowserIT {

    private static final LocatorAssertions.IsVisibleOptions PATIENTLY =
            new LocatorAssertions.IsVisibleOptions().setTimeout(60_000);

    private static final String BROKEN =
            "rule \"x\"\n  @id(\"X-1\")\nwhen\n  Materiel(porous == true)\nthen\n  shout(\"a\");\nend\n";

    @ParameterizedTest
    @ValueSource(ints = {1280, 768, 390})
    void every_page_is_accessible_quiet_and_fits_its_window(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            Page page = session.page();
            page.navigate("/rulebooks");
            check(session, "rulebooks-" + width);
            page.getByText("answers tasks now")
                    .locator("xpath=ancestor::tr")
                    .getByRole(AriaRole.LINK)
                    .first()
                    .click();
            String edition = page.url();
            check(session, "rulebook-" + width);
            page.navigate(edition + "/rules");
            session.screenshot("rulebook-rules-" + width);
            session.assertNoSidewaysScrolling();
            if (width == 1280) {
                // Every rule of the edition: this takes the checker a minute. The rules found below are checked in each
                // width.
                session.assertAccessible();
            }
            page.navigate(edition + "/rules?q=hydrogen&basis=standard");
            check(session, "rulebook-rules-found-" + width);
            page.navigate(edition + "/trees");
            check(session, "rulebook-trees-" + width);
            page.navigate(edition + "/trees/what-is-this-soil");
            check(session, "rulebook-tree-" + width);
            page.navigate(edition + "/glossary");
            check(session, "rulebook-glossary-" + width);
            page.navigate("/glossary?q=oil");
            check(session, "glossary-found-" + width);
            page.navigate(edition + "/diagnostics");
            check(session, "rulebook-nothing-found-" + width);
            session.assertQuiet();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void what_is_wrong_in_a_bundle_is_told_in_its_place(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            Page page = session.page();
            page.navigate("/rulebooks");
            upload(page, Bundle.zipOf("run.sh", "x"), "Bring it in");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("nothing was stored");
            session.assertAccessible();
            session.assertNoSidewaysScrolling();
            session.screenshot("rulebook-refused-" + width);
            upload(page, Bundle.starter().with("rules/broken.drl", BROKEN).zip(), "Bring it in");
            page.waitForURL("**/diagnostics");
            check(session, "rulebook-diagnostics-" + width);
            page.navigate(page.url().replace("/diagnostics", ""));
            check(session, "rulebook-with-errors-" + width);
        }
    }

    @Test
    void a_draft_goes_to_release_by_keyboard_and_a_second_person() {
        String edition;
        try (BrowserSession session = BrowserSession.open().signIn("consultant")) {
            Page page = session.page();
            page.navigate("/rulebooks");
            upload(
                    page,
                    Bundle.starter().with("rules/extra.drl", "// for a test\n").zip(),
                    "Bring it in");
            // Reading, checking and storing a large edition takes a while on two busy cores.
            assertThat(page.getByText("A draft that answers no task yet")).isVisible(PATIENTLY);
            edition = page.url();
            check(session, "rulebook-draft-1280");
            page.navigate(edition + "/review");
            page.getByLabel("What changed and why").fill("A note in the lines file.");
            page.getByLabel("What changed and why").press("Tab");
            page.keyboard().press("Enter");
            assertThat(page.getByText("It waits for a reviewer")).isVisible(PATIENTLY);
        }
        for (int width : new int[] {390, 1280}) {
            try (BrowserSession session = BrowserSession.open(width, 900).signIn("reviewer")) {
                session.page().navigate(edition + "/review");
                check(session, "rulebook-review-" + width);
            }
        }
        try (BrowserSession session = BrowserSession.open().signIn("reviewer")) {
            Page page = session.page();
            page.navigate(edition + "/review");
            page.getByLabel("What was checked").first().fill("Read what is new.");
            page.getByLabel("Why now, although").fill("Nothing but a comment is new.");
            page.getByLabel("Release it for good").check();
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Release"))
                    .click();
            assertThat(page.getByText("it never changes")).isVisible(PATIENTLY);
            page.navigate(edition);
            assertThat(page.getByText("This edition answers new tasks")).isVisible(PATIENTLY);
            check(session, "rulebook-released-1280");
        }
    }

    private static void upload(Page page, byte[] zip, String button) {
        page.getByLabel("Bundle of an edition").setInputFiles(new FilePayload("bundle.zip", "application/zip", zip));
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button))
                .click();
    }

    private static void check(BrowserSession session, String name) {
        session.screenshot(name);
        session.assertAccessible();
        session.assertNoSidewaysScrolling();
    }
}
