package org.loomproof.book;

import java.time.Clock;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.Backlog;
import org.loomproof.book.store.OpenBook;

/** A server of a book that does its share of the tasks until it is killed: each writes one event on its job. */
final class TaskServer {

    private TaskServer() {}

    public static void main(String[] arguments) throws InterruptedException {
        OpenBook book = Book.open(BookPlace.of(arguments[0]), BookContract.PASSPHRASE, Clock.systemUTC())
                .orThrow();
        Backlog backlog = BacklogContract.backlog(book, (task, watch) -> {
            Card job = book.cards().find(new CardId(task.subject())).orElseThrow();
            System.out.println("begun " + task.subject());
            System.out.flush();
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(250)); // the work itself
            watch.goOn();
            book.cards()
                    .change(
                            job.id(),
                            job.version(),
                            new Author(arguments[1]),
                            "job.proven",
                            Map.of("by", arguments[1]));
        });
        System.out.println("ready");
        System.out.flush();
        Thread.currentThread().join();
        backlog.close();
    }
}
