package org.loomproof.pages.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.loomproof.book.card.Author;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Role;

/** A shop with three people, its server on a port of its own, and a clock that tests move. */
final class TestShop implements AutoCloseable {

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
        shop = new Shop(new BookPlace.InFile(folder.resolve("jobs.book")), clock);
        server = Server.start(shop, Listen.onLoopback(0), QUICK);
    }

    /** The same with a book, open, and its people. */
    static TestShop open(Path folder) {
        TestShop test = new TestShop(folder);
        test.shop.make(Passphrase.of(PASSPHRASE), QUICK, "Ada Quill", "ada", PASSWORD);
        People people = new People(test.shop.book().orElseThrow().cards());
        people.add(Author.CONSOLE, "Bo Larch", "bo", "a kettle for Bo!", Role.TECHNICIAN);
        people.add(Author.CONSOLE, "Cy Moor", "cy", "a kettle for Cy!", Role.FRONT_DESK);
        return test;
    }

    /** The server goes away and comes back at the same port, its book locked and everybody signed out. */
    void restart() {
        int port = server.port();
        close();
        shop = new Shop(new BookPlace.InFile(folder.resolve("jobs.book")), clock);
        server = Server.start(shop, Listen.onLoopback(port), QUICK);
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
