package org.loomproof.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.Consumer;
import org.loomproof.shop.job.Stage;
import org.loomproof.workshop.words.Messages;

/**
 * One line that tells a waiting person what is being done, wiped when it is over. Silent where nobody watches: the
 * launcher says through {@code loomproof.terminal} whether the error stream is a terminal, since Java before 22 cannot
 * tell the two streams apart.
 */
final class Progress implements Consumer<Stage>, AutoCloseable {

    private static final String WIPE = "\r\u001b[K";

    private final PrintWriter err;
    private final Messages messages;
    private final boolean watched;

    Progress(PrintWriter err, Messages messages, boolean watched) {
        this.err = err;
        this.messages = messages;
        this.watched = watched;
    }

    @Override
    public void accept(Stage stage) {
        if (watched) {
            err.print(WIPE + messages.text("progress." + stage.name().toLowerCase(Locale.ROOT)) + " …");
            err.flush();
        }
    }

    /** Tells how many of how many were done. */
    synchronized void counted(int done, int all) {
        if (watched) {
            err.print(WIPE + messages.text("progress.counted", done, all));
            err.flush();
        }
    }

    @Override
    public void close() {
        wipe();
    }

    /** Takes the line of progress off the terminal, so that an answer can stand there. */
    void wipe() {
        if (watched) {
            err.print(WIPE);
            err.flush();
        }
    }
}
