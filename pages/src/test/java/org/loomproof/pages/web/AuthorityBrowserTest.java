package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.pages.door.Authority;
import org.loomproof.pages.web.Browsers.Screen;

/** The shop's own authority, as a device meets it: refused until it is trusted, and then without any warning turned off. */
class AuthorityBrowserTest extends InBrowser {

    @TempDir
    private Path folder;

    private final TestShop.MovedClock clock = new TestShop.MovedClock();

    @Test
    void aDeviceThatTrustsTheAuthorityMeetsNoWarningAndAnotherOneDoes() throws Exception {
        Authority.Issued issued = Authority.forServer(folder.resolve("tls"), List.of("localhost"), Clock.systemUTC());
        Listen listen = new Listen(
                "127.0.0.1",
                0,
                Optional.of(new Listen.Certificate(issued.file(), Authority.PASSWORD, Optional.of(issued.authority()))),
                Set.of("localhost"));
        try (TestShop shop = TestShop.open(folder);
                Server server = Server.start(shop.shop, listen, TestShop.QUICK)) {
            String address = "https://localhost:" + server.port();
            try (BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
                Page page = somebody.newPage();
                assertThatThrownBy(() -> page.navigate(address + "/sign-in"))
                        .isInstanceOf(PlaywrightException.class)
                        .hasMessageContaining("ERR_CERT_AUTHORITY_INVALID");
            }
            try (Browsers trusting = Browsers.thatTrust(issued.authority(), folder.resolve("home"))) {
                for (Screen screen : Screen.of("authority")) {
                    try (BrowserContext somebody = trusting.somebody(screen)) {
                        Page page = somebody.newPage();
                        page.navigate(address + "/authority");
                        assertThat(page.locator("code")).hasText(Server.fingerprint(issued.authority()));
                        Browsers.look(page, screen, "authority");
                        page.navigate(address);
                        page.getByLabel("Name to sign in").fill("ada");
                        page.getByLabel("Password").fill(TestShop.PASSWORD);
                        page.locator("main button").click();
                        assertThat(page.locator("h1")).hasText("Jobs");
                        assertThat(somebody.cookies()).allMatch(cookie -> cookie.secure && cookie.httpOnly);
                    }
                }
            }
        }
    }

    @Test
    void theAuthorityStaysWhileNamesStayAndTheServersCertificateIsMadeAnewBeforeItEnds() {
        Path kept = folder.resolve("tls");
        X509Certificate first = issued(kept, "shop.example").authority();
        byte[] server = bytes(kept.resolve("server.p12"));
        assertThat(issued(kept, "shop.example").authority()).isEqualTo(first);
        assertThat(bytes(kept.resolve("server.p12"))).as("kept as it is").isEqualTo(server);
        clock.pass(Duration.ofDays(380));
        assertThat(issued(kept, "shop.example").authority()).isEqualTo(first);
        assertThat(bytes(kept.resolve("server.p12"))).as("made anew").isNotEqualTo(server);
        assertThat(issued(kept, "other.example").authority())
                .as("it is good for its names and no others")
                .isNotEqualTo(first);
    }

    @Test
    void nobodyElseCanReadTheKeysAndTheAuthorityIsHeldToItsNames() throws Exception {
        Path kept = folder.resolve("tls");
        X509Certificate authority = issued(kept, "shop.example", "192.0.2.7").authority();
        for (String name : List.of("authority.p12", "server.p12")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(kept.resolve(name))))
                    .isEqualTo("rw-------");
        }
        assertThat(authority.getBasicConstraints())
                .as("issues no further authority")
                .isZero();
        assertThat(authority.getCriticalExtensionOIDs()).contains("2.5.29.30");
    }

    private Authority.Issued issued(Path kept, String... names) {
        return Authority.forServer(kept, List.of(names), clock);
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
