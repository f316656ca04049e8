package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.supply.SupplyProfile;
import org.loomproof.workshop.trade.table.Status;
import org.loomproof.workshop.trade.table.Table;
import org.loomproof.workshop.words.Messages;

/**
 * No verdict leans on a remembered figure alone. Beside each data row that is marked so stands what a source says that was
 * read, or what follows from it; put in its place, on either side, every example is proven to the same verdicts. What is not
 * put in another's place only makes verdicts stricter, or feeds none.
 */
class FiguresFromMemoryTest {

    private static final Path FILES = Path.of("src/main/resources/org/loomproof/workshop");

    /** Exactly 1/58 Ω mm²/m, so many milliohms for a metre of one square millimetre: IEC 60028, read. */
    private static final double COPPER = 1000.0 / 58;

    /** A full battery at rest: US Army TM 5-3805-262-20, read. A battery the wrong way round gives no more than itself. */
    private static final double FULL_BATTERY = 12.6;

    /**
     * Heat of copper, J/mm³ K: 385 J/kg K as published with a toolbox for motors (stem_wire, its copper, read), times the density that follows from
     * 0.15328 Ω g/m² over 1/58 Ω mm²/m (NBS Circular 31 and IEC 60028, read), 8.890 g/cm³.
     */
    private static final double HEAT = 385 * 0.15328 * 58 / 1e6;

    /** Which way the figures read stand from those remembered. */
    enum Side {
        LESS,
        MORE
    }

    /** Remembered rows that feed no verdict, or make one stricter only: why, and the test that holds it. */
    private static final Map<String, String> LEFT_AS_THEY_ARE = Map.of(
            "trade/fuse/bands.csv", "only make the ratio that was read larger: theBandsOnlyMakeTheRatioStricter",
            "trade/colour/words.csv", "a colour decides nothing: ExampleAnswersTest.namesRolesAndColoursDecideNothing",
            "meter/role/pulsed-wires.csv",
                    "no proof knows the meter: ArchitectureTest.aPackageKnowsOnlyWhatItsArrowsReach");

    @TempDir
    private Path folder;

    private Map<String, UnaryOperator<String>> replaced(Side side) {
        return Map.of(
                "trade/wire/metric.csv", row -> metric(row, side),
                "trade/fuse/blade.csv", row -> blade(row, side),
                "trade/wire/insulation.csv", row -> row.replace("0.00345", String.format(Locale.ROOT, "%.5f", HEAT)),
                "trade/supply/profiles.csv", row -> profile(row, side),
                "trade/supply/reversed.csv",
                        row -> side == Side.LESS ? row.replace(",14,", "," + FULL_BATTERY + ",") : row);
    }

    /** Between bare copper and the limit of flexible cables, IEC 60228 class 5, both read. */
    private static String metric(String row, Side side) {
        String[] cells = row.split(",", -1);
        cells[1] = side == Side.MORE ? cells[2] : Double.toString(COPPER / Double.parseDouble(cells[0]));
        return String.join(",", cells);
    }

    /** The kept figure, or that of the line through the two ratings that were read. */
    private static String blade(String row, Side side) {
        String[] cells = row.split(",", -1);
        double kept = Double.parseDouble(cells[1]);
        double line = onTheLine(Double.parseDouble(cells[0]));
        cells[1] = Double.toString(side == Side.LESS ? Math.min(kept, line) : Math.max(kept, line));
        return String.join(",", cells);
    }

    /**
     * Milliohms of a blade fuse, straight in logarithms through 10 A (1 mV at 130 mA, a school's table of drops) and 15 A (4.8 mΩ
     * of a maker's sheet, quoted and measured as 4.5 by a maker of oscilloscopes), both read.
     */
    private static double onTheLine(double rating) {
        double slope = Math.log(4.8 / (1 / 0.13)) / Math.log(15.0 / 10);
        return 1 / 0.13 * Math.pow(rating / 10, slope);
    }

    /** The return after cranking at once or ten times as slow; the dump over at once, or full for all of the 400 ms read. */
    private static String profile(String row, Side side) {
        if (row.startsWith("starting")) {
            return row.replace(",1.21,", side == Side.LESS ? ",1.171," : ",1.57,");
        }
        return side == Side.LESS
                ? row.replace(",0.51,", ",0.111,")
                : "load-dump,0.51,35,read\n" + row.replace(",0.51,", ",0.511,");
    }

    private static List<String> lines(String file) {
        try {
            return Files.readAllLines(FILES.resolve(file));
        } catch (IOException e) {
            throw new AssertionError(file, e);
        }
    }

