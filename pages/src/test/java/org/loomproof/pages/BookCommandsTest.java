package org.loomproof.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.Book;
import org.loomproof.book.card.Author;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.OpenBook;
import org.loomproof.workshop.words.Messages;

class BookCommandsTest {

    private static final Passphrase PASSPHRASE = Passphrase.of("four brass kettles sing");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), Messages.english())
                .execute(arguments);
    }

    @Test
    void aBackupOfABookInUseComesBackElsewhere() {
        Path file = folder.resolve("jobs.book");
        Path copy = folder.resolve("night.backup");
        Path again = folder.resolve("again.book");
        try (OpenBook open = Book.create(
                        new BookPlace.InFile(file), PASSPHRASE, new Stretching(64, 1, 1), Clock.systemUTC())
                .orThrow()) {
            open.cards().addCustomerWithJob(Author.CONSOLE, "job.called", Map.of("name", "N"), Map.of("plate", "P"));
            assertThat(run("backup", "--book", file.toString(), copy.toString()))
                    .isZero();
        }
        assertThat(run("restore", "--book", again.toString(), copy.toString())).isZero();
        assertThat(again).exists();
        assertThat(out.toString()).contains(copy.toString());

        assertThat(run("restore", "--book", again.toString(), copy.toString()))
                .as("a book is there")
                .isEqualTo(2);
        assertThat(err.toString()).contains("nothing was written over");
    }

    @Test
    void whatIsNoBackupIsRefusedInOneSentence() throws Exception {
        Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear shop");
        assertThat(run("restore", "--book", folder.resolve("new.book").toString(), letter.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("not a job book").hasLineCount(1);
        assertThat(folder.resolve("new.book")).doesNotExist();
        assertThat(run(
                        "backup",
                        "--book",
                        folder.resolve("none").toString(),
                        folder.resolve("x").toString()))
                .isEqualTo(2);
    }

    @Test
    void theNetworkIsNotOpenedWithoutACertificate() {
        assertThat(run("serve", "--book", folder.resolve("new.book").toString(), "--host", "0.0.0.0"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("only with a certificate").hasLineCount(1);
    }

    @Test
    void helpSaysWhatEachCommandDoes() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).contains("serve", "backup", "restore", "Opens the job book");
        assertThat(run("serve", "--help")).isZero();
        assertThat(out.toString()).contains("--certificate", "--key-file", "LOOMPROOF_DB");
    }
}
