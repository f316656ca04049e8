package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Role;
import org.loomproof.pages.web.Listen;
import org.loomproof.pages.web.Server;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/** The job book with ten thousand jobs, asked over HTTP as browsers do. The table gives the 99th percentile of each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 10)
@Fork(1)
public class JobBookTime {

    private static final int JOBS = 10_000;
    private static final int AT_ONCE = 20;
    private static final String PASSWORD = "a kettle for everybody";
    private static final Stretching QUICK = new Stretching(64, 1, 1);
    private static final List<String> MAKES = List.of("Fennick", "Orrin", "Tarl", "Vessel");

    private final AtomicInteger turn = new AtomicInteger();
    private final List<HttpClient> people = new ArrayList<>();
    private @Nullable Path folder;
    private @Nullable Shop shop;
    private @Nullable Server server;
    private CardId job = CardId.fresh();

    /** Fills a book and signs everybody in. */
    @Setup
    public void fill() throws IOException, InterruptedException {
        folder = Files.createTempDirectory("job-book");
        shop = new Shop(new BookPlace.InFile(folder.resolve("jobs.book")), Clock.systemUTC());
        shop.make(Passphrase.of("four brass kettles sing"), QUICK, "Person 0", "person0", PASSWORD);
        OpenBook book = shop.book().orElseThrow();
        People all = new People(book.cards());
        for (int i = 1; i < AT_ONCE; i++) {
            all.add(Author.CONSOLE, "Person " + i, "person" + i, PASSWORD, Role.TECHNICIAN);
        }
        LocalDate first = LocalDate.of(2026, 1, 1);
        for (int i = 0; i < JOBS; i++) {
            job = book.cards()
                    .addCustomerWithJob(
                            Author.CONSOLE,
                            "job.called",
                            Map.of("name", "Customer " + i, "phone", "0155 " + i),
                            Map.of(
                                    "plate",
                                    "QX " + i,
                                    "make",
                                    MAKES.get(i % MAKES.size()),
                                    "model",
                                    "Model " + i % 50,
                                    "due",
                                    first.plusDays(i % 400).toString(),
                                    "stage",
                                    "check-in"))
                    .id();
        }
        server = Server.start(shop, Listen.onLoopback(0), QUICK);
        for (int i = 0; i < AT_ONCE; i++) {
            people.add(signedIn("person" + i));
        }
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
        return HttpRequest.newBuilder(
                URI.create("http://127.0.0.1:" + requireNonNull(server).port() + path));
    }

    /** Ends the server and takes the book away. */
    @TearDown
    public void end() throws IOException {
        people.forEach(HttpClient::close);
        requireNonNull(server).close();
        requireNonNull(shop).close();
        try (Stream<Path> files = Files.list(requireNonNull(folder))) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(requireNonNull(folder));
    }

    /** The list of jobs, what is due first on top. */
    @Benchmark
    public String list() throws IOException, InterruptedException {
        return asked("/");
    }

    /** A customer found among ten thousand. */
    @Benchmark
    public String find() throws IOException, InterruptedException {
        return asked("/?find=" + turn.get() % JOBS);
    }

    /** Twenty people at once, each looking now at the list and now at a job. */
    @Benchmark
    @Threads(AT_ONCE)
    public String twentyAtOnce() throws IOException, InterruptedException {
        return asked(turn.get() % 2 == 0 ? "/" : "/jobs/" + job);
    }

    private String asked(String path) throws IOException, InterruptedException {
        HttpClient http = people.get(turn.getAndIncrement() % AT_ONCE);
        HttpResponse<String> answer = http.send(request(path).build(), BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException("answered " + answer.statusCode());
        }
        return answer.body();
    }
}
