package org.washwright.browser;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.washwright.access.DemoAccounts;

/**
 * A person's browser on the packaged service: real Chromium, no screen.
 *
 * <p>The service is started once for all browser tests that run in one Java, on an empty data folder. What goes wrong inside a page
 * (an error in a script, an address that does not answer, something the content policy forbids) is collected, and
 * {@link #assertQuiet()} fails on it.
 */
public final class BrowserSession implements AutoCloseable {
    private static final double PATIENCE = 30_000;

    private final Playwright playwright;
    private final Browser browser;
    private final BrowserContext context;
    private final Page page;
    private final URI address;
    private final List<String> complaints = new ArrayList<>();

    private BrowserSession(int width, int height) {
        // Other tests run meanwhile: how soon a page answers is no matter of these tests.
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE);
        address = SharedService.address();
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Chromium.find())
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
        context = browser.newContext(new Browser.NewContextOptions()
                .setBaseURL(address.toString())
                .setViewportSize(width, height)
                .setTimezoneId("UTC")
                .setLocale("en-GB"));
        page = context.newPage();
        page.onPageError(error -> complaints.add("script: " + error));
        page.onConsoleMessage(message -> {
            // A form that comes back with errors beside its fields is an answer, not a fault.
            if (message.type().equals("error") && !message.text().contains("status of 422")) {
                complaints.add("console: " + message.text());
            }
        });
    }

    /** Opens a browser with a window of that size; 1280, 768 and 390 are the widths all pages must stand. */
    public static BrowserSession open(int width, int height) {
        return new BrowserSession(width, height);
    }

    /** Opens a wide window. */
    public static BrowserSession open() {
        return open(1280, 900);
    }

    /** The page in the window. */
    public Page page() {
        return page;
    }

    /** The address of the service. */
    public URI address() {
        return address;
    }

    /** Signs in with a demo account as a person does, and waits for the page that follows. */
    public BrowserSession signIn(String demoAccount) {
        page.navigate("/sign-in");
        page.getByLabel("Name").fill(demoAccount);
        page.getByLabel("Password").fill(DemoAccounts.PASSWORD);
        page.getByRole(AriaRole.MAIN)
                .getByRole(AriaRole.BUTTON, new com.microsoft.playwright.Locator.GetByRoleOptions().setName("Sign in"))
                .click();
        page.waitForURL(url -> !url.contains("/sign-in"));
        return this;
    }

    /** Keeps a picture of the whole page below {@code target/screenshots}. */
    public Path screenshot(String name) {
        Path file = Path.of(System.getProperty("washwright.screenshots", "target/screenshots"), name + ".png");
        page.screenshot(new Page.ScreenshotOptions().setPath(file).setFullPage(true));
        return file;
    }

    /** Fails if the page breaks a rule of accessibility that can be checked by machine. */
    public void assertAccessible() {
        // One frame can be checked in one go, and what is right need not be sent here: of a large page that is hundreds
        // of
        // megabytes, and took longer than the check.
        if (page.frames().size() != 1) {
            throw new AssertionError(page.url() + " has frames, which this check would leave out");
        }
        AxeRunOptions wrongOnly = new AxeRunOptions();
        wrongOnly.setResultTypes(List.of("violations"));
        AxeResults results =
                new AxeBuilder(page).options(wrongOnly).setLegacyMode(true).analyze();
        if (results.isErrored()) {
            throw new AssertionError(page.url() + " was not checked: " + results.getErrorMessage());
        }
        List<Rule> violations = results.getViolations();
        if (!violations.isEmpty()) {
            throw new AssertionError(page.url() + " breaks rules of accessibility:\n"
                    + violations.stream()
                            .map(rule -> rule.getId() + " (" + rule.getImpact() + "): " + rule.getHelp() + " at "
                                    + rule.getNodes().stream()
                                            .map(node -> node.getHtml())
                                            .collect(Collectors.joining(" | ")))
                            .collect(Collectors.joining("\n")));
        }
    }

    /** Fails if the page is wider than its window, so that a person would have to scroll sideways. */
    public void assertNoSidewaysScrolling() {
        Object excess = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (((Number) excess).intValue() > 0) {
            throw new AssertionError(page.url() + " is " + excess + " px wider than its window");
        }
    }

    /** Fails if anything went wrong inside the pages seen so far. */
    public void assertQuiet() {
        if (!complaints.isEmpty()) {
            throw new AssertionError("inside the pages: " + complaints);
        }
    }

    @Override
    public void close() {
        context.close();
        browser.close();
        playwright.close();
    }
}
