package org.loomproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.loomproof.cli.report.KitNotesReport;
import org.loomproof.shop.notes.KitReading;
import org.loomproof.shop.notes.NotesJson;
import org.loomproof.shop.notes.NotesRun;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A pasted list of leads, read into the beginning of a kit. */
@Command(name = "read-kit", mixinStandardHelpOptions = true)
final class ReadKitCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "notes")
    private Path notes;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "out")
    private @Nullable Path out;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    ReadKitCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        ReadingDesk desk = new ReadingDesk(spec, messages, json);
        return switch (new NotesRun(messages).kit(notes)) {
            case Checked.Bad<KitReading>(var problems) -> desk.problems(problems);
            // A list of leads never says all that a kit must: something is always left to be filled in.
            case Checked.Good<KitReading>(KitReading reading) ->
                desk.show(
                        json
                                ? List.of(new NotesJson(messages).of(reading).stripTrailing())
                                : new KitNotesReport(messages).lines(reading),
                        out == null ? Map.of() : Map.of(out, reading.text()),
                        false);
        };
    }
}
