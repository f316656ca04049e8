package org.loomproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.workshop.words.Messages;

/** The commands as a person types them, on a small job whose answer is known. */
class CommandsTest {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path HATCHBACK = EXAMPLES.resolve("small-hatchback");

    /** A job with a cut starter and little else, for what tries every fault several times over. */
    private static final Path STARTER_ALONE = EXAMPLES.resolve("circuits").resolve("ignition-second-alone");

    /** Plans that several tests start from, each made once. */
    @TempDir
    private static Path planned;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), Messages.english())
                .execute(args);
    }

    private int plan(Path sheet, Path kit, Path order, Path into, String... more) {
        List<String> args = new ArrayList<>(List.of(
                "plan",
                "--sheet",
                sheet.toString(),
                "--kit",
                kit.toString(),
                "--order",
                order.toString(),
                "--out",
                into.toString()));
        args.addAll(List.of(more));
        return run(args.toArray(String[]::new));
    }

    private int planHatchback(Path into, String... more) {
        return planExample(HATCHBACK, into, more);
    }

    private int planExample(Path example, Path into, String... more) {
        return plan(
                example.resolve("sheet.yaml"), example.resolve("kit.yaml"), example.resolve("order.yaml"), into, more);
    }

    /** The folder with the plan of an example; nothing of it is changed. */
    private Path plannedOnce(Path example) {
        Path papers = planned.resolve(example.getFileName());
        if (!Files.isDirectory(papers)) {
            planExample(example, papers);
        }
        return papers;
    }

    @Test
    void aProvenJobWritesItsPapersAndItsPlanProvesAgainAlike() throws IOException {
        Path papers = folder.resolve("papers");
        assertThat(planHatchback(papers)).as(err.toString()).isZero();
        assertThat(out.toString().lines())
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(80));
        assertThat(out.toString()).contains("0 broken, 0 open; 0 refused: proven", "plan.yaml", "next:");
        assertThat(papers).isDirectoryContaining("glob:**/plan.yaml");
        assertThat(List.of("bench-card.html", "proof.html", "schematic.svg"))
                .allSatisfy(name -> assertThat(papers.resolve(name)).isNotEmptyFile());

        String plan = papers.resolve("plan.yaml").toString();
        assertThat(run("prove", plan, "--json")).isZero();
        JsonNode again = new ObjectMapper().readTree(out.toString());
        assertThat(planHatchback(papers, "--json")).isZero();
        JsonNode planned = new ObjectMapper().readTree(out.toString());
        assertThat(again.get("claims")).isEqualTo(planned.get("claims"));
        assertThat(planned.get("files")).hasSize(14);
        assertThat(again.get("files")).isEmpty();
        assertThat(again.get("threats")).isEqualTo(planned.get("threats")).isNotEmpty();
        assertThat(again.get("threats").findValuesAsText("outcome")).contains("starts", "does-not-start");
        assertThat(run("prove", plan)).isZero();
        assertThat(out.toString()).contains("What a thief may try", "starts: the two ends of the cut in");
        assertThat(papers.resolve("proof.html")).content().contains("What a thief may try", "does not start");
    }

    @Test
    void aPlanSpoiltByHandIsBrokenAndSaysHowToSeeItInTheCar() throws IOException {
        String plan = Files.readString(plannedOnce(HATCHBACK).resolve("plan.yaml"));
        assertThat(plan).contains("from: K1 87a");
        Path spoilt = Files.writeString(folder.resolve("spoilt.yaml"), plan.replace("from: K1 87a", "from: K1 87"));
        assertThat(run("prove", spoilt.toString())).as(err.toString()).isEqualTo(3);
        assertThat(out.toString()).contains("BROKEN", "1. turn the key to start", "1. arm and wait", "2. turn the key");
    }

    @Test
    void theJsonKeepsToItsSchema() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("..", "docs", "schemas", "result.schema.json")), InputFormat.JSON);
        planHatchback(folder.resolve("papers"), "--json");
        assertThat(schema.validate(out.toString(), InputFormat.JSON)).isEmpty();

        assertThat(planExample(EXAMPLES.resolve("circuits/light-lit-in-override"), folder.resolve("lit"), "--json"))
                .isZero();
        assertThat(schema.validate(out.toString(), InputFormat.JSON)).isEmpty();
        assertThat(new ObjectMapper()
                        .readTree(out.toString())
                        .at("/counts/declared")
                        .asInt())
                .isEqualTo(2);
        assertThat(out.toString()).contains("\"declared\"", "the radio does not switch itself off");

        Path broken = Files.writeString(folder.resolve("order.yaml"), "format: loomproof order 1\njob: 3\nwant: []\n");
        assertThat(plan(HATCHBACK.resolve("sheet.yaml"), HATCHBACK.resolve("kit.yaml"), broken, folder, "--json"))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(schema.validate(out.toString(), InputFormat.JSON)).isEmpty();
        assertThat(schema.validate(out.toString().replace("\"kind\"", "\"sort\""), InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void onlyWhatChangesBetweenTwoPlansIsTold() throws IOException {
        Path old = plannedOnce(HATCHBACK).resolve("plan.yaml");
        Path fewer = Files.writeString(
                folder.resolve("order.yaml"),
                Files.readString(HATCHBACK.resolve("order.yaml")).replaceFirst("starter-interrupt, ", ""));
        Path next = folder.resolve("next");
        assertThat(plan(HATCHBACK.resolve("sheet.yaml"), HATCHBACK.resolve("kit.yaml"), fewer, next))
                .as(err.toString())
                .isZero();

        assertThat(run("changes", old.toString(), old.toString())).isZero();
        assertThat(out.toString()).contains("Nothing changes");

        assertThat(run("changes", old.toString(), next.resolve("plan.yaml").toString()))
                .isZero();
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains("Undo: join the cut wire of starter again", "Price: open", "./loomproof prove")
                .contains("-1 changeover relay")
                .containsPattern("-\\d+\\.\\d m wire")
                .doesNotContain("siren");

        assertThat(run("changes", old.toString(), next.resolve("plan.yaml").toString(), "--json"))
                .isZero();
        Schema schema = schema("change");
        assertThat(schema.validate(out.toString(), InputFormat.JSON)).isEmpty();
        JsonNode change = new ObjectMapper().readTree(out.toString());
        assertThat(change.get("leads")).hasSize(1);
        assertThat(change.get("minutes").get("after").asDouble())
                .isLessThan(change.get("minutes").get("before").asDouble());
        assertThat(change.get("undo").get(0).get("do").asText()).isEqualTo("rejoin-cut");
    }

    @Test
    void faultsAreToldTheWorstFirstWithTheOrderOfTheTests() throws IOException {
        String plan = plannedOnce(HATCHBACK).resolve("plan.yaml").toString();
        assertThat(run("faults", plan)).as(err.toString()).isZero();
        assertThat(out.toString().replaceAll("\\s+", " "))
                .containsSubsequence(
                        "fire or loss of control:",
                        "stranded:",
                        "unprotected:",
                        "Tests of the finished car",
                        "windows down",
                        "What no test can notice",
                        "Noticed:",
                        "One thing was taken to be wrong at a time.");

        Schema schema = schema("faults");
        assertThat(run("faults", plan, "--json")).as(err.toString()).isZero();
        assertThat(schema.validate(out.toString(), InputFormat.JSON)).isEmpty();
        assertThat(schema.validate(out.toString().replace("\"severity\"", "\"grade\""), InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void twoFaultsAtOnceAreToldWhereOneHidesTheOther() throws IOException {
        String plan = plannedOnce(STARTER_ALONE).resolve("plan.yaml").toString();
        assertThat(run("faults", plan, "--pairs", "--json")).as(err.toString()).isZero();
        assertThat(schema("faults").validate(out.toString(), InputFormat.JSON)).isEmpty();
        assertThat(out.toString()).contains("\"hiddenBy\"");
        assertThat(run("faults", plan, "--pairs")).as(err.toString()).isZero();
        assertThat(out.toString().replaceAll("\\s+", " "))
                .containsSubsequence("Two at once:", "one hides the other", "change nothing together");
    }

    @Test
    void wiresAreIdentifiedFromReadingsWithAndWithoutASheet() throws IOException {
        Path readings = Files.writeString(folder.resolve("readings.csv"), """
                wire;step;value;unit;meter
                battery;key off;12,6;V
                battery;key on;12,3;V
                battery;cranking;10,3;V;min/max
                ignition;key off;0,0;V
                ignition;key acc;0,01;V
                ignition;key on;12,2;V
                ignition;cranking;10,2;V;min/max
                """);
        assertThat(run("identify", "--readings", readings.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString().lines())
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(80));
        assertThat(out.toString()).contains("ignition: a true ignition", "connect", "cut", "because");

        String sheet = HATCHBACK.resolve("sheet.yaml").toString();
        assertThat(run("identify", "--readings", readings.toString(), "--sheet", sheet, "--json"))
                .as(err.toString())
                .isZero();
        assertThat(schema("identify").validate(out.toString(), InputFormat.JSON))
                .isEmpty();
        assertThat(schema("identify").validate(out.toString().replace("\"allowed\"", "\"may\""), InputFormat.JSON))
                .isNotEmpty();
        JsonNode wire = new ObjectMapper().readTree(out.toString()).get("wires").get(0);
        assertThat(wire.get("entry").asText()).isEqualTo("ignition");
        assertThat(wire.get("best").asText()).isEqualTo("ignition");

        Path unread = Files.writeString(folder.resolve("odd.csv"), "wire,step,value,unit\na,key up,12,V\nb,on,x,V\n");
        assertThat(run("identify", "--readings", unread.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("odd.csv:2", "odd.csv:3");
        assertThat(run("identify", "--readings", readings.toString(), "--wrong-tap", "0.5"))
                .isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void aDrainIsToldFromSleepAndFollowedFuseByFuse() throws IOException {
        String plan = plannedOnce(HATCHBACK).resolve("plan.yaml").toString();
        StringBuilder log = new StringBuilder("wire,step,value,unit\nF7 10A,asleep,not taken,mV\n");
        for (int minute = 1; minute <= 120; minute++) {
            log.append("battery,after ")
                    .append(minute)
                    .append(minute < 10 ? " min,2.9,A\n" : minute < 30 ? " min,\"0,9\",A\n" : " min,420,mA\n");
        }
        Path readings = Files.writeString(folder.resolve("log.csv"), log);
        assertThat(run("drain", plan, "--readings", readings.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString().lines())
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(80));
        assertThat(out.toString().replaceAll("\\s+", " "))
                .containsSubsequence("30 to 120 min: 420 mA", "A drain:", "Days until", "Measure next:", "Never pull");
        assertThat(run("drain", plan, "--readings", readings.toString(), "--json"))
                .isZero();
        assertThat(schema("drain").validate(out.toString(), InputFormat.JSON)).isEmpty();
        assertThat(schema("drain").validate(out.toString().replace("\"hunt\"", "\"chase\""), InputFormat.JSON))
                .isNotEmpty();

        Files.writeString(readings, "wire,step,value,unit\nbattery,key on,1,A\nF7,asleep,1,mV\n");
        assertThat(run("drain", plan, "--readings", readings.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("log.csv:2", "log.csv:3");
    }

    @Test
    void aShockSensorIsSetBlowByBlow() throws IOException {
        String asked = "setting,mass,height,noticed\n,200 g,1 cm,must-not\n,200 g,40 cm,must\n";
        Path blows = Files.writeString(folder.resolve("blows.csv"), asked);
        assertThat(run("shock", "--blows", blows.toString())).as(err.toString()).isZero();
        assertThat(out.toString()).contains("in the middle", "next blow: 200 g from 6.3 cm");

        StringBuilder all = new StringBuilder(asked);
        for (int k = 0; k < 24; k++) {
            String[] round = {"3,200 g,5.7 cm,no\n", "3,200 g,8 cm,no\n", "3,200 g,11.3 cm,yes\n", "3,200 g,8 cm,yes\n"
            };
            all.append(round[k % 4]);
        }
        Files.writeString(blows, all);
        assertThat(run("shock", "--blows", blows.toString())).as(err.toString()).isZero();
        assertThat(out.toString().lines())
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(80));
        assertThat(out.toString()).contains("Setting 3", "Leave it at setting 3");
        assertThat(run("shock", "--blows", blows.toString(), "--json")).isZero();
        assertThat(schema("shock").validate(out.toString(), InputFormat.JSON)).isEmpty();
        assertThat(schema("shock").validate(out.toString().replace("\"ladder\"", "\"stairs\""), InputFormat.JSON))
                .isNotEmpty();

        Files.writeString(blows, asked + "3,200,8 cm,yes\n3,200 g,8 cm,maybe\n");
        assertThat(run("shock", "--blows", blows.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("blows.csv:4", "blows.csv:5");
        assertThat(run("shock", "--blows", blows.toString(), "--noticed", "100"))
                .isEqualTo(ExitCode.BAD_INPUT);
    }

    private static Schema schema(String name) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("..", "docs", "schemas", name + ".schema.json")), InputFormat.JSON);
    }

    @Test
    void readingsAreToldCircuitByCircuitWithBothEndsOfTheCut() throws IOException {
        String plan = plannedOnce(HATCHBACK).resolve("plan.yaml").toString();
        assertThat(run("readings", plan)).as(err.toString()).isZero();
        assertThat(out.toString().replaceAll("\\s+", " "))
                .containsSubsequence(
                        "Black lead on bare metal",
                        "starter at rest",
                        "turn the key to start: the battery's volts, at most",
                        "after the cut, cut end towards the switch: at rest",
                        "nothing holds it",
                        "after the cut, cut end away from the switch:");
        assertThat(run("readings", plan, "--json")).isZero();
        assertThat(schema("readings").validate(out.toString(), InputFormat.JSON))
                .isEmpty();
        assertThat(schema("readings").validate(out.toString().replace("\"floats\"", "\"hangs\""), InputFormat.JSON))
                .isNotEmpty();
        assertThat(run("readings", folder.resolve("none.yaml").toString())).isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void aComebackIsNarrowedDownReadingByReading() throws IOException {
        String plan = plannedOnce(STARTER_ALONE).resolve("plan.yaml").toString();
        assertThat(run("comeback", plan, "--symptoms", "no-start"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString().replaceAll("\\s+", " "))
                .containsSubsequence("the engine does not turn", "Likeliest", "Measure next:", "Symptoms alone");

        assertThat(run("comeback", plan, "--symptoms", "no-start", "--json")).isZero();
        assertThat(schema("comeback").validate(out.toString(), InputFormat.JSON))
                .isEmpty();
        JsonNode next = new ObjectMapper().readTree(out.toString()).get("next");
        Path readings = Files.writeString(
                folder.resolve("readings.csv"),
                "wire,step,value,unit\n" + next.get("wire").asText() + ","
                        + next.get("step").asText() + ","
                        + String.format(
                                Locale.ROOT,
                                "%.2f",
                                next.get("answers").get(0).get("low").asDouble())
                        + ",V\n");
        assertThat(run("comeback", plan, "--symptoms", "no-start", "--readings", readings.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("Measured: 1");

        assertThat(run("comeback", plan, "--symptoms", "no-strat,hot")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("no-start");
    }

    @Test
    void badInputTellsEveryProblemAndWritesNothing() throws IOException {
        String sheet = Files.readString(HATCHBACK.resolve("sheet.yaml"));
        Path wrong = Files.writeString(
                folder.resolve("sheet.yaml"),
                sheet.replaceFirst("ground: negative", "ground: negitive")
                        .replaceFirst("role: starter\n", "role: startr\n"));
        Path papers = folder.resolve("papers");
        assertThat(plan(wrong, HATCHBACK.resolve("kit.yaml"), HATCHBACK.resolve("order.yaml"), papers))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString().replaceAll("\\s+", " "))
                .contains("did you mean negative?", "did you mean starter?", "2 problems; nothing was written");
        assertThat(out.toString()).isEmpty();
        assertThat(papers).doesNotExist();
    }

    @Test
    void whatIsWrongWithTheShopsOwnFilesIsToldAtOnceWithAllElse() throws IOException {
        Path prices = Files.writeString(folder.resolve("prices.csv"), "article,size,price\ncurrency,,EUR\n");
        Path stock = Files.writeString(folder.resolve("stock.csv"), "article,size,count\nfuze,,1\n");
        Path history = Files.writeString(folder.resolve("history.csv"), "work,minutes\ntapp,4\n");
        Path papers = folder.resolve("papers");
        assertThat(planHatchback(
                        papers,
                        "--prices",
                        prices.toString(),
                        "--stock",
                        stock.toString(),
                        "--history",
                        history.toString(),
                        "--address",
                        "bench.example"))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString().replaceAll("\\s+", " "))
                .contains("did you mean fuse?", "did you mean tap?", "a line hour", "--address", "4 problems");
        assertThat(papers).doesNotExist();
    }

    /** The papers of a plan as it stands, with all that a shop brings to them. */
    @Test
    void papersHaveATestOrderAndWhatTheShopSays() throws IOException {
        Path first = plannedOnce(HATCHBACK);
        assertThat(first.resolve("test-order.html")).doesNotExist();
        Path stock = Files.writeString(folder.resolve("stock.csv"), "article,size,count\nfuse-holder,,1\n");
        Path papers = folder.resolve("papers");
        String plan = first.resolve("plan.yaml").toString();
        assertThat(run(
                        "papers",
                        plan,
                        "--out",
                        papers.toString(),
                        "--stock",
                        stock.toString(),
                        "--address",
                        "https://bench.example"))
                .as(err.toString())
                .isZero();
        assertThat(papers.resolve("test-order.html")).isNotEmptyFile();
        assertThat(papers.resolve("pick-list.csv"))
                .content()
                .containsPattern("fuse-holder,,[23],,shelf,[^,]*,1,[12]\n");
        assertThat(papers.resolve("bay-sheet.html")).content().contains("https://bench.example/jobs/");
        assertThat(run("papers", plan, "--out", papers.toString(), "--no-test-order"))
                .isZero();
        assertThat(papers.resolve("test-order.html")).doesNotExist();
    }

    @Test
    void aFolderThatIsNotOursIsLeftAlone() throws IOException {
        Path letters = Files.createDirectory(folder.resolve("letters"));
        Path letter = Files.writeString(letters.resolve("letter.txt"), "Dear Sir");
        assertThat(planHatchback(letters)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(letter).hasContent("Dear Sir");
        assertThat(letters).isDirectoryNotContaining(path -> !path.equals(letter));
        assertThat(err.toString()).contains("letters");
    }

    @Test
    void aRefusedWishHasItsOwnCodeAndTheRestIsStillPlanned() {
        Path job = EXAMPLES.resolve("refused").resolve("remote-start-on-manual");
        assertThat(plan(
                        job.resolve("sheet.yaml"),
                        job.resolve("kit.yaml"),
                        job.resolve("order.yaml"),
                        folder.resolve("papers")))
                .as(err.toString())
                .isEqualTo(4);
        assertThat(out.toString()).contains("REFUSED remote-start", "instead:", "connect");
    }

    @Test
    void aBlankPlanIsOnHoldThroughoutAndCanBeProven() throws IOException {
        assertThat(run(
                        "blank",
                        "--sheet",
                        HATCHBACK.resolve("sheet.yaml").toString(),
                        "--kit",
                        HATCHBACK.resolve("kit.yaml").toString(),
                        "--order",
                        HATCHBACK.resolve("order.yaml").toString()))
                .isZero();
        Path blank = Files.writeString(folder.resolve("blank.yaml"), out.toString());
        assertThat(run("prove", blank.toString())).as(err.toString()).isEqualTo(5);
        assertThat(out.toString()).contains("HOLD");
    }

    @Test
    void everyCommandHelpsWithAnExample() {
        for (String command : List.of("demo", "plan", "prove", "papers", "blank")) {
            assertThat(run(command, "--help")).isZero();
            assertThat(out.toString()).contains("Example:", "./loomproof " + command);
        }
    }
}
