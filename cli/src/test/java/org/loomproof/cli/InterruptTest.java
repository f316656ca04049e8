package org.loomproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.workshop.words.Messages;

/**
 * What a person gets who presses Ctrl-C, on the real process. The signal is sent as soon as the process has told on its error
 * stream what it is at, so that no clock decides what is met.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class InterruptTest {

    private static final Path VAN = Path.of("..", "examples", "bakery-van");

    private final ObjectMapper mapper = new ObjectMapper();

    private Path folder;
    private Path plan;
    private JsonNode whole;

    @BeforeAll
    void planTheVan(@TempDir Path scratch) throws IOException {
        folder = scratch;
        Path papers = folder.resolve("papers");
        whole = mapper.readTree(run(
                "plan",
                "--sheet",
                VAN.resolve("sheet.yaml").toString(),
                "--kit",
                VAN.resolve("kit.yaml").toString(),
                "--order",
                VAN.resolve("order.yaml").toString(),
                "--out",
                papers.toString(),
                "--json"));
        plan = papers.resolve("plan.yaml");
    }

    private static String run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), Messages.english())
                .execute(args);
        assertThat(code).as(err.toString()).isZero();
        return out.toString();
    }

    private record Ended(int code, String out, String err) {}

    /** Starts the command in a machine of its own and interrupts it once its error stream tells the words. */
    private Ended interrupted(String words, String... args) throws IOException, InterruptedException {
        Path out = Files.createTempFile(folder, "out", "");
        List<String> command = new ArrayList<>(interruptible());
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Duser.language=en", "-Dloomproof.terminal=true", "-cp"));
        command.addAll(List.of(System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(args));
        Process process =
                new ProcessBuilder(command).redirectOutput(out.toFile()).start();
        StringBuilder err = new StringBuilder();
        try (Reader told = new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8)) {
            boolean sent = false;
            for (int c = told.read(); c >= 0; c = told.read()) {
                err.append((char) c);
                if (!sent && err.indexOf(words) >= 0) {
                    sent = true;
                    assertThat(new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
                                    .start()
                                    .waitFor())
                            .isZero();
                }
            }
            assertThat(sent).as(err.toString()).isTrue();
        } finally {
            process.destroy();
        }
        return new Ended(process.waitFor(), Files.readString(out), err.toString());
    }

    /** A build that runs in the background of a shell hands down that Ctrl-C is ignored; where env can undo that, it does. */
    private static List<String> interruptible() throws IOException, InterruptedException {
        List<String> undoing = List.of("env", "--default-signal=INT");
        List<String> tried = new ArrayList<>(undoing);
        tried.add("true");
        boolean can = new ProcessBuilder(tried)
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor()
                == 0;
        return can ? undoing : List.of();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(plan.getParent())) {
            return all.sorted().toList();
        }
    }

    private static Map<String, String> verdicts(JsonNode result) {
        Map<String, String> verdicts = new HashMap<>();
        result.get("claims")
                .forEach(claim -> verdicts.put(
                        claim.get("id").asText(), claim.get("verdict").asText()));
        return verdicts;
    }

    private void tellsWhatWasFound(Ended ended) throws IOException {
        assertThat(ended.code()).as(ended.err()).isEqualTo(ExitCode.STOPPED);
        JsonNode result = mapper.readTree(ended.out());
        assertThat(result.get("bounds").toString()).contains("The search was stopped");
        Map<String, String> all = verdicts(whole);
        Map<String, String> told = verdicts(result);
        assertThat(told).containsKeys(all.keySet().toArray(String[]::new)).containsValue("open");
        // What the whole proof finds nothing to say of, and so leaves out, is open here.
        told.forEach((claim, verdict) -> assertThat(verdict).as(claim).isIn("open", all.getOrDefault(claim, "open")));
    }

    @Test
    void aProofThatIsInterruptedAtOnceTellsWhatIsDecidedAndLeavesTheRestOpen() throws Exception {
        List<Path> before = files();
        Messages english = Messages.english();
        tellsWhatWasFound(interrupted(english.text("progress.reading"), "prove", plan.toString(), "--json"));
        tellsWhatWasFound(interrupted(english.text("progress.proving"), "prove", plan.toString(), "--json"));
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void asTextItSaysSoAndEndsWithItsLastLine() throws Exception {
        Ended ended = interrupted(Messages.english().text("progress.proving"), "prove", plan.toString());
        assertThat(ended.code()).as(ended.err()).isEqualTo(ExitCode.STOPPED);
        assertThat(ended.out().replaceAll("\\s+", " ")).contains("The search was stopped");
        assertThat(ended.out().lines().toList().getLast()).startsWith("next:");
    }

    @Test
    void aSearchForFaultsThatIsInterruptedTellsWhatItHas() throws Exception {
        Ended ended = interrupted(" faults and slips looked at", "faults", plan.toString(), "--json");
        assertThat(ended.code()).as(ended.err()).isEqualTo(ExitCode.STOPPED);
        JsonNode result = mapper.readTree(ended.out());
        assertThat(result.get("bounds").toString()).contains("were not looked at");
    }
}
