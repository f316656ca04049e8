package org.loomproof.pages;

import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Tried;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Model.CommandSpec;

/** Tells how a command on the book ended. */
record Outcome(CommandSpec spec, Messages messages) {

    /** Prints the sentence with the number of rows, or why it was refused, and gives the exit code. */
    int tell(Tried<Long> tried, String key, String from, String to) {
        return switch (tried) {
            case Tried.Done<Long>(Long rows) -> {
                spec.commandLine().getOut().println(messages.text(key, rows, from, to));
                yield 0;
            }
            case Tried.Not<Long>(Refusal why) -> {
                String about = why == Refusal.BOOK_THERE ? to : from;
                spec.commandLine()
                        .getErr()
                        .println(messages.text(why.at(BookPlace.of(about).toString())));
                yield Main.BAD_INPUT;
            }
        };
    }
}
