package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The first hour of a consultant as docs/consultant.md tells it, with the texts that stand there. */
@Tag("browser")
class FirstHourIT {
    private static final double LONG = 240_000;
    private static final Path TOLD = Path.of("docs/consultant.md");

    private String draft = "";

    @Test
    void an_idea_becomes_a_released_rule_that_changes_an_answer() throws IOException {
        List<String> blocks = blocks();
        String before = assess();
        keepAsCase();
        writeTheRule(blocks.get(0));
        aCaseFails();
        mend(blocks.get(1).strip());
        addARow();
        addABranch();
        lookAtPastAnswers();
        askForReview();
        release();
        String after = assess();
        assertNotEquals(before, after, "the answer changed");
        assertTrue(before.contains("ultrasonics"), before);
        assertTrue(!after.contains("ultrasonics"), after);
    }

    /** Other tests of this service go on with the edition that the program came with. */
    @AfterEach
    void takeItOutOfUse() {
        if (draft.isEmpty()) {
            return;
        }
        try (BrowserSession session = open("reviewer")) {
            Page page = session.page();
            page.onDialog(dialog -> dialog.accept());
            page.navigate(draft + "/review");
            if (page.getByLabel("What is wrong with it").count() > 0) {
                page.getByLabel("What is wrong with it").fill("The end of a test.");
                button(page, "Withdraw");
                assertThat(page.locator(".verdict-sentence")).containsText("Withdrawn on");
                session.screenshot("first-hour-9-withdrawn");
            }
        }
    }

    private static List<String> blocks() throws IOException {
        List<String> blocks = new ArrayList<>();
        String[] parts = Files.readString(TOLD).split("\n```\n");
        for (int i = 1; i < parts.length; i += 2) {
            blocks.add(parts[i]);
        }
        assertEquals(2, blocks.size(), "the rule and its mended line");
        return blocks;
    }

    private String assess() {
        try (BrowserSession session = open("engineer")) {
            Page page = session.page();
            page.navigate("/tasks");
            if (page.getByRole(AriaRole.LINK, named("Copper heat sinks with flux before electronics assembly"))
                            .count()
                    == 0) {
                page.getByLabel("Task, or a table of tasks")
                        .setInputFiles(Path.of("demo-data/tasks/copper-sinks.yaml"));
                button(page, "Bring it in");
                page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            } else {
                heatSinks(page);
            }
            button(page, "Assess");
            page.waitForURL(url -> url.contains("/assessments/"));
            session.screenshot("first-hour-1-answer" + (draft.isEmpty() ? "" : "-again"));
            session.assertQuiet();
            return page.locator(".verdict-sentence").first().innerText();
        }
    }

    private static void heatSinks(Page page) {
        page.getByRole(AriaRole.LINK, named("Copper heat sinks with flux before electronics assembly"))
                .first()
                .click();
        page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
    }

    private void keepAsCase() {
        try (BrowserSession session = open("consultant")) {
            Page page = session.page();
            page.navigate("/tasks");
            heatSinks(page);
            page.locator("a[href*='/assessments/']").first().click();
            page.waitForURL(url -> url.contains("/assessments/"));
            button(page, "Keep as a case");
            page.waitForURL(url -> url.contains("/text?file=cases"));
            draft = page.url().replaceAll("^https?://[^/]+|/text.*$", "");
            assertThat(page.locator(".verdict-sentence")).containsText("Nothing is wrong");
            session.screenshot("first-hour-2-case");
            session.assertQuiet();
        }
    }

    private void writeTheRule(String rule) {
        try (BrowserSession session = open("consultant")) {
            Page page = session.page();
            page.navigate(draft + "/files");
            page.getByLabel("Its name").fill("thin-fins");
            session.screenshot("first-hour-3-files");
            session.assertAccessible();
            button(page, "Begin it");
            page.waitForURL(url -> url.contains("/text?file=rules"));
            write(page, rule);
            assertThat(page.locator("#problems")).containsText("finns", patient());
            session.screenshot("first-hour-4-problem");
            session.assertAccessible();
            write(page, rule.replace("finns", "fins"));
            assertThat(page.locator("#problems-part")).isHidden(hidden());
            assertThat(page.locator("#said-rules")).containsText("until their joints crack", patient());
            saved(page);
            session.screenshot("first-hour-5-rule");
            session.assertQuiet();
        }
    }

    /** Puts a text in place of what stands in the editor, by keyboard. */
    private static void write(Page page, String text) {
        page.locator("#editor .cm-content").click();
        page.keyboard().press("Control+A");
        page.keyboard().press("Backspace");
        page.keyboard().insertText(text);
    }

    private static void saved(Page page) {
        assertThat(page.locator("#saved-word"))
                .hasText("saved", new LocatorAssertions.HasTextOptions().setTimeout(LONG));
    }

    private void aCaseFails() {
        try (BrowserSession session = open("consultant")) {
            runCases(session);
            assertThat(session.page().locator(".check-list")).containsText("Copper heat sinks with flux");
            assertThat(session.page().locator(".verdict-sentence")).containsText("fail");
            session.screenshot("first-hour-6-case-fails");
        }
    }

    private void runCases(BrowserSession session) {
        Page page = session.page();
        page.navigate(draft + "/review");
        page.getByRole(AriaRole.LINK, named("Reference cases")).click();
        page.waitForURL(url -> url.endsWith("/cases"));
        page.getByRole(AriaRole.MAIN)
                .locator("form[action$='/cases'] button")
                .first()
                .click();
        page.waitForLoadState();
    }

