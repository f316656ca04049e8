package org.loomproof.workshop.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.brief.read.GivenTexts;

/** The published schemas, by a general-purpose validator (draft 2020-12), against what our own reader says. */
class SchemaTest {

    private static final Path ROOT = Path.of("..");

    private static final Map<String, Schema> SCHEMAS = new ConcurrentHashMap<>();

    private static Schema schema(String noun) {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(
                            Files.readString(ROOT.resolve("docs/schemas/" + noun + ".schema.json")), InputFormat.JSON);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> faults(String noun, String yaml) {
        return SCHEMAS.computeIfAbsent(noun, SchemaTest::schema).validate(yaml, InputFormat.YAML).stream()
                .map(Object::toString)
                .toList();
    }

    @Test
    void validFilesAreValidByTheSchemaToo() {
        GivenTexts given = GivenTexts.valid();
        assertThat(faults("sheet", given.sheet())).isEmpty();
        assertThat(faults("kit", given.kit())).isEmpty();
        assertThat(faults("order", given.order())).isEmpty();
        assertThat(faults("plan", PlanTexts.byHand().text())).isEmpty();
    }

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> files = Files.walk(ROOT.resolve("examples"))) {
            return files
                    .filter(file -> file.getFileName().toString().matches("(sheet|kit|order)\\.yaml"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsValidByTheSchema(Path file) throws IOException {
        String noun = file.getFileName().toString().replace(".yaml", "");
        assertThat(faults(noun, Files.readString(file))).isEmpty();
    }

    @Test
    void whatWeWriteIsValidByTheSchema() {
        PlanFile file = PlanTexts.byHand().good();
        PlanFileWriter writer = new PlanFileWriter(PlanTexts.ENGLISH);
        assertThat(faults("plan", writer.write(file))).isEmpty();
        PlanFile blank =
                new PlanFile(file.given(), BlankPlan.of(file.given().brief().kit()));
        assertThat(faults("plan", writer.writeBlank(blank))).isEmpty();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "ground: negative | ground: negitive",
                "gearbox: manual | gearbix: manual",
                "drive: combustion | steps: 4",
                "40 A | 40",
                "40 A | 40 V",
                "8..10..12 W | eight W",
                "- id: doors | - role: horn",
                "- ground | - {fuse: {rating: 5 A}, wire: {length: 1 m}}",
                "lamp: {id: cabin-lamp, power: 8..10..12 W} | lamp: {id: cabin-lamp, watts: 10 W}",
                "lamp: {id: cabin-lamp, power: 8..10..12 W} | wire: {length: 2 m, resistance: 1 ohm}",
                "rest: ground | rest: grounded",
                "role: parking-lamp | role: other",
                "access: may-be-cut | access: may-be-burned",
                "positions: [off, side, head] | positions: [off]",
                "id: starter-solenoid | id: starter solenoid",
                "age-years: 3 | age-years: 300",
            })
    void aFaultySheetIsRefusedByBoth(String before, String after) {
        GivenTexts faulty = GivenTexts.valid().withSheet(before, after);
        assertThat(faults("sheet", faulty.sheet())).isNotEmpty();
        assertThat(faulty.problems()).isNotEmpty();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "8..16 V | 12 V",
                "role: siren | role: sirene",
                "kind: low-side, rating: 500 mA | kind: low-side",
                "kind: input, active: low | kind: input",
                "kind: high-side | kind: topside",
                "clamps: yes | clamps: perhaps",
                "on-in: sounding | on-in: without-supply",
                "kind: sounder | kind: noise",
            })
    void aFaultyKitIsRefusedByBoth(String before, String after) {
        GivenTexts faulty = GivenTexts.valid().withKit(before, after);
        assertThat(faults("kit", faulty.kit())).isNotEmpty();
        assertThat(faulty.problems()).isNotEmpty();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "21 days | 3 weeks",
                "siren] | sirens]",
                "rule-set: un-r116 | rule-set: none of them",
                "joint: solder | joint: glue",
                "usual-run: 1.5 m | usual-run: 1.5",
                "watch: all | watch: []",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, told: t, because: b}]",
                "stock: [] | changes: [{of: cabin-lamp, becomes: low, by: 20 %, told: t, because: b}]",
                "stock: [] | changes: [{of: cabin-lamp, becomes: brighter, by: 20 %, told: t, because: b}]",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, by: 20 %, because: b}]",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, by: 20, told: t, because: b}]",
            })
    void aFaultyOrderIsRefusedByBoth(String before, String after) {
        GivenTexts faulty = GivenTexts.valid().withOrder(before, after);
        assertThat(faults("order", faulty.order())).isNotEmpty();
        assertThat(faulty.problems()).isNotEmpty();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "do: hold | do: wait",
                "serves: watch-openings | serves: nobody",
                "to: K1 30 | to: K1 88",
                "circuit starter before | circuit starter at",
                "kind: diode, rating: 1 A | kind: diode",
                "length: 0.1 m | length: 0.1",
                "wish: remote-start | wish: hovering",
                "sha256: | sum:",
            })
    void aFaultyPlanIsRefusedByBoth(String before, String after) {
        PlanTexts faulty = PlanTexts.byHand().with(before, after);
        assertThat(faults("plan", faulty.text())).isNotEmpty();
        assertThat(faulty.problems()).isNotEmpty();
    }
}
