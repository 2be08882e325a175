package org.washwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A whole task is described with the keyboard alone, and what that costs is estimated by the keystroke-level model: S. Card,
 * T. Moran and A. Newell, "The keystroke-level model for user performance time with interactive systems", Communications of
 * the ACM 23 (1980) 396-410: 0.28 s a key for an average typist who is no secretary, 1.35 s to make up one's mind before
 * each entry (both from memory).
 */
@Tag("browser")
class DescribeByKeyboardIT {
    private static final double KEY = 0.28;
    private static final double MIND = 1.35;
    private static final int FIVE_MINUTES = 300;
    private static final int MOST_TABS = 250;

    private Page page;
    private int keys;
    private int entries;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void a_whole_task_is_described_in_under_five_minutes_with_the_keyboard_alone(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            page = session.page();
            page.navigate("/tasks/new");
            session.screenshot("describe-empty-" + width);
            type("title", "Bearing rings by keyboard, " + width);
            unfold("part");
            type("part.rate", "1200");
            type("part.mass", "310");
            type("part.wettedArea", "120");
            find("part.shape", "ring");
            find("materials.0.substrate", "bearing");
            type("materials.0.hardness", "60..62");
            add("features", "features.0.kind");
            find("features.0.kind", "through");
            type("features.0.diameter", "40");
            type("features.0.depth", "18");
            // A word that is only a synonym or stands in the definition finds the term as well.
            find("soils.0.kind", "honing");
            type("soils.0.amount", "2..4");
            pick("soils.0.state", "f");
            find("lot.charging", "rotating");
            pick("lot.place", "i");
            find("following.operation", "assem");
            type("demand.residue", "20");
            pick("demand.waterBreakFree", "n");
            type("demand.particleCode", "A(B-E16/F-G12/H-I4/J-K00)");
            add("jurisdictions", "jurisdictions.0.law");
            pick("jurisdictions.0.law", "e");
            pick("site.waterDischarge", "y");
            page.waitForTimeout(1200);
            session.screenshot("describe-filled-" + width);
            session.assertAccessible();
            session.assertNoSidewaysScrolling();
            everyFieldHasANameAndADescription();
            tabTo("button.button[value='save']");
            press("Enter");
            page.waitForURL(url -> url.matches(".*/tasks/[0-9a-f-]{36}"));
            session.screenshot("describe-saved-" + width);
            for (String said : List.of("1200", "310", "60 to 62", "bearing steel", "honing oil", "2 to 4", "ring")) {
                assertThat(page.getByRole(AriaRole.MAIN)).containsText(said);
            }
            session.assertQuiet();
            double seconds = keys * KEY + entries * MIND;
            System.out.printf("at %d px: %d keys, %d entries, about %.0f s%n", width, keys, entries, seconds);
            assertTrue(seconds < FIVE_MINUTES, keys + " keys and " + entries + " entries take " + seconds + " s");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void a_list_of_terms_is_searched_by_arrows_letters_synonyms_and_left_by_escape(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            page = session.page();
            page.navigate("/tasks/new");
            Locator box = page.locator("[id='materials.0.substrate']");
            assertEquals("combobox", box.getAttribute("role"));
            tabTo("[id='materials.0.substrate']");
            press("ArrowDown");
            Locator list = page.getByRole(AriaRole.LISTBOX);
            assertThat(list).isVisible();
            assertThat(box).hasAttribute("aria-expanded", "true");
            int all = list.getByRole(AriaRole.OPTION).count();
            press("ArrowDown");
            press("ArrowDown");
            String active = box.getAttribute("aria-activedescendant");
            assertThat(page.locator("#" + active)).isVisible();
            session.screenshot("describe-list-" + width);
            session.assertAccessible();
            press("Escape");
            assertThat(list).isHidden();
            assertThat(box).hasValue("");
            page.keyboard().type("100Cr6");
            assertTrue(list.getByRole(AriaRole.OPTION).count() < all, "typing narrows the list");
            session.screenshot("describe-synonym-" + width);
            press("Enter");
            assertThat(box).hasValue("bearing steel");
            box.fill("nothing such");
            assertThat(list).containsText("No word of this rulebook fits");
            press("Escape");
            assertThat(box).hasValue("bearing steel");
            session.assertQuiet();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void errors_lead_to_their_fields_folds_open_on_them_and_a_draft_keeps_them(int width) {
        try (BrowserSession session = BrowserSession.open(width, 900).signIn("engineer")) {
            page = session.page();
            page.navigate("/tasks/new");
            type("title", "Wrong in places, " + width);
            find("materials.0.substrate", "carbon");
            type("materials.0.hardness", "thirty");
            unfold("part");
            page.locator("details[data-fold='part'] > .more > summary").press("Enter");
            type("part.wallThickness", "thin");
            tabTo("button.button[value='save']");
            press("Enter");
            Locator errors = page.locator(".errors");
            assertThat(errors).isFocused();
            session.screenshot("describe-errors-" + width);
            session.assertAccessible();
            session.assertNoSidewaysScrolling();
            everyFieldHasANameAndADescription();
            for (String name : List.of("materials.0.hardness", "part.wallThickness")) {
                Locator field = page.locator("[id='" + name + "']");
                assertThat(errors.locator("a[href='#" + name + "']")).isVisible();
                assertThat(field).isVisible();
                assertThat(field).hasAttribute("aria-invalid", "true");
                assertTrue(field.getAttribute("aria-describedby").contains(name + "-error"));
            }
            tabTo("button[value='draft']");
            press("Enter");
            page.waitForURL("**/tasks/drafts/**");
            assertThat(page.locator(".kept")).isFocused();
            assertThat(page.locator("[id='materials.0.hardness']")).hasValue("thirty");
            assertThat(page.locator("[id='part.wallThickness']")).hasValue("thin");
            session.screenshot("describe-draft-" + width);
            session.assertAccessible();
            page.navigate("/tasks");
            assertThat(page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Wrong in places, " + width)))
                    .isVisible();
            session.screenshot("describe-drafts-" + width);
            session.assertAccessible();
            session.assertNoSidewaysScrolling();
            session.assertQuiet();
        }
    }

    private void type(String id, String text) {
        tabTo("[id='" + id + "']");
        page.keyboard().type(text);
        keys += text.length();
        entries++;
    }

    private void find(String id, String text) {
        type(id, text);
        press("Enter");
        assertTrue(!page.locator("[id='" + id + "']").inputValue().isEmpty(), id + " has no term for " + text);
    }

    private void pick(String id, String letter) {
        tabTo("[id='" + id + "']");
        page.keyboard().type(letter);
        keys += letter.length();
        entries++;
        assertTrue(!page.locator("[id='" + id + "']").inputValue().isEmpty(), id + " has no term for " + letter);
    }

    private void unfold(String section) {
        tabTo("summary[id='" + section + "']");
        if (page.locator("details[data-fold='" + section + "']").first().getAttribute("open") == null) {
            press("Enter");
        }
    }

    private void add(String list, String first) {
        unfold(list);
        tabTo("[data-add-row='" + list + "']");
        press("Enter");
        assertThat(page.locator("[id='" + first + "']")).isFocused();
    }

    private void press(String key) {
        page.keyboard().press(key);
        keys++;
    }

    /** Goes on by Tab until the element has the focus; going back costs as many keys the other way round. */
    private void tabTo(String selector) {
        for (int i = 0; i < MOST_TABS; i++) {
            if ((Boolean) page.evaluate("s => document.activeElement.matches(s)", selector)) {
                return;
            }
            press("Tab");
        }
        throw new AssertionError(selector + " is not reached by Tab");
    }

    /** What a screen reader says of each field: what it is, what is asked, and what hangs on it. */
    private void everyFieldHasANameAndADescription() {
        Object without = page.evaluate("""
                () => Array.from(document.querySelectorAll('.task-field input[type="text"], .task-field select[id], #title'))
                  .filter(f => f.checkVisibility())
                  .filter(f => {
                    const name = f.labels && f.labels.length ? f.labels[0].textContent.trim() : '';
                    const said = (f.getAttribute('aria-describedby') || '').split(' ')
                      .map(i => document.getElementById(i)).filter(Boolean).map(e => e.textContent.trim()).join('');
                    return !name || !said;
                  }).map(f => f.id).join(' ')""");
        assertEquals("", without, "fields without a name or a description");
    }
}
