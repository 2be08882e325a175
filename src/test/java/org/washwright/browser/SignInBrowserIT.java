package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("browser")
class SignInBrowserIT {
    @Test
    void a_person_is_sent_to_sign_in_comes_back_to_the_page_wanted_makes_a_token_and_signs_out() {
        try (BrowserSession session = BrowserSession.open()) {
            Page page = session.page();
            page.navigate("/account");
            assertTrue(page.url().contains("/sign-in?return="), page.url());
            session.assertAccessible();
            session.screenshot("sign-in-1280");

            page.getByLabel("Name").fill("engineer");
            page.getByLabel("Password").fill("not it");
            page.keyboard().press("Enter");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("Check both and try again");
            session.assertAccessible();

            page.getByLabel("Password").fill("clear water");
            page.keyboard().press("Enter");
            page.waitForURL("**/account");
            session.assertAccessible();

            page.getByLabel("What is it for?").fill("night run");
            button(page, "Make a token").click();
            assertThat(page.locator("#new-token")).containsText("ww_");
            session.screenshot("account-1280");
            button(page, "Revoke the token night run").click();
            assertThat(page.getByText("You have none yet.")).isVisible();

            button(page, "Sign out").click();
            page.waitForURL("**/sign-in");
            page.navigate("/account");
            assertTrue(page.url().contains("/sign-in"), page.url());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 768, 390})
    void the_start_page_is_quiet_accessible_and_fits_its_window(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            session.assertAccessible();
            session.assertNoSidewaysScrolling();
            session.assertQuiet();
            session.screenshot("start-" + width);
        }
    }

    private static com.microsoft.playwright.Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }
}
