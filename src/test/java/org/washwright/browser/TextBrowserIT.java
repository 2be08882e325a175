package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.RequestOptions;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.generate.SmallEdition;

/** A rule is written in a browser: by keyboard alone, with proposals, saved as one goes, and two authors at once. */
@Tag("browser")
class TextBrowserIT {
    private static final String FILE = "rules/all.drl";

    private static String draft(Page page) {
        byte[] zip = SmallEdition.files(SmallEdition.withFewRules()).toZip();
        APIResponse made = page.request()
                .post(
                        "/api/editions",
                        own().setHeader("Content-Type", "application/zip").setData(zip));
        assertEquals(201, made.status(), made.text());
        return field("id", made.text());
    }

    private static RequestOptions own() {
        return RequestOptions.create().setHeader("X-Washwright", "1");
    }

    private static String field(String name, String json) {
        Matcher matcher = Pattern.compile("\"" + name + "\":\"([^\"]+)\"").matcher(json);
        if (!matcher.find()) {
            throw new AssertionError(name + " is not in " + json);
        }
        return matcher.group(1);
    }

    private static String stored(Page page, String id) {
        return page.request().get("/api/editions/" + id + "/files/" + FILE).text();
    }

    private static Locator saved(Page page) {
        return page.locator("#saved-word");
    }

    /** Goes on in the next line, behind the brackets and quotes that the editor closes by itself. */
    private static void line(Page page, String typed) {
        page.keyboard().press("End");
        page.keyboard().type("\n" + typed);
    }

    private static void take(Page page, String typed, String proposal) {
        page.keyboard().type(typed);
        assertThat(page.locator(".cm-tooltip-autocomplete [aria-selected]")).containsText(proposal);
        // The editor takes no proposal in the first moment it stands there, lest one be taken unseen.
        page.waitForTimeout(120);
        page.keyboard().press("Enter");
    }

    @Test
    void a_rule_is_written_by_keyboard_alone_with_proposals_mended_and_saved() {
        try (BrowserSession session = BrowserSession.open().signIn("consultant")) {
            Page page = session.page();
            String id = draft(page);
            page.navigate("/rulebooks/" + id + "/text?file=" + FILE);
            Locator editor = page.locator(".cm-content");
            assertThat(page.locator("#verdict")).hasText("Nothing is wrong in this file.");
            assertThat(page.locator("#said-rules")).containsText("warn of A");
            session.assertAccessible();
            session.screenshot("text-1280");
            page.locator("button", new Page.LocatorOptions().setHasText("Save")).focus();
            page.keyboard().press("Tab");
            assertThat(editor).isFocused();
            page.keyboard().press("Control+End");
            page.keyboard().type("\nrule \"new");
            line(page, "@id(\"S-09");
            line(page, "");
            take(page, "@b", "@basis");
            take(page, "co", "common practice");
            line(page, "when\n");
            take(page, "Soi", "Soil");
            assertThat(page.locator(".cm-tooltip-autocomplete")).containsText("polarity");
            session.screenshot("text-proposals-1280");
            take(page, "ki", "kind");
            page.keyboard().type(" == ");
            take(page, "soil-b", "soil-b");
            page.keyboard().type(")\nthen\n");
            take(page, "cau", "caution");
            page.keyboard().type("\"hazard-z\", \"It is B.\");\nend\n");
            Locator problem = page.locator("#problems .error");
            assertThat(problem).containsText("hazard-z");
            assertThat(page.locator("#verdict")).containsText("1 error in this file");
            assertThat(page.locator(".cm-lint-marker-error")).isVisible();
            session.screenshot("text-problem-1280");
            page.keyboard().press("F8");
            assertThat(page.locator(".cm-tooltip .cm-diagnostic")).containsText("hazard-z");
            page.keyboard().press("Control+f");
            page.keyboard().type("hazard-z");
            page.keyboard().press("Enter");
            page.keyboard().press("Escape");
            page.keyboard().type("hazard-b");
            assertThat(page.locator("#verdict")).hasText("Nothing is wrong in this file.");
            assertThat(page.locator("#said-rules .here")).containsText("soil is B");
            assertThat(saved(page)).hasText("saved");
            assertTrue(stored(page, id).contains("caution(\"hazard-b\", \"It is B.\");"), stored(page, id));
            page.keyboard().press("F1");
            assertThat(page.locator("#editor-help")).containsText("Mind B.");
            page.keyboard().press("Escape");
            page.keyboard().press("Tab");
            assertThat(editor).not().isFocused();
            session.assertAccessible();
            session.screenshot("text-written-1280");
            session.assertQuiet();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void of_two_authors_of_one_file_neither_loses_a_line(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("consultant")) {
            Page page = session.page();
            String id = draft(page);
            page.navigate("/rulebooks/" + id + "/text?file=" + FILE);
            assertThat(page.locator("#verdict")).hasText("Nothing is wrong in this file.");
            session.assertAccessible();
            session.assertNoSidewaysScrolling();
            session.screenshot("text-read-" + width);
            session.assertQuiet();
            String before = stored(page, id);
            String theirs = before.replace("It rusts.", "It rusts soon.");
            APIResponse other = page.request()
                    .put(
                            "/api/editions/" + id + "/files/" + FILE,
                            own().setHeader("Content-Type", "text/plain")
                                    .setHeader(
                                            "If-Match",
                                            page.request()
                                                    .get("/api/editions/" + id + "/files/" + FILE)
                                                    .headers()
                                                    .get("etag"))
                                    .setData(theirs.getBytes(StandardCharsets.UTF_8)));
            assertEquals(200, other.status(), other.text());
            page.locator(".cm-content").focus();
            page.keyboard().press("Control+End");
            page.keyboard().type("// mine\n");
            Locator conflict = page.locator("#conflict");
            assertThat(conflict).containsText("Somebody else changed this file");
            assertThat(conflict).containsText("It rusts soon.");
            assertThat(conflict).containsText("// mine");
            assertThat(saved(page)).hasText("not saved: somebody else changed the file");
            session.assertAccessible();
            session.assertNoSidewaysScrolling();
            session.screenshot("text-conflict-" + width);
            // Also after a reload both are there: the browser kept what the server has not taken.
            page.reload();
            assertThat(page.locator("#leftover")).containsText("was not saved");
            page.getByText("Go on with it").click();
            assertThat(conflict).containsText("Somebody else changed this file");
            page.getByText("Go on from both").click();
            assertThat(saved(page)).hasText("saved");
            assertEquals(theirs + "// mine\n", stored(page, id));
        }
    }
}
