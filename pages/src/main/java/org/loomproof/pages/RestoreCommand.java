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

/** Puts a backup where no job book is. */
@Command(name = "restore", mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private BookOption book;

    @Parameters(paramLabel = "FILE", descriptionKey = "restore")
    private Path file;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    RestoreCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Outcome(spec, messages)
                .tell(
                        Book.restore(file, book.place()),
                        "pages.restore.done",
                        file.toString(),
                        book.place().toString());
    }
}
