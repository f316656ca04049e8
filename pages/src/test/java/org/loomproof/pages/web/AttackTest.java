package org.loomproof.pages.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.logging.LogRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.CardLine;
import org.loomproof.book.card.Listing;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.door.Attempts;
import org.loomproof.pages.door.DoorLog;
import org.loomproof.pages.door.Requests;
import org.loomproof.pages.door.Sessions;

/** What somebody who means harm would try, by hand and not by a browser. */
class AttackTest {

    private static final String SCRIPT = "<script>document.title='owned'</script>";

    @TempDir
    private Path folder;

    private Optional<TestShop> opened = Optional.empty();

    @BeforeEach
    void open() {
        opened = Optional.of(TestShop.open(folder));
    }

    @AfterEach
    void close() {
        opened.ifPresent(TestShop::close);
    }

    private TestShop shop() {
        return opened.orElseThrow();
    }

    private Client signedIn() {
        Client client = new Client(shop());
        assertThat(client.signIn("ada", TestShop.PASSWORD).statusCode()).isEqualTo(303);
        return client;
    }

    private static Map<String, String> newJob(String mark, String name) {
        return Map.of("mark", mark, "act", "take", "name", name, "plate", "QX 1", "make", name);
    }

    private List<CardLine> jobs() {
        return shop().shop.book().orElseThrow().cards().list(Listing.all(CardKind.JOB, 100));
    }

    @Test
    void signingInLeadsToAStepOrHomeAndNowhereElse() {
        String step = "/jobs/aaaaaaaaaaaaaaaaaaaaaaaaaa/bay/cab-doors";
        assertThat(new Client(shop()).get(step).headers().firstValue("Location"))
                .hasValue("/sign-in?wanted=" + URLEncoder.encode(step, StandardCharsets.UTF_8));
        for (String wanted : List.of(
                step,
                "https://elsewhere.example" + step,
                "//elsewhere.example" + step,
                "/\\elsewhere.example" + step,
                step + "?a=b",
                step + "\r\nSet-Cookie: a=b",
                "/people",
                "")) {
            Client client = new Client(shop());
            String mark = client.mark("/sign-in?wanted=" + URLEncoder.encode(wanted, StandardCharsets.UTF_8));
            HttpResponse<String> answer = client.post(
                    "/sign-in",
                    Map.of("mark", mark, "sign-in", "ada", "password", TestShop.PASSWORD, "wanted", wanted));
            assertThat(answer.headers().firstValue("Location")).as(wanted).hasValue(wanted.equals(step) ? step : "/");
        }
    }

