package org.loomproof.pages.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRuleOptions;
import com.deque.html.axecore.args.AxeRunOnlyOptions;
import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;

/** Debian's Chromium, without a window. */
final class Browsers implements AutoCloseable {

    /** A size of screen and its theme. */
    record Screen(String name, int width, int height, ColorScheme theme) {
        static final Screen PHONE = new Screen("phone", 360, 780, ColorScheme.LIGHT);
        static final Screen PHONE_DARK = new Screen("phone-dark", 360, 780, ColorScheme.DARK);
        static final Screen LAPTOP = new Screen("laptop", 1280, 800, ColorScheme.LIGHT);
        static final Screen LAPTOP_DARK = new Screen("laptop-dark", 1280, 800, ColorScheme.DARK);

        /** Where a page is looked at: at every size in every theme; in everyday work at one of these, the next one each turn. */
        static List<Screen> of(String page) {
            return Sample.oneOf(List.of(PHONE, LAPTOP_DARK, PHONE_DARK, LAPTOP), page);
        }
    }

    private static final Path PICTURES = Path.of("target", "pages");

    /** Pictures are for people: they are taken where all is looked at, or asked for. */
    private static final boolean TAKEN = Sample.full() || Boolean.getBoolean("loomproof.pictures");

    private final Playwright playwright;
    private final Browser browser;

    private Browsers(Path chromium, Map<String, String> environment) {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setHeadless(true)
                        .setEnv(environment)
                        .setExecutablePath(chromium)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    /** Starts the browser. */
    static Browsers start() {
        return new Browsers(installed(), System.getenv());
    }

    /** Where it is; skips the test with a line where it is not, and fails it when CI=true. */
    private static Path installed() {
        Optional<Path> chromium = Stream.of(
                        Optional.ofNullable(System.getenv("PATH")).orElse("").split(":", -1))
                .map(folder -> Path.of(folder, "chromium"))
                .filter(Files::isExecutable)
                .findFirst();
        if (chromium.isEmpty()) {
            assertThat(System.getenv("CI"))
                    .as("chromium must be there when CI=true")
                    .isNotEqualTo("true");
            Note.that("chromium is not installed: the pages left out");
        }
        Assumptions.assumeTrue(chromium.isPresent());
        return chromium.orElseThrow();
    }

    /** One whose device was told to trust an authority, as its owner would: nothing is ignored, and no other one is trusted more. */
    static Browsers thatTrust(X509Certificate authority, Path home) {
        Path chromium = installed();
        Path trusted = home.resolve(".pki").resolve("nssdb");
        try {
            Files.createDirectories(trusted);
            Path file = Files.write(home.resolve("authority.crt"), authority.getEncoded());
            certutil("-N", "-d", "sql:" + trusted, "--empty-password");
            certutil("-A", "-d", "sql:" + trusted, "-n", "shop", "-t", "C,,", "-i", file.toString());
        } catch (IOException | CertificateEncodingException e) {
            throw new IllegalStateException(e);
        }
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.put("HOME", home.toString());
        return new Browsers(chromium, environment);
    }

    /** By the tool that keeps what browsers trust on Linux. */
    private static void certutil(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of("certutil"));
        command.addAll(List.of(arguments));
        try {
            assertThat(new ProcessBuilder(command).inheritIO().start().waitFor())
                    .as("certutil")
                    .isZero();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Somebody's own browser: nothing is shared with another's. */
    BrowserContext somebody(Screen screen) {
        return somebody(screen, "en-GB");
    }

    /** Of somebody who reads another language. */
    BrowserContext somebody(Screen screen, String language) {
        return browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(screen.width(), screen.height())
                .setColorScheme(screen.theme())
                .setLocale(language));
    }

    /** Keeps a picture of the whole page, where pictures are taken. */
    static void picture(Page page, Screen screen, String name) {
        if (!TAKEN) {
            return;
        }
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve(name + "-" + screen.name() + ".png"))
                .setFullPage(true));
    }

    /** Keeps a picture of the page, and has every rule of WCAG 2.2 A and AA that axe knows hold on it. */
    static void look(Page page, Screen screen, String name) {
        look(page, screen, name, List.of());
    }

    /** The same with more of axe's rules; asked in one go, since laying out a page for axe is what takes the time. */
    private static void look(Page page, Screen screen, String name, List<String> more) {
        // Its words may be there before its styles are.
        page.waitForLoadState();
        picture(page, screen, name);
        List<Rule> violations = new AxeBuilder(page)
                .options(asked(more))
                .setLegacyMode(
                        true) // ours have no frames, and so need no second, blank page to put their results together
                .analyze()
                .getViolations();
        assertThat(violations)
                .as("axe on %s, %s", name, screen.name())
                .flatExtracting(rule -> rule.getNodes().stream()
                        .map(node -> rule.getId() + ": " + rule.getHelp() + " at " + node.getHtml())
                        .toList())
                .isEmpty();
        Object wider = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(((Number) wider).intValue())
                .as("%s scrolls sideways at %s", name, screen.name())
                .isZero();
    }

    private static AxeRunOptions asked(List<String> more) {
        AxeRunOnlyOptions only = new AxeRunOnlyOptions();
        only.setType("tag");
        only.setValues(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"));
        AxeRuleOptions on = new AxeRuleOptions();
        on.setEnabled(true);
        AxeRunOptions options = new AxeRunOptions();
        options.setRunOnly(only);
        options.setResultTypes(List.of("violations")); // of what is right it then tells one node a rule, not all
        options.setRules(more.stream().collect(Collectors.toMap(rule -> rule, rule -> on)));
        return options;
    }

    /**
     * The same of a page that is used under a dash, in gloves: every ink stands at least 7 to 1 on its ground (WCAG 2.2, 1.4.6), and
     * what is touched to do something is at least 72 px high.
     */
    static void lookInBay(Page page, Screen screen, String name) {
        look(page, screen, name, List.of("color-contrast-enhanced"));
        Object small =
                page.evaluate("[...document.querySelectorAll('main button, main .next, main select, main summary,"
                        + " main .tap label')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 72)"
                        + ".map(e => e.outerHTML.slice(0, 120))");
        assertThat((List<?>) small)
                .as("too small to touch on %s, %s", name, screen.name())
                .isEmpty();
    }

    /** False once it has crashed. */
    boolean isThere() {
        return browser.isConnected();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
