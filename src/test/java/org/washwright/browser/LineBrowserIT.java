package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("browser")
class LineBrowserIT {
    private static final double FIRST_ANSWER = 240_000;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_engineer_reads_a_line_to_its_inputs_compares_two_and_asks_with_other_weights(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            Page page = session.page();
            // The first answer of a run compiles the rules.
            page.setDefaultNavigationTimeout(FIRST_ANSWER);
            page.navigate("/tasks");
            page.getByLabel("Task, or a table of tasks").setInputFiles(Path.of("demo-data/tasks/valve-block.yaml"));
            button(page, "Bring it in");
            page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            button(page, "Assess");
            page.waitForURL(url -> url.contains("/assessments/"));
            String assessment = page.url();
            assertThat(page.getByText("How firm is the order?")).isVisible();
            assertThat(page.locator(".key-figures")).containsText("cost of a part");

            // Too few are said to be too few, and nothing is lost.
            button(page, "Compare those ticked");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("Tick two to four");
            page.navigate(assessment);
            page.getByLabel("compare mild alkaline immersion with ultrasonics").check();
            page.getByLabel("compare hydrocarbon in a closed vacuum plant").check();
            button(page, "Compare those ticked");
            assertThat(page.locator("h1")).hasText("Side by side");
            check(session, "line-compare-" + width);

            page.navigate(assessment + "/processes/mild-alkaline-ultrasonic");
            page.locator("#figure-rinse-water summary").focus();
            page.keyboard().press("Enter");
            assertThat(page.locator("#figure-rinse-water")).containsText("water for each litre carried in");
            assertThat(page.locator("#figure-rinse-water")).containsText("Formula:");
            assertThat(page.getByText("Keep the baths in hand")).isVisible();
            check(session, "line-process-" + width);

            page.navigate(assessment);
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Ask with other weights or prices"))
                    .click();
            page.getByText("from comparing areas in pairs, below").click();
            page.getByText("Compare in pairs").click();
            page.getByLabel("technology or quality").selectOption("9.0");
            page.getByLabel("quality or health and safety").selectOption("9.0");
            page.getByLabel("technology or health and safety").selectOption(String.valueOf(1 / 9.0));
            page.locator("[id='/assumptions/electricity-price']").fill("cheap");
            button(page, "Ask");
            assertThat(page.locator(".errors")).containsText("cheap");
            check(session, "line-ask-wrong-" + width);
            page.locator("[id='/assumptions/electricity-price']").fill("0.18 €/kWh");
            button(page, "Ask");
            page.waitForURL(url -> url.contains("/assessments/") && !url.equals(assessment));
            assertThat(page.getByText("The comparisons contradict each other")).isVisible();
            assertTrue(!page.url().equals(assessment));
            check(session, "line-asked-" + width);
            session.assertQuiet();
        }
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