    private static boolean isRemembered(String line) {
        return !line.startsWith("#") && List.of(line.split(",", -1)).contains(Status.MEMORY.word());
    }

    private void write(Side side) {
        replaced(side).forEach((file, other) -> {
            List<String> changed = lines(file).stream()
                    .map(line -> isRemembered(line) ? other.apply(line) : line)
                    .toList();
            Path place = folder.resolve("org/loomproof/workshop").resolve(file);
            try {
                Files.createDirectories(place.getParent());
                Files.write(place, changed);
            } catch (IOException e) {
                throw new AssertionError(file, e);
            }
        });
    }

    @BeforeEach
    void theFilesAreWhereTheyAreLookedFor() {
        assertThat(FILES).isDirectory();
    }

    @Test
    void everyFileWithARememberedRowIsAccountedFor() throws IOException {
        TreeSet<String> remembered = new TreeSet<>();
        try (Stream<Path> all = Files.walk(FILES)) {
            all.filter(file -> file.toString().endsWith(".csv"))
                    .map(file -> FILES.relativize(file).toString())
                    .filter(file -> lines(file).stream().anyMatch(FiguresFromMemoryTest::isRemembered))
                    .forEach(remembered::add);
        }
        TreeSet<String> accounted = new TreeSet<>(replaced(Side.LESS).keySet());
        accounted.addAll(LEFT_AS_THEY_ARE.keySet());
        assertThat(remembered).isEqualTo(accounted);
    }

    @ParameterizedTest
    @EnumSource
    void withTheFiguresReadInsteadEveryExampleIsProvenAlike(Side side) throws IOException {
        write(side);
        try (OtherTables other = new OtherTables(folder)) {
            for (Path example : Sample.of(ExampleFiles.list(), 3)) {
                String plan = planFile(example);
                assertThat(other.verdicts(plan))
                        .as("%s with %s", ExampleFiles.root().relativize(example), side)
                        .isEqualTo(VerdictList.verdicts(plan));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void withTheFiguresReadInsteadNoWireMayBeFusedOtherwise(Side side) throws IOException {
        write(side);
        try (OtherTables other = new OtherTables(folder)) {
            assertThat(other.ceilings()).isEqualTo(VerdictList.ceilings());
        }
    }

    /** The other way round: where a file is replaced by something that is not so, the proof sees it. */
    @Test
    void aTableThatIsReplacedIsTheOneThatIsRead() throws IOException {
        write(Side.LESS);
        Path wires = folder.resolve("org/loomproof/workshop/trade/wire/metric.csv");
        Files.write(
                wires,
                lines("trade/wire/metric.csv").stream()
                        .map(line -> isRemembered(line) ? line.replaceFirst(",", ",4") : line)
                        .toList());
        String plan = planFile(ExampleFiles.root().resolve("circuits/locks-knob-that-stays"));
        try (OtherTables other = new OtherTables(folder)) {
            assertThat(other.verdicts(plan)).isNotEqualTo(VerdictList.verdicts(plan));
        }
    }

    @Test
    void everyRememberedFuseLiesOnTheLineOfThoseRead() {
        List<String> out = new ArrayList<>();
        for (String line : lines("trade/fuse/blade.csv")) {
            if (isRemembered(line)) {
                String[] cells = line.split(",", -1);
                double ratio = Double.parseDouble(cells[1]) / onTheLine(Double.parseDouble(cells[0]));
                if (Math.abs(ratio - 1) > 0.1) {
                    out.add(line + " is " + ratio + " of it");
                }
            }
        }
        assertThat(out).isEmpty();
    }

    /** Fuses of one kind are told apart at 1.6 to 1: a maker's guide to gG fuses, read. */
    @Test
    void theBandsOnlyMakeTheRatioStricter() {
        assertThat(Table.read(Fuses.class, "rules.csv")
                        .findRow("rule", "selective-ratio")
                        .orElseThrow()
                        .status())
                .isEqualTo(Status.READ);
        assertThat(Fuses.selectiveRatio()).isCloseTo(1.6, within(1e-9));
    }

    @Test
    void aBatteryTheWrongWayRoundIsTakenForMoreThanItGives() {
        assertThat(SupplyProfile.reversed().value()).isGreaterThan(FULL_BATTERY);
    }

    private static String planFile(Path example) {
        ReadBrief given = ((Checked.Good<ReadBrief>) ExamplesAreReadTest.read(example)).value();
        return new PlanFileWriter(Messages.english())
                .write(new PlanFile(given, PlannedExamples.job(example).plan()));
    }
}
