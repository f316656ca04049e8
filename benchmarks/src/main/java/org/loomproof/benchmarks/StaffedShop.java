package org.loomproof.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.loomproof.book.card.Author;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Role;
import org.loomproof.pages.web.Listen;
import org.loomproof.pages.web.Server;

/** A job book behind its server, in a folder of its own, and people who are signed in and ask in turn. */
final class StaffedShop implements AutoCloseable {

    private static final String PASSWORD = "a kettle for everybody";
    private static final Stretching QUICK = new Stretching(64, 1, 1);

    private final AtomicInteger turn = new AtomicInteger();
    private final List<HttpClient> people = new ArrayList<>();
    private final Path folder;
    private final Shop shop;
    private final Server server;

    /** A shop where so many people work. */
    StaffedShop(int staff) throws IOException, InterruptedException {
        folder = Files.createTempDirectory("job-book");
        shop = new Shop(new BookPlace.InFile(folder.resolve("jobs.book")), Clock.systemUTC());
        shop.make(Passphrase.of("four brass kettles sing"), QUICK, "Person 0", "person0", PASSWORD);
        People all = new People(book().cards());
        for (int i = 1; i < staff; i++) {
            all.add(Author.CONSOLE, "Person " + i, "person" + i, PASSWORD, Role.TECHNICIAN);
        }
        server = Server.start(shop, Listen.onLoopback(0), QUICK);
        for (int i = 0; i < staff; i++) {
            people.add(signedIn("person" + i));
        }
    }

    /** Its book. */
    OpenBook book() {
        return shop.book().orElseThrow();
    }

    /** How often somebody asked. */
    int turn() {
        return turn.get();
    }

    /** What the next of them is answered, over HTTP as a browser is. */
    String asked(String path) throws IOException, InterruptedException {
        HttpClient http = people.get(turn.getAndIncrement() % people.size());
        HttpResponse<String> answer = http.send(request(path).build(), BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException("answered " + answer.statusCode());
        }
        return answer.body();
    }

    private HttpClient signedIn(String name) throws IOException, InterruptedException {
        HttpClient http =
                HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        String page =
                http.send(request("/sign-in").build(), BodyHandlers.ofString()).body();
        int at = page.indexOf("name=\"mark\" value=\"") + 19;
        String body = Map.of("mark", page.substring(at, page.indexOf('"', at)), "sign-in", name, "password", PASSWORD)
                .entrySet()
                .stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .reduce((one, other) -> one + "&" + other)
                .orElseThrow();
        HttpResponse<String> answer = http.send(
                request("/sign-in")
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
        if (answer.statusCode() != 303) {
            throw new IllegalStateException("not signed in: " + answer.statusCode());
        }
        return http;
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
    }

    /** Ends the server and takes the book away. */
    @Override
    public void close() {
        people.forEach(HttpClient::close);
        server.close();
        shop.close();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
            Files.delete(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
