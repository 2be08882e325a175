package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.rulebook.Bundle;

/** A consultant edits a draft by forms, by keyboard alone. */
@Tag("browser")
class EditingBrowserIT {

    private static final String TABLE = "tables/further-soils.csv";

    @Test
    void a_row_a_branch_a_term_and_a_weight_are_written_by_keyboard() {
        String draft;
        try (BrowserSession session = BrowserSession.open(1280, 900).signIn("consultant")) {
            Page page = session.page();
            draft = draft(page);
            row(session, draft);
            branch(session, draft);
            term(session, draft);
            weight(session, draft);
            session.assertQuiet();
        }
        try (BrowserSession session = BrowserSession.open(390, 900).signIn("consultant")) {
            for (String path : new String[] {
                "/table?file=" + TABLE,
                "/tree?file=trees/what-is-this-soil.yaml&at=look",
                "/entries?file=catalogue/soils.yaml&entry=/terms/0",
                "/entries?file=grading.yaml&entry=/areas/0"
            }) {
                session.page().navigate(draft + path);
                check(session, "editing" + path.substring(0, 5).replace('/', '-') + "-390");
            }
            session.assertQuiet();
        }
    }

    private static void check(BrowserSession session, String name) {
        session.screenshot(name);
        session.assertNoSidewaysScrolling();
        session.assertAccessible();
    }

    private static String draft(Page page) {
        page.navigate("/rulebooks");
        byte[] zip =
                Bundle.starter().with("rules/extra.drl", "// edited by forms\n").zip();
        page.getByLabel("Bundle of an edition").setInputFiles(new FilePayload("bundle.zip", "application/zip", zip));
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Bring it in"))
                .click();
        page.waitForURL("**/rulebooks/*-*");
        return page.url();
    }

    private static void row(BrowserSession session, String draft) {
        Page page = session.page();
        page.navigate(draft + "/table?file=" + TABLE);
        Locator first = page.locator("[name='r.0.0']");
        first.focus();
        page.keyboard().press("Control+Enter");
        assertThat(page.locator("[name='r.1.1']")).isFocused();
        page.keyboard().type("limescal");
        assertThat(page.locator("#w-1-1")).containsText("is no soil");
        page.keyboard().type("e");
        page.keyboard().press("Tab");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("ArrowRight");
        page.keyboard().type("acid");
        page.keyboard().press("Tab");
        page.keyboard().type("cleanliness");
        page.keyboard().press("Tab");
        page.keyboard().type("2");
        page.keyboard().press("Tab");
        page.keyboard().type("Acid leaves no white film.");
        assertThat(page.locator("[data-state]")).hasText("saved");
        assertThat(page.locator("#row-says")).containsText("Acid leaves no white film.");
        check(session, "editing-table-1280");
        page.reload();
        assertThat(page.locator("[name='r.1.1']")).hasValue("limescale");
        assertThat(page.locator("[name='r.1.7']")).hasValue("Acid leaves no white film.");
        page.locator("[name='r.1.1']").focus();
        page.keyboard().type("soot");
        page.keyboard().press("Escape");
        assertThat(page.locator("[name='r.1.1']")).hasValue("limescale");
        page.keyboard().press("Escape");
        assertThat(page.locator("#after-rows")).isFocused();
    }

    private static void branch(BrowserSession session, String draft) {
        Page page = session.page();
        page.navigate(draft + "/tree?file=trees/what-is-this-soil.yaml&at=look");
        Locator form = page.locator("#q-look");
        form.getByLabel("leads to").last().focus();
        page.keyboard().type("a new question");
        form.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Save this question"))
                .last()
                .press("Enter");
        assertThat(page.locator("#q-question-10")).isVisible();
        Locator made = page.locator("#q-question-10");
        made.getByLabel("Question", new Locator.GetByLabelOptions().setExact(true))
                .fill("Does it smell?");
        made.getByLabel("Question", new Locator.GetByLabelOptions().setExact(true))
                .press("Enter");
        check(session, "editing-tree-1280");
        Locator play = page.locator("#play");
        play.getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("Can't be seen"))
                .press("Enter");
        assertThat(play).containsText("Does it smell?");
        play.getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("Nobody can say"))
                .press("Enter");
        assertThat(play).containsText("It proposes unknown");
    }

    private static void term(BrowserSession session, String draft) {
        Page page = session.page();
        page.navigate(draft + "/entries?file=catalogue/soils.yaml&entry=new");
        page.getByLabel("Id", new Page.GetByLabelOptions().setExact(true)).fill("Sea salt");
        page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill("sea salt");
        page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).press("Enter");
        assertThat(page.locator("#f-id-wrong")).containsText("is not an id");
        page.getByLabel("Id", new Page.GetByLabelOptions().setExact(true)).fill("sea-salt");
        page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).press("Enter");
        assertThat(page.locator("#entry")).hasText("sea salt");
        check(session, "editing-term-1280");
    }

    private static void weight(BrowserSession session, String draft) {
        Page page = session.page();
        page.navigate(draft + "/entries?file=grading.yaml&entry=/areas/0");
        Locator weight = page.getByLabel("Weight", new Page.GetByLabelOptions().setExact(true));
        assertTrue(!weight.inputValue().equals("42"));
        weight.fill("42");
        weight.press("Enter");
        page.waitForURL("**#entry");
        assertThat(page.getByLabel("Weight", new Page.GetByLabelOptions().setExact(true)))
                .hasValue("42");
        check(session, "editing-weight-1280");
    }
}
