package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Replay and exercises as a trainer and a trainee meet them. */
@Tag("browser")
class TeachingBrowserIT {
    private static final double PATIENCE = 180_000;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_answer_is_walked_through_and_an_exercise_set_worked_on_and_looked_at(int width) {
        String exercise;
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            Page page = session.page();
            page.navigate("/tasks");
            page.locator("input[type=file]").setInputFiles(Path.of("demo-data/tasks/bearing-rings.yaml"));
            button(page, "Bring it in").click();
            page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            // The first answer of a service waits until the rules are compiled.
            button(page, "Assess").first().click(new Locator.ClickOptions().setTimeout(PATIENCE));
            page.waitForURL(url -> url.contains("/assessments/"), new Page.WaitForURLOptions().setTimeout(PATIENCE));
            String answer = page.url();
            page.locator(".answer-links a[href$='/replay']").click();
            page.waitForURL(url -> url.endsWith("/replay"));
            page.locator("#process").selectOption("acid-pickling");
            button(page, "Tell it").click();
            page.waitForURL(url -> url.contains("process=acid-pickling"));
            walk(page);
            check(session, "replay-middle", width);
            page.navigate(answer + "/replay?process=acid-pickling");
            check(session, "replay-first", width);
            page.locator("#replay-last").click();
            assertThat(page.locator("#replay-title")).containsText("The answer");
            check(session, "replay-last", width);
            page.navigate(answer + "/replay?step=400");
            check(session, "replay-whole", width);

            page.navigate(answer + "/exercise");
            page.locator("[id='/title']").fill("Rings " + width);
            check(session, "exercise-set", width);
            button(page, "Set the exercise").click();
            page.waitForURL(url -> url.matches(".*/exercises/[0-9a-f-]{36}"));
            exercise = page.url();
            session.assertQuiet();
        }
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("trainee")) {
            work(session, exercise, width);
            session.assertQuiet();
        }
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("reviewer")) {
            session.page().navigate(exercise + "/results");
            assertThat(session.page().locator(".verdict")).containsText("1 person, 1 try");
            check(session, "exercise-results", width);
            session.assertQuiet();
        }
    }

    /** By button in place, by arrow keys, and back; the address, the focus and what is said follow. */
    private static void walk(Page page) {
        page.locator("#replay-next").click();
        page.waitForURL(url -> url.contains("step=2"));
        assertThat(page.locator("#said")).containsText("Step 2 of");
        for (int step = 3; step <= 10; step++) {
            int wanted = step;
            page.keyboard().press("ArrowRight");
            page.waitForURL(url -> url.endsWith("step=" + wanted));
            assertThat(page.locator("#said")).containsText("Step " + step + " of");
        }
        assertThat(page.locator("#replay-next")).isFocused();
        assertEquals(10, page.locator(".for-wide .mark").count());
        page.keyboard().press("ArrowLeft");
        page.waitForURL(url -> url.endsWith("step=9"));
        assertThat(page.locator("#said")).containsText("Step 9 of");
        page.locator("#replay-conclusion").click();
        assertThat(page.locator("#replay-adds")).containsText("known now");
        assertThat(page.locator(".replay-added")).containsText("so");
    }

    private static void work(BrowserSession session, String exercise, int width) {
        Page page = session.page();
        page.navigate("/exercises");
        check(session, "exercises", width);
        page.navigate(exercise);
        check(session, "exercise-work", width);
        List<Locator> processes = page.locator(".exercise-process").all();
        for (int i = 0; i < processes.size(); i++) {
            if (i != 1) {
                processes.get(i).locator("input[type=radio]").nth(i % 3).check();
            }
            processes.get(i).locator("input[type=checkbox]").first().check();
        }
        button(page, "Compare with the answer").click();
        assertThat(page.locator(".errors")).isFocused();
        check(session, "exercise-error", width);
        processes.get(1).locator("input[type=radio]").nth(1).check();
        button(page, "Compare with the answer").click();
        page.waitForURL(url -> url.contains("/tries/"));
        assertThat(page.locator(".verdict")).containsText("of 8 statuses");
        check(session, "exercise-feedback", width);
        page.locator(".exercise-judged a[href*='replay?process=']").first().click();
        assertThat(page.locator("#replay-title")).isVisible();
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
