package org.loomproof.book;

import org.loomproof.book.place.BookPlace;

/** Background work of a book in one file. */
class SqliteBacklogTest extends BacklogContract {

    @Override
    BookPlace freshPlace() {
        return new BookPlace.InFile(folder.resolve("jobs.book"));
    }
}
