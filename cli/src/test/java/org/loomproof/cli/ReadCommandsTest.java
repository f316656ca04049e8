package org.loomproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.workshop.words.Messages;

/** Notes read by the commands, as a person types them. */
class ReadCommandsTest {

    private static final List<String> FACTS = List.of(
            "name=cart",
            "system-voltage=12 V",
            "ground=negative",
            "drive=combustion",
            "start=key",
            "key=plain",
            "steering=left");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private String notes = "";
    private String leads = "";

    @BeforeEach
    void twoTexts() throws IOException {
        notes = Files.writeString(folder.resolve("notes.txt"), """
                        12V constant\tred\t+\tcolumn
                        ignition\tpink\t+\tcolumn, a place whose name goes on and on until it is wider than any terminal
                        """).toString();
        leads = Files.writeString(
                        folder.resolve("leads.txt"),
                        "1 | red | battery supply\n2 | black | ground\n3 | blue | horn output (-)\n")
                .toString();
    }

    private int run(String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), Messages.english())
                .execute(args);
    }

    private static String[] withFacts(String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        FACTS.forEach(fact -> all.addAll(List.of("--fact", fact)));
        return all.toArray(String[]::new);
    }

    @Test
    void notesThatSayEverythingLeaveNothingToSettle() throws IOException {
        Path sheet = folder.resolve("sheet.yaml");
        assertThat(run(withFacts("read-sheet", notes, "--out", sheet.toString())))
                .as(out.toString() + err)
                .isZero();
        assertThat(out.toString()).contains("constant-supply", "98 %", "by \"red\"", "2 on the sheet, 0 held back");
        assertThat(out.toString().lines())
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(80));
        assertThat(Files.readString(sheet)).contains("format: loomproof sheet 1", "notes.txt 1:1-");
    }

    @Test
    void whatIsOnlyCarriedAlongIsShownToo() throws IOException {
        String text = Files.writeString(
                        folder.resolve("said.txt"),
                        "horn  grey  (-)\nbrake  green  (+)\nalarm must not hold the dome relay\n")
                .toString();

        run("read-sheet", text);

        assertThat(out.toString()).contains("kept as a note: 3:1-34 \"alarm must not hold the dome relay\"");
    }

    @Test
    void whatAPersonPutsRightIsRememberedAndSuggestedNextTime() throws IOException {
        String memory = folder.resolve("shop.csv").toString();
        String odd = Files.writeString(
                        folder.resolve("odd.txt"), "Wuzzle feed\tbrown\t+\tdash\nHorn\tblack\t-\tcolumn\n")
                .toString();
        assertThat(run("read-sheet", odd, "--memory", memory)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run("read-sheet", odd, "--memory", memory, "--correct", "1:role=accessory"))
                .isEqualTo(ExitCode.STOPPED);
        assertThat(out.toString()).contains("accessory", "100 %");
        assertThat(run("read-sheet", odd, "--memory", memory, "--correct", "1:role=accessory"))
                .isEqualTo(ExitCode.STOPPED);
        assertThat(Files.readString(Path.of(memory))).contains("role,wuzzle feed,accessory,2");
        assertThat(run("read-sheet", odd, "--memory", memory)).isEqualTo(ExitCode.STOPPED);
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains(
                        "not understood",
                        "your shop read the role of \"wuzzle feed\" as accessory twice of 2 (75 %)",
                        "--correct 1:role=accessory takes it");
    }

    @Test
    void everyCorrectionThatCannotBeMadeIsToldAtOnceAndTeachesNothing() {
        String memory = folder.resolve("shop.csv").toString();
        assertThat(run(
                        "read-sheet",
                        notes,
                        "--memory",
                        memory,
                        "--correct",
                        "horn",
                        "--correct",
                        "9:role=horn",
                        "--correct",
                        "1:role=hron",
                        "--correct",
                        "1:role=horn"))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString())
                .contains("6:role=horn", "a line that a circuit was read from", "such as door-trigger");
        assertThat(Path.of(memory)).doesNotExist();
    }

    @Test
    void withoutTheVehiclesFactsTheyAreAskedFor() {
        assertThat(run("read-sheet", notes)).isEqualTo(ExitCode.STOPPED);
        assertThat(out.toString()).contains("To be filled in: name, system-voltage");
    }

    @Test
    void nothingIsEverWrittenOver() throws IOException {
        Path sheet = Files.writeString(folder.resolve("sheet.yaml"), "mine");
        assertThat(run(withFacts("read-sheet", notes, "--out", sheet.toString())))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("sheet.yaml: the file cannot be written");
        assertThat(Files.readString(sheet)).isEqualTo("mine");
    }

    @Test
    void aSecondSourceIsMergedAndTheTableReadsBackAsTheSameSheet() throws IOException {
        Path sheet = folder.resolve("sheet.yaml");
        Path table = folder.resolve("table.csv");
        run(withFacts("read-sheet", notes, "--out", sheet.toString(), "--table", table.toString()));
        Path both = folder.resolve("both.yaml");
        assertThat(run("read-sheet", table.toString(), "--into", sheet.toString(), "--out", both.toString()))
                .as(out.toString() + err)
                .isZero();
        assertThat(out.toString()).contains("constant-supply is borne out", "ignition is borne out");
        assertThat(Files.readString(both)).contains("notes.txt 1:1-", "table.csv 2:1-1");
    }

    @Test
    void whenOneFileCannotBeWrittenNoneIs() throws IOException {
        Path sheet = folder.resolve("sheet.yaml");
        Path table = Files.writeString(folder.resolve("table.csv"), "mine");
        assertThat(run(withFacts("read-sheet", notes, "--out", sheet.toString(), "--table", table.toString())))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(sheet).doesNotExist();
        assertThat(Files.readString(table)).isEqualTo("mine");
    }

    @Test
    void whatAnOrderNeedsIsToldWhenItIsMissing() throws IOException {
        Path order = Files.writeString(
                folder.resolve("order.yaml"),
                "format: loomproof order 1\njob: 3\nwants: [starter-interrupt]\nrule-set: none\nlongest-unused: 3 days\n");
        assertThat(run(withFacts("read-sheet", notes, "--order", order.toString())))
                .isEqualTo(ExitCode.STOPPED);
        assertThat(out.toString()).contains("no starter wire on this sheet (for starter-interrupt): measure it");
    }

    @Test
    void aKitsMissingRatingsAreAskedFor() {
        assertThat(run("read-kit", leads)).isEqualTo(ExitCode.STOPPED);
        assertThat(out.toString())
                .contains("asked: how many amps may the output carry?", "3 leads, 2 with nothing to ask");
    }

    @Test
    void theJsonKeepsToItsSchemas() throws IOException {
        run("read-sheet", notes, "--json");
        Schema sheet = schema("sheet-notes");
        assertThat(sheet.validate(out.toString(), InputFormat.JSON)).isEmpty();
        assertThat(sheet.validate(out.toString().replace("\"sure\"", "\"certain\""), InputFormat.JSON))
                .isNotEmpty();
        run("read-kit", leads, "--json");
        assertThat(schema("kit-notes").validate(out.toString(), InputFormat.JSON))
                .isEmpty();
    }

    private static Schema schema(String name) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("..", "docs", "schemas", name + ".schema.json")), InputFormat.JSON);
    }

    @Test
    void bytesThatAreNoTextAreAProblemAndNoReport() throws IOException {
        Path bytes = Files.write(folder.resolve("bytes"), new byte[] {0, 1, 0, 2, 0, 0});
        assertThat(run("read-sheet", bytes.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("no text can be read from this");
        assertThat(out.toString()).isEmpty();
    }
}
