package org.loomproof.pages;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.loomproof.book.Book;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Copies the job book into a file while others go on working. */
@Command(name = "backup", mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private BookOption book;

    @Parameters(paramLabel = "FILE", descriptionKey = "backup")
    private Path file;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    BackupCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Outcome(spec, messages)
                .tell(
                        Book.backup(book.place(), file),
                        "pages.backup.done",
                        book.place().toString(),
                        file.toString());
    }
}
