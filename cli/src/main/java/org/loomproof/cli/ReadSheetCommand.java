package org.loomproof.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.loomproof.cli.report.SheetNotesReport;
import org.loomproof.shop.notes.LineCorrection;
import org.loomproof.shop.notes.MemoryFile;
import org.loomproof.shop.notes.NotesJson;
import org.loomproof.shop.notes.NotesRun;
import org.loomproof.shop.notes.SheetReading;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Wiring notes as they come, read into a sheet. */
@Command(name = "read-sheet", mixinStandardHelpOptions = true)
final class ReadSheetCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "notes")
    private Path notes;

    @Option(names = "--fact", paramLabel = "KEY=VALUE", descriptionKey = "fact")
    private Map<String, String> facts = new LinkedHashMap<>();

    @Option(names = "--order", paramLabel = "FILE", descriptionKey = "order")
    private @Nullable Path order;

    @Option(names = "--into", paramLabel = "SHEET", descriptionKey = "into")
    private @Nullable Path into;

    @Option(names = "--table", paramLabel = "FILE", descriptionKey = "table")
    private @Nullable Path table;

    @Option(names = "--memory", paramLabel = "FILE")
    private @Nullable Path memory;

    @Option(names = "--correct", paramLabel = "LINE:FIELD=MEANING")
    private List<String> corrections = new ArrayList<>();

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "out")
    private @Nullable Path out;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    ReadSheetCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        ReadingDesk desk = new ReadingDesk(spec, messages, json);
        Checked<SheetReading> read = new NotesRun(messages)
                .sheet(new NotesRun.SheetWanted(
                        notes,
                        facts,
                        Optional.ofNullable(order),
                        Optional.ofNullable(into),
                        Optional.ofNullable(memory),
                        corrections.stream().map(LineCorrection::new).toList()));
        return switch (read) {
            case Checked.Bad<SheetReading>(var problems) -> desk.problems(problems);
            case Checked.Good<SheetReading>(SheetReading reading) -> {
                int code = show(desk, reading);
                // Learnt only when all else was written, so that the same call tried again teaches nothing twice.
                List<Problem> notKept = code == ExitCode.BAD_INPUT || memory == null || corrections.isEmpty()
                        ? List.of()
                        : MemoryFile.write(memory, reading.memory());
                yield notKept.isEmpty() ? code : desk.problems(notKept);
            }
        };
    }

    private int show(ReadingDesk desk, SheetReading reading) {
        return desk.show(
                json
                        ? List.of(new NotesJson(messages).of(reading).stripTrailing())
                        : new SheetNotesReport(messages).lines(reading),
                files(reading),
                reading.isSettled());
    }

    private Map<Path, String> files(SheetReading reading) {
        Map<Path, String> files = new LinkedHashMap<>();
        if (out != null) {
            files.put(out, reading.text());
        }
        if (table != null) {
            files.put(table, reading.table());
        }
        return files;
    }
}