    private void mend(String line) {
        try (BrowserSession session = open("consultant")) {
            Page page = session.page();
            page.navigate(draft + "/text?file=rules/thin-fins.drl");
            String text = page.locator("#text").inputValue();
            write(page, text.replaceAll("ruleOut\\(.*", java.util.regex.Matcher.quoteReplacement(line)));
            assertThat(page.locator("#said-rules")).containsText("take from the process", patient());
            saved(page);
            runCases(session);
            assertThat(page.locator(".verdict-sentence")).containsText("hold");
            session.screenshot("first-hour-6-cases-hold");
        }
    }

    private void addARow() {
        try (BrowserSession session = open("consultant")) {
            Page page = session.page();
            page.navigate(draft + "/files");
            page.getByRole(AriaRole.LINK, named("against-technique.csv"))
                    .first()
                    .click();
            page.waitForURL(url -> url.contains("/table?file="));
            button(page, "Add a row");
            Locator row = page.locator("tbody tr").last();
            cell(row, "rule").fill("AT-12");
            cell(row, "feature: kind of feature").fill("fins");
            cell(row, "speaks of").fill("wiping");
            cell(row, "criterion").fill("reach");
            cell(row, "points").fill("3");
            cell(row, "because").fill("No cloth gets between the {$feature.kind}.");
            page.keyboard().press("Tab");
            assertThat(page.locator("[data-count]")).containsText("8 rows, each a sound rule", patient());
            assertThat(page.locator(".save-state"))
                    .hasText("saved", new LocatorAssertions.HasTextOptions().setTimeout(LONG));
            session.screenshot("first-hour-7-row");
            session.assertQuiet();
        }
    }

    private static Locator cell(Locator row, String column) {
        return row.locator("td[data-label='" + column + "'] input:not([type=hidden]), td[data-label='" + column
                        + "'] textarea")
                .first();
    }

    private void addABranch() {
        try (BrowserSession session = open("consultant")) {
            Page page = session.page();
            String tree = draft + "/tree?file=trees/how-clean-is-enough.yaml";
            page.navigate(tree + "&at=coat#q-coat");
            Locator form = page.locator("#q-coat form");
            form.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Add an answer"))
                    .click();
            page.waitForLoadState();
            form = page.locator("#q-coat form");
            Locator answer = form.locator(".answer-rows > li").last();
            answer.locator("input[name^='say.']").fill("Soft-soldered");
            answer.locator("input[name^='propose.']").fill("10..50 mg/m2");
            form.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Save this question"))
                    .last()
                    .click();
            page.waitForLoadState();
            page.navigate(tree);
            page.getByRole(AriaRole.LINK, named("It is coated, plated or glued"))
                    .last()
                    .click();
            page.getByRole(AriaRole.LINK, named("Soft-soldered")).last().click();
            assertThat(page.locator("#play")).containsText("It proposes");
            session.screenshot("first-hour-7-branch");
            session.assertQuiet();
        }
    }

    private void lookAtPastAnswers() {
        try (BrowserSession session = open("consultant")) {
            Page page = session.page();
            page.navigate(draft + "/compare");
            assertThat(page.locator("main")).containsText("Thin fins stand no sound");
            session.screenshot("first-hour-8-compare");
            page.navigate(draft + "/impact");
            button(page, "Answer them by both");
            assertThat(page.getByText("Was this meant?")).isVisible(visible());
            session.screenshot("first-hour-8-impact");
            for (Locator meant = page.locator("details[open] button[value=meant]");
                    meant.count() > 0;
                    meant = page.locator("details[open] button[value=meant]")) {
                meant.first().click();
                page.waitForLoadState();
            }
            session.screenshot("first-hour-8-judged");
        }
    }

    private void askForReview() {
        try (BrowserSession session = open("consultant")) {
            Page page = session.page();
            page.navigate(draft + "/review");
            page.getByLabel("What changed and why").fill("Thin fins stand no sound; a trial cracked joints.");
            session.screenshot("first-hour-8-gate");
            button(page, "Ask for a review");
            assertThat(page.locator("main")).containsText("It waits for a reviewer");
            session.assertAccessible();
        }
    }

    private void release() {
        try (BrowserSession session = open("reviewer")) {
            Page page = session.page();
            page.navigate(draft + "/review");
            page.getByLabel("What was checked").first().fill("Read the rule, the row and the sample.");
            if (page.locator("#despite").count() > 0) {
                page.locator("#despite").fill("The rules were not examined; the change is small.");
            }
            page.locator("#sure").check();
            session.screenshot("first-hour-8-release");
            session.assertAccessible();
            button(page, "Release");
            assertThat(page.locator(".verdict-sentence"))
                    .containsText("it never changes", new LocatorAssertions.ContainsTextOptions().setTimeout(LONG));
            session.screenshot("first-hour-8-released");
        }
    }

    private static BrowserSession open(String who) {
        BrowserSession session = BrowserSession.open().signIn(who);
        session.page().setDefaultNavigationTimeout(LONG);
        session.page().setDefaultTimeout(LONG);
        return session;
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static void button(Page page, String name) {
        page.getByRole(AriaRole.MAIN)
                .getByRole(
                        AriaRole.BUTTON,
                        new Locator.GetByRoleOptions().setName(name).setExact(true))
                .first()
                .click();
    }

    private static LocatorAssertions.ContainsTextOptions patient() {
        return new LocatorAssertions.ContainsTextOptions().setTimeout(LONG);
    }

    private static LocatorAssertions.IsHiddenOptions hidden() {
        return new LocatorAssertions.IsHiddenOptions().setTimeout(LONG);
    }

    private static LocatorAssertions.IsVisibleOptions visible() {
        return new LocatorAssertions.IsVisibleOptions().setTimeout(LONG);
    }
}
