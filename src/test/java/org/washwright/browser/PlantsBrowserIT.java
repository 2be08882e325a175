package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("browser")
class PlantsBrowserIT {
    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_engineer_describes_a_plant_mends_an_error_and_holds_tasks_against_another(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            Page page = session.page();
            page.navigate("/plants/new");
            check(session, "plant-form-empty", width);
            page.getByLabel("What do you call it?").fill("Spray cabinet, " + width);
            page.getByLabel("Which process does its main stage run?")
                    .selectOption(new SelectOption().setLabel("neutral aqueous spray"));
            page.getByLabel("rinse", new Page.GetByLabelOptions().setExact(true))
                    .check();
            button(page, "Show the settings").click();
            assertThat(page.locator("[id='/settings/rinse/time']")).isVisible();
            page.locator("[id='/settings/main/temperature']").fill("warm");
            button(page, "Keep the plant").click();
            assertThat(page.locator(".errors")).isFocused();
            check(session, "plant-form-error", width);
            page.locator("[id='/settings/main/temperature']").fill("50..65 °C");
            button(page, "Keep the plant").click();
            page.waitForURL(url -> url.matches(".*/plants/[0-9a-f-]{36}"));
            check(session, "plant", width);

            for (String task :
                    List.of("bearing-rings", "contract-shop", "titanium-brackets", "valve-block", "steel-clips")) {
                page.navigate("/tasks");
                page.locator("input[type=file]").setInputFiles(Path.of("demo-data/tasks/" + task + ".yaml"));
                button(page, "Bring it in").click();
                page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            }
            page.navigate("/plants/new");
            page.locator("input[type=file]").setInputFiles(Path.of("demo-data/plants/two-chamber-line.yaml"));
            button(page, "Bring it in").click();
            page.waitForURL(url -> url.matches(".*/plants/[0-9a-f-]{36}"));
            for (String task : List.of(
                    "Bearing rings", "Customer's turned", "Titanium", "Hydraulic valve", "Spring steel clips")) {
                page.locator(".pick-table tr")
                        .filter(new Locator.FilterOptions().setHasText(task))
                        .first()
                        .locator("input[type=checkbox]")
                        .check();
            }
            // By keyboard: from the button that Enter presses.
            button(page, "Hold them against the plant").focus();
            page.keyboard().press("Enter");
            page.waitForURL(url -> url.contains("?task="));
            assertThat(page.locator("#result")).containsText("Of 5 tasks it serves 3");
            assertThat(page.locator(".week-bar")).isVisible();
            check(session, "plant-week", width);
            page.locator(".week-table th a").last().click();
            assertThat(page.locator(".plant-tasks li").last()).isInViewport();
            page.navigate("/plants");
            check(session, "plants", width);
            session.assertQuiet();
        }
    }

    private static void check(BrowserSession session, String name, int width) {
        session.screenshot(name + "-" + width);
        session.assertAccessible();
        session.assertNoSidewaysScrolling();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(false));
    }
}