    @Test
    void nothingIsShownToSomebodyWhoIsNotSignedIn() {
        Client stranger = new Client(shop());
        for (String path : List.of("/", "/call", "/people", "/prices", "/jobs/aaaaaaaaaaaaaaaaaaaaaaaaaa")) {
            HttpResponse<String> answer = stranger.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(303);
            assertThat(answer.headers().firstValue("Location")).hasValue("/sign-in");
        }
        assertThat(stranger.post("/call", newJob(stranger.mark("/sign-in"), "X"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(jobs()).isEmpty();
    }

    @Test
    void aForgedRequestChangesNothing() {
        Client ada = signedIn();
        String mark = ada.mark("/call");

        assertThat(ada.post("/call", newJob("", "Forged")).statusCode())
                .as("no mark")
                .isEqualTo(403);
        assertThat(ada.post("/call", newJob(Sessions.chance(), "Forged")).statusCode())
                .as("a mark of one's own")
                .isEqualTo(403);
        String bos = new Client(shop()).mark("/sign-in");
        assertThat(ada.post("/call", newJob(bos, "Forged")).statusCode())
                .as("another's mark")
                .isEqualTo(403);
        assertThat(ada.post("/call", newJob(mark, "Forged"), "Origin", "https://elsewhere.example")
                        .statusCode())
                .as("from another page")
                .isEqualTo(403);
        assertThat(ada.post("/call", newJob(mark, "Forged"), "Origin", "null").statusCode())
                .isEqualTo(403);
        assertThat(ada.post("/call", newJob(mark, "Forged"), "Sec-Fetch-Site", "cross-site")
                        .statusCode())
                .isEqualTo(403);
        assertThat(ada.post("/call", newJob(mark, "Forged"), "Sec-Fetch-Site", "same-site")
                        .statusCode())
                .isEqualTo(403);
        assertThat(jobs()).isEmpty();

        assertThat(ada.post("/call", newJob(mark, "Meant"), "Origin", shop().address())
                        .statusCode())
                .isEqualTo(303);
        assertThat(jobs()).hasSize(1);
    }

    /** By a socket, since a client of Java's own does not let the host be forged. */
    @Test
    void aHostThatIsNotOursIsTurnedAway() throws IOException {
        assertThat(firstLine("GET /sign-in HTTP/1.1\r\nHost: rebound.example\r\nConnection: close\r\n\r\n"))
                .contains(" 421 ");
        assertThat(firstLine("GET /sign-in HTTP/1.1\r\nHost: localhost:1\r\nConnection: close\r\n\r\n"))
                .contains(" 200 ");
    }

    @Test
    void noPathLeadsToAFile() throws IOException {
        for (String path : List.of(
                "/files/../../etc/passwd",
                "/files/..%2f..%2fetc%2fpasswd",
                "/files/%2e%2e/%2e%2e/etc/passwd",
                "/files/....//jobs.book",
                "/files/..\\jobs.book",
                "/files/pages.css%00.png",
                "/files//etc/passwd",
                "/files/org/loomproof/pages/Main.class")) {
            String line = firstLine("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
            assertThat(line).as(path).matches("HTTP/1.1 (400|404) .*");
        }
        assertThat(new Client(shop()).get("/files/pages.css").statusCode()).isEqualTo(200);
    }

    private String firstLine(String request) throws IOException {
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), shop().server.port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1))
                    .readLine();
        }
    }

