package org.loomproof.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;
import org.loomproof.testing.Note;

/** A PostgreSQL of the tests' own: started when the first one asks, gone when they end. Debian's package, found where it lies. */
final class TestServer {

    private static final AtomicInteger DATABASES = new AtomicInteger();
    private static @Nullable TestServer running;

    private final Path bin;
    private final Path folder;
    private final int port;

    private TestServer(Path bin, Path folder, int port) {
        this.bin = bin;
        this.folder = folder;
        this.port = port;
    }

    /** The server; skips the test with a line where none is installed, and fails it when CI=true. */
    static synchronized TestServer get() {
        TestServer there = running;
        if (there == null) {
            there = start(installed());
            running = there;
        }
        return there;
    }

    /** The address of a new empty database. */
    String newDatabase() {
        String name = "book" + DATABASES.incrementAndGet();
        run(asServersUser(
                bin.resolve("createdb").toString(), "-h", "127.0.0.1", "-p", "" + port, "-U", "postgres", name));
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + name + "?user=postgres&password=postgres";
    }

    /** Where it keeps what it is given. */
    Path files() {
        return folder.resolve("data");
    }

    /** Has everything written to its files. */
    void settle() {
        run(asServersUser(
                bin.resolve("psql").toString(),
                "-q",
                "-h",
                "127.0.0.1",
                "-p",
                "" + port,
                "-U",
                "postgres",
                "-c",
                "CHECKPOINT"));
    }

    private static Path installed() {
        Optional<Path> found = candidates()
                .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                .findFirst();
        if (found.isEmpty()) {
            assertThat(System.getenv("CI"))
                    .as("PostgreSQL must be there when CI=true")
                    .isNotEqualTo("true");
            Note.that("PostgreSQL is not installed: the store on it left out");
        }
        Assumptions.assumeTrue(found.isPresent());
        return found.orElseThrow();
    }

    private static Stream<Path> candidates() {
        Path debian = Path.of("/usr/lib/postgresql");
        List<Path> folders = new ArrayList<>();
        if (Files.isDirectory(debian)) {
            try (Stream<Path> versions = Files.list(debian)) {
                versions.sorted().map(version -> version.resolve("bin")).forEach(folders::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        for (String folder :
                Optional.ofNullable(System.getenv("PATH")).orElse("").split(":", -1)) {
            folders.add(Path.of(folder));
        }
        return folders.stream();
    }

    private static TestServer start(Path bin) {
        try {
            Path folder = Files.createTempDirectory("loomproof-postgres");
            if (isRoot()) {
                run(List.of("chown", "postgres", folder.toString()));
            }
            int port;
            try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
                port = free.getLocalPort();
            }
            String data = folder.resolve("data").toString();
            run(asServersUser(
                    bin.resolve("initdb").toString(),
                    "-D",
                    data,
                    "-A",
                    "trust",
                    "-U",
                    "postgres",
                    "-E",
                    "UTF8",
                    "--locale=C.UTF-8"));
            List<String> control = asServersUser(bin.resolve("pg_ctl").toString(), "-D", data, "-w");
            List<String> starting = new ArrayList<>(control);
            starting.addAll(List.of(
                    "-l",
                    folder.resolve("log").toString(),
                    "-o",
                    "-p " + port + " -k " + folder + " -h 127.0.0.1 -c fsync=off",
                    "start"));
            run(starting);
            List<String> stopping = new ArrayList<>(control);
            stopping.addAll(List.of("-m", "immediate", "stop"));
            Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                run(stopping);
                run(List.of("rm", "-r", folder.toString()));
            }));
            return new TestServer(bin, folder, port);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The server refuses to run as root; Debian's package brings the user it wants. */
    private static List<String> asServersUser(String... command) {
        List<String> all = new ArrayList<>(isRoot() ? List.of("runuser", "-u", "postgres", "--") : List.of());
        all.addAll(List.of(command));
        return all;
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static void run(List<String> command) {
        try {
            Process process = new ProcessBuilder(command)
                    .directory(Path.of("/").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (process.waitFor() != 0) {
                throw new IllegalStateException("failed: " + command);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
