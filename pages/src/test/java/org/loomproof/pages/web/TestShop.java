package org.loomproof.pages.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.locks.LockSupport;
import org.loomproof.book.card.Author;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.pages.desk.Background;
import org.loomproof.pages.desk.NightlyProof;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Role;
import org.loomproof.workshop.words.Messages;

/** A shop with three people, its server on a port of its own, and a clock that tests move. */
final class TestShop implements AutoCloseable {

    private static final String BOOK = "jobs.book";

    static final String PASSPHRASE = "four brass kettles sing";
    static final String PASSWORD = "a kettle for Ada";
    static final Stretching QUICK = new Stretching(64, 1, 1);

    /** A clock that stands still until it is moved. */
    static final class MovedClock extends Clock {
        private volatile Instant now = Instant.parse("2026-11-26T09:00:00Z");

        void pass(Duration time) {
            now = now.plus(time);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    final MovedClock clock = new MovedClock();
    private final Path folder;
    Shop shop;
    Server server;

    /** A server in front of a place where no book is yet. */
    TestShop(Path folder) {
        Quiet.libraries();
        this.folder = folder;
        shop = new Shop(new BookPlace.InFile(folder.resolve(BOOK)), clock);
        server = Server.start(shop, Listen.onLoopback(0), QUICK);
    }

    /** The same with a book, open, and its people. */
    static TestShop open(Path folder) {
        try {
            Files.write(folder.resolve(BOOK), Made.BYTES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        TestShop test = new TestShop(folder);
        assertThat(test.shop.unlock(Passphrase.of(PASSPHRASE))).isEmpty();
        return test;
    }

    /** A book with its people, made once and copied: their passwords are hashed as slowly as those of real ones. */
    private static final class Made {
        static final byte[] BYTES = book();

        private static byte[] book() {
            try {
                Path folder = Files.createTempDirectory("shop");
                try (TestShop test = new TestShop(folder)) {
                    test.shop.make(Passphrase.of(PASSPHRASE), QUICK, "Ada Quill", "ada", PASSWORD);
                    People people = new People(test.shop.book().orElseThrow().cards());
                    people.add(Author.CONSOLE, "Bo Larch", "bo", "a kettle for Bo!", Role.TECHNICIAN);
                    people.add(Author.CONSOLE, "Cy Moor", "cy", "a kettle for Cy!", Role.FRONT_DESK);
                }
                byte[] made = Files.readAllBytes(folder.resolve(BOOK));
                Files.delete(folder.resolve(BOOK));
                Files.delete(folder);
                return made;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The server goes away and comes back at the same port, its book locked and everybody signed out. */
    void restart() {
        int port = server.port();
        close();
        shop = new Shop(new BookPlace.InFile(folder.resolve(BOOK)), clock);
        server = Server.start(shop, Listen.onLoopback(port), QUICK);
    }

    /** Until nothing is left that was due; a proof takes seconds, on a busy machine minutes. */
    void awaitNightlyProof() {
        NightlyProof proof = new NightlyProof(shop.book().orElseThrow(), Messages.english());
        Background background = shop.background().orElseThrow();
        long end = System.nanoTime() + Duration.ofMinutes(5).toNanos();
        while (proof.all().stream().anyMatch(background::isUnderWay)) {
            assertThat(System.nanoTime()).as("still under way").isLessThan(end);
            LockSupport.parkNanos(Duration.ofMillis(50).toNanos()); // nothing tells when a task has ended
        }
    }

    String address() {
        return "http://127.0.0.1:" + server.port();
    }

    @Override
    public void close() {
        server.close();
        shop.close();
    }
}
