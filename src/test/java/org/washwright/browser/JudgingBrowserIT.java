package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.generate.SmallEdition;

/** Two small editions: what differs between them, what past answers would become, and whether that was meant. */
@Tag("browser")
class JudgingBrowserIT {
    private static final double LONG = 300_000;
    private static final String CASES = """
            cases:
              - id: rusty
                title: What rusts
                task: {title: t, part: {mass: 100 g}, materials: [{substrate: substrate-a}]}
                expect: {fires: [S-01]}
              - id: dull
                title: What does not rust
                task: {title: t, part: {mass: 100 g}, materials: [{substrate: substrate-b}]}
                expect: {doesNotFire: [S-02]}
              - id: heavy
                title: What is heavy
                task: {title: t, part: {mass: 3 kg}, materials: [{substrate: substrate-a}]}
                expect: {fires: [S-02]}
            """;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void editions_are_compared_and_changed_answers_judged_by_keyboard(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            Page page = session.page();
            String before = uploaded(page, texts(width));
            Map<String, String> edited = texts(width);
            edited.put(
                    "rules/all.drl",
                    edited.get("rules/all.drl")
                            .replace("rusts == true", "rusts == false")
                            .replace("Too heavy.", "Too heavy to lift."));
            edited.put("assumptions.yaml", edited.get("assumptions.yaml").replace("8 h", "16 h"));
            String after = uploaded(page, edited);
            String with = "?with=" + before.replaceFirst(".*/", "");
            page.navigate(after + "/compare" + with);
            assertThat(page.locator("h1")).containsText("What differs from small, draft");
            assertThat(page.locator(".verdict-sentence")).containsText("Answers may change: 1 rule changed");
            assertThat(page.getByText("true of the material").first()).isVisible();
            check(session, "judging-compare-" + width);
            page.navigate(after + "/impact" + with);
            check(session, "judging-not-tried-" + width);
            button(page, "Answer them by both").focus();
            page.keyboard().press("Enter");
            assertThat(page.getByText("Was this meant?")).isVisible(soon());
            assertThat(page.locator(".tried").first()).isVisible();
            check(session, "judging-impact-" + width);
            button(page, "This was not meant").first().click();
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("Nothing is written here.");
            check(session, "judging-refused-" + width);
            page.locator("textarea[aria-invalid]").fill("Nothing that does not rust needs a warning.");
            button(page, "This was not meant").first().focus();
            page.keyboard().press("Enter");
            assertThat(page.getByText("was not meant;")).isVisible();
            check(session, "judging-judged-" + width);
            session.assertQuiet();
        }
    }

    /** Editions of their own for each width, so that nothing is judged before. */
    private static Map<String, String> texts(int width) {
        Map<String, String> texts = new TreeMap<>(SmallEdition.withFewRules());
        texts.put("cases/c.yaml", CASES);
        texts.merge("rules/all.drl", "// for " + width + "\n", String::concat);
        return texts;
    }

    private static String uploaded(Page page, Map<String, String> texts) {
        page.navigate("/rulebooks");
        page.getByLabel("Bundle of an edition")
                .setInputFiles(new FilePayload(
                        "bundle.zip",
                        "application/zip",
                        SmallEdition.files(texts).toZip()));
        button(page, "Bring it in").click();
        page.waitForURL(Pattern.compile(".*/rulebooks/[0-9a-f-]{36}"));
        return page.url();
    }

    private static com.microsoft.playwright.Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static LocatorAssertions.IsVisibleOptions soon() {
        return new LocatorAssertions.IsVisibleOptions().setTimeout(LONG);
    }

    private static void check(BrowserSession session, String name) {
        session.screenshot(name);
        session.assertAccessible();
        session.assertNoSidewaysScrolling();
    }
}