    @Test
    void aStoredScriptIsTextAndPagesAllowNoneBesideTheirOwn() {
        Client ada = signedIn();
        ada.post("/call", newJob(ada.mark("/call"), SCRIPT));
        String job = jobs().getFirst().id().value();
        for (String path : List.of(
                "/",
                "/jobs/" + job,
                "/jobs/" + job + "/vehicle",
                "/?find=" + URLEncoder.encode("\">" + SCRIPT, StandardCharsets.UTF_8))) {
            HttpResponse<String> page = ada.get(path);
            assertThat(page.body()).as(path).doesNotContain("<script>").contains("&lt;script");
            assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                    .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'", "base-uri 'none'")
                    .doesNotContain("unsafe");
            assertThat(page.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
            assertThat(page.headers().firstValue("Cache-Control")).hasValue("no-store");
            assertThat(page.body()).doesNotContain(" onclick", " style=\"", "javascript:");
        }
    }

    @Test
    void aSessionEndsWhenItIsEndedAndByItself() {
        Client ada = signedIn();
        String stolen = ada.session();
        assertThat(asWith(stolen)).isEqualTo(200);
        ada.post("/sign-out", Map.of("mark", ada.mark("/")));
        assertThat(asWith(stolen)).as("signed out").isEqualTo(303);

        String second = signedIn().session();
        assertThat(second).isNotEqualTo(stolen);
        shop().clock.pass(Sessions.IDLE.plusSeconds(1));
        assertThat(asWith(second)).as("idle").isEqualTo(303);

        String third = signedIn().session();
        for (Duration gone = Duration.ZERO;
                gone.compareTo(Sessions.LONGEST) <= 0;
                gone = gone.plus(Sessions.IDLE.dividedBy(2))) {
            shop().clock.pass(Sessions.IDLE.dividedBy(2));
            asWith(third);
        }
        assertThat(asWith(third)).as("a day later").isEqualTo(303);
        assertThat(asWith("guessed")).isEqualTo(303);
    }

    @Test
    void aSessionIsNeverOneThatWasThereBefore() {
        Client ada = new Client(shop());
        ada.get("/sign-in");
        ada.plantSession("planted-by-somebody");
        HttpResponse<String> answer = ada.signIn("ada", TestShop.PASSWORD);

        String cookie = answer.headers().allValues("Set-Cookie").stream()
                .filter(c -> c.startsWith("session="))
                .findFirst()
                .orElse("");
        assertThat(cookie).doesNotContain("planted").contains("HttpOnly", "SameSite=Strict", "Path=/");
        assertThat(asWith("planted-by-somebody")).isEqualTo(303);
    }

    @Test
    void whoeverHasLeftIsSignedOut() {
        Client bo = new Client(shop());
        bo.signIn("bo", "a kettle for Bo!");
        Client ada = signedIn();
        String id = shop().shop
                .book()
                .orElseThrow()
                .cards()
                .list(Listing.all(CardKind.PERSON, 9).foundBy("bo"))
                .getFirst()
                .id()
                .value();
        ada.post("/people/" + id + "/active", Map.of("mark", ada.mark("/people"), "active", "no"));

        assertThat(bo.get("/").statusCode()).isEqualTo(303);
        assertThat(new Client(shop()).signIn("bo", "a kettle for Bo!").statusCode())
                .isEqualTo(422);
    }

    private int asWith(String session) {
        try (HttpClient http = HttpClient.newHttpClient()) {
            return http.send(
                            HttpRequest.newBuilder(URI.create(shop().address() + "/"))
                                    .header("Cookie", "session=" + session)
                                    .build(),
                            BodyHandlers.discarding())
                    .statusCode();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void guessingAPasswordIsSlowedAndTheRightOneWaitsToo() {
        Client guesser = new Client(shop());
        for (int guess = 0; guess < Attempts.FREE; guess++) {
            assertThat(guesser.signIn("ada", "guess number " + guess).statusCode())
                    .isEqualTo(422);
        }
        assertThat(guesser.signIn("ada", TestShop.PASSWORD).statusCode())
                .as("even the right one")
                .isEqualTo(429);
        shop().clock.pass(Duration.ofSeconds(31));
        assertThat(guesser.signIn("ada", "one more guess").statusCode()).isEqualTo(422);
        shop().clock.pass(Duration.ofSeconds(31));
        assertThat(guesser.signIn("ada", TestShop.PASSWORD).statusCode())
                .as("the wait has doubled")
                .isEqualTo(429);
        shop().clock.pass(Duration.ofSeconds(31));
        assertThat(guesser.signIn("ada", TestShop.PASSWORD).statusCode()).isEqualTo(303);
    }

    @Test
    void whoGuessesKeepsNobodyElseFromSigningIn() {
        Client guesser = new Client(shop(), "127.0.0.2");
        for (int guess = 0; guess <= Attempts.FREE; guess++) {
            guesser.signIn("ada", "guess number " + guess);
        }
        assertThat(guesser.signIn("ada", TestShop.PASSWORD).statusCode()).isEqualTo(429);
        assertThat(new Client(shop()).signIn("ada", TestShop.PASSWORD).statusCode())
                .as("from her own place")
                .isEqualTo(303);
    }

    @Test
    void aFloodOfRequestsIsTurnedAwayAndNobodyElseIs() {
        Client flood = new Client(shop(), "127.0.0.3");
        for (int request = 0; request < Requests.MOST_A_MINUTE; request++) {
            assertThat(flood.get("/files/pages.css").statusCode()).isEqualTo(200);
        }
        assertThat(flood.get("/files/pages.css").statusCode()).isEqualTo(429);
        assertThat(new Client(shop()).get("/files/pages.css").statusCode()).isEqualTo(200);
        shop().clock.pass(Duration.ofMinutes(1));
        assertThat(flood.get("/files/pages.css").statusCode()).isEqualTo(200);
    }

    @Test
    void anUploadIsWhatItsBytesSayAndOfBoundedSize() {
        Client ada = signedIn();
        ada.post("/call", newJob(ada.mark("/call"), "Somebody"));
        String path = "/jobs/" + jobs().getFirst().id().value() + "/check-in";
        Map<String, String> fields = Map.of("mark", ada.mark(path), "seen", "1", "signed-by", "Somebody");

        HttpResponse<String> disguised =
                ada.upload(path, fields, "photo.png", "<html><script>1</script>".getBytes(StandardCharsets.UTF_8));
        assertThat(disguised.statusCode()).isEqualTo(422);
        assertThat(disguised.body()).contains("no picture");
        HttpResponse<String> large = ada.upload(path, fields, "photo.png", new byte[13_000_000]);
        assertThat(large.statusCode()).isEqualTo(413);
        assertThat(shop().shop
                        .book()
                        .orElseThrow()
                        .attachments()
                        .of(jobs().getFirst().id()))
                .isEmpty();
        Client stranger = new Client(shop());
        assertThat(stranger.upload(path, Map.of("mark", stranger.mark("/sign-in")), "photo.png", new byte[9])
                        .statusCode())
                .isEqualTo(403);
    }

    /** A kept result that cannot be read is our own fault; what it holds is a customer's. */
    @Test
    void ourOwnFaultGivesANumberAndTellsNothingOfWhatItMet() {
        OpenBook book = shop().shop.book().orElseThrow();
        CardId job = book.cards()
                .addCustomerWithJob(
                        Author.CONSOLE,
                        "job.called",
                        Map.of("name", "Odile Marrow"),
                        Map.of("plate", "QX 481 LM", "run", "first"))
                .id();
        book.attachments()
                .add(job, Author.CONSOLE, "first/result.json", "{ Odile Marrow }".getBytes(StandardCharsets.UTF_8));
        try (LogLines lines = new LogLines(Server.class)) {
            HttpResponse<String> page = signedIn().get("/jobs/" + job + "/plan");
            assertThat(page.statusCode()).isEqualTo(500);
            List<LogRecord> logged = lines.list().stream()
                    .filter(line -> page.body().contains(line.getMessage().replaceFirst("fault (\\S+) .*", "$1")))
                    .toList();
            assertThat(logged).as("by which the two are found together").hasSize(1);
            LogRecord line = logged.getFirst();
            assertThat(line.getMessage()).matches("fault [0-9a-z]+ in a GET request");
            assertThat(page.body()).doesNotContain("Exception", "org.loomproof", "result.json", "Marrow");
            StringWriter whole = new StringWriter();
            line.getThrown().printStackTrace(new PrintWriter(whole));
            assertThat(whole.toString())
                    .contains("a result of our own cannot be read")
                    .doesNotContain("Marrow", "QX 481", job.value());
        }
    }

    /** OWASP ASVS 5.0, 16.3.1 and 16.3.2: each sign-in and each refusal, with when, from where and whose card; never what was typed. */
    @Test
    void whatHappensAtTheDoorIsLoggedWithoutAWordThatWasTyped() {
        String here = "127.0.0.4"; // what other tests do at doors of theirs is logged as well
        try (LogLines lines = new LogLines(DoorLog.class)) {
            Client ada = new Client(shop(), here);
            ada.signIn("ada", "a password of another place");
            ada.signIn("a password typed as name", "whatever it may be");
            ada.signIn("ada", TestShop.PASSWORD);
            ada.post("/call", newJob("forged mark", "Odile Marrow"));
            Client cy = new Client(shop(), here);
            cy.signIn("cy", "a kettle for Cy!");
            cy.get("/people");
            ada.post("/sign-out", Map.of("mark", ada.mark("/")));
            List<String> told = lines.texts().stream()
                    .filter(line -> line.contains(" from " + here + " "))
                    .toList();
            assertThat(told)
                    .extracting(line -> line.split(" ", -1)[1])
                    .containsExactly(
                            "sign-in-refused",
                            "sign-in-refused",
                            "signed-in",
                            "forged",
                            "signed-in",
                            "right-missing",
                            "signed-out");
            assertThat(told)
                    .allMatch(line ->
                            line.matches("2026-11-26T\\S+Z [a-z-]+ from 127\\.0\\.0\\.4 by ([a-z2-7]{26}|nobody)"));
            assertThat(told.get(2)).endsWith(told.get(6).substring(told.get(6).indexOf(" by ")));
            assertThat(String.join("\n", told)).doesNotContain("password", "kettle", "ada", "Marrow");
        }
    }

    @Test
    void itIsNotOpenedToTheNetworkWithoutTls() {
        Listen open = new Listen("0.0.0.0", 0, Optional.empty(), Set.of());
        assertThat(open.isLoopback()).isFalse();
        assertThatThrownBy(() -> Server.start(shop().shop, open, TestShop.QUICK))
                .hasMessageContaining("needs-tls");
        assertThat(Listen.onLoopback(0).refusal()).isEmpty();
    }
}
