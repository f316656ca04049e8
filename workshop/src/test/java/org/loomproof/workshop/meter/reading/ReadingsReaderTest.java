package org.loomproof.workshop.meter.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.read.Slips;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.meter.reading.MeterFacts.Pace;
import org.loomproof.workshop.meter.reading.Step.KeyAt;
import org.loomproof.workshop.meter.reading.Step.Worked;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemText;
import org.loomproof.workshop.words.Messages;

class ReadingsReaderTest {

    private static final String WHOLE = """
            wire,step,value,unit,battery,meter,place,colour,note
            battery,key off,12.6,V,,,,,
            green,key off,~0,V,12.6,10M,left kick panel,GN/BK,behind the plug
            green,key on,"12,4V",,12.3,,,,
            green,cranking,9..11,V,10.4,min/max,,,
            green,opened rear-door + asleep,floating,V,,,,,
            green,running,AC 2.1,V,,,,,
            green,battery off,OL,ohm,,,,,
            green,with 1 kohm,not taken,V,,,,,
            """;

    private final ReadingsReader reader = new ReadingsReader(Map.of("rear-door", Worked.DOOR));

    private List<Reading> good(String text) {
        Checked<Readings> read = reader.read(new SourceText("r.csv", text));
        assertThat(read).isInstanceOf(Checked.Good.class);
        return ((Checked.Good<Readings>) read).value().readings();
    }

    private List<String> problems(String text) {
        Checked<Readings> read = reader.read(new SourceText("r.csv", text));
        assertThat(read).isInstanceOf(Checked.Bad.class);
        return ((Checked.Bad<Readings>) read)
                .problems().stream()
                        .map(p -> ProblemText.line(p, Messages.english()))
                        .toList();
    }

    private Shown one(String value, String unit) {
        return good("wire;step;value;unit\nw;key on;" + value + ";" + unit + "\n")
                .getFirst()
                .shown();
    }

    @Test
    void everyFormOfValueThatTechniciansWriteIsRead() {
        List<Reading> all = good(WHOLE);
        assertThat(all).hasSize(8);
        assertThat(all.get(1).shown()).isEqualTo(new Shown.Steady(0, 0.5));
        assertThat(all.get(2).shown()).isEqualTo(new Shown.Steady(12.4, 0.1));
        assertThat(all.get(3).shown()).isEqualTo(new Shown.Moving(9, 11));
        assertThat(all.get(3).meter().pace()).isEqualTo(Pace.FAST);
        assertThat(all.get(4).shown()).isEqualTo(new Shown.Floating());
        assertThat(all.get(4).step())
                .isEqualTo(Step.REST.working(Worked.DOOR).fallenAsleep().named("rear-door"));
        assertThat(all.get(5).shown()).isEqualTo(new Shown.Alternating(2.1));
        assertThat(all.get(6).measured()).isEqualTo(Measured.OHMS);
        assertThat(all.get(6).shown()).isEqualTo(new Shown.Overload());
        assertThat(all.get(7).shown()).isEqualTo(new Shown.NotTaken());
        assertThat(all.get(7).step().resistorOhms()).hasValue(1000);
    }

    @Test
    void aLineWithoutBatteryTakesThatOfTheBatterysOwnLineAtTheSameKeyPosition() {
        List<Reading> all = good(WHOLE);
        assertThat(all.get(4).batteryVolts()).hasValue(12.6);
        assertThat(all.get(5).batteryVolts()).isEmpty();
        assertThat(all.get(3).batteryVolts()).hasValue(10.4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12.4|V|12.4|0.1",
                "12,4|V|12.4|0.1",
                "350 mV||0.35|0.001",
                "-0.02|V|-0.02|0.01",
                "4k7|ohm||",
                "4,7 k||4700|100",
                "0.3 Ω||0.3|0.1",
                "12.40V|A|12.4|0.01",
                "1.2 Mohm||1200000|100000"
            })
    void numbersKeepTheirLastDigit(String value, String unit, Double number, Double digit) {
        String cell = unit == null ? "" : unit;
        if (number == null) {
            assertThat(problems("wire;step;value;unit\nw;key on;" + value + ";" + cell + "\n"))
                    .hasSize(1);
            return;
        }
        Shown.Steady shown = (Shown.Steady) one(value, cell);
        assertThat(shown.value()).isEqualTo(number, org.assertj.core.data.Offset.offset(1e-9 * Math.abs(number)));
        assertThat(shown.resolution()).isEqualTo(digit, org.assertj.core.data.Offset.offset(1e-9 * digit));
    }

    @Test
    void tabsAndSemicolonsAndOtherOrdersOfColumnsDo() {
        String tabs = "Step\tWire\tUnit\tValue\nkey on\tw\tV\t12,1\n";
        assertThat(good(tabs).getFirst().shown()).isEqualTo(new Shown.Steady(12.1, 0.1));
        assertThat(good(tabs).getFirst().step().key()).isEqualTo(KeyAt.ON);
    }

    @Test
    void aDecimalCommaThatTheSeparatorToreIsPutTogether() {
        Reading torn =
                good("wire,step,value,unit,battery\nw,key on,12,4V,,12,6\n").getFirst();
        assertThat(torn.shown()).isEqualTo(new Shown.Steady(12.4, 0.1));
        assertThat(torn.batteryVolts()).hasValue(12.6);
        assertThat(good("wire,step,value,unit\nw,key on,AC 2,1,V\n").getFirst().shown())
                .isEqualTo(new Shown.Alternating(2.1));
    }

    @Test
    void allProblemsAreToldAtOnceEachWithItsLine() {
        List<String> told = problems("""
                wire,step,value,unit,batery
                w,key onn,12.4,V,
                ,key on,maybe,V,
                w,cranking + key on,1,V,
                w,opened ladder,900,V,
                w,key on,3,furlong,
                w,key on,5,,
                """);
        assertThat(told).hasSize(9);
        assertThat(told.get(0)).startsWith("r.csv:1").contains("did you mean battery?");
        assertThat(told.get(1)).startsWith("r.csv:2").contains("did you mean key on?");
        assertThat(told.get(2)).startsWith("r.csv:3");
        assertThat(told).anyMatch(p -> p.startsWith("r.csv:5") && p.contains("ladder"));
        assertThat(told.getLast()).startsWith("r.csv:7").contains("wanted a unit");
    }

    @Test
    void anEmptyFileAndOneWithoutHeaderAreTold() {
        assertThat(problems("")).hasSize(1).first().asString().contains("wanted a header");
        assertThat(problems("wire,step,value,unit\n")).hasSize(1);
        assertThat(problems("w,key on,12.4,V\n")).hasSizeGreaterThan(4);
    }

    @Test
    void aMetersWordsAreUnderstood() {
        assertThat(MeterFacts.read("")).isEqualTo(MeterFacts.USUAL);
        assertThat(MeterFacts.read("1 Mohm ±(0.8%+3) slow")).isEqualTo(new MeterFacts(1e6, 0.8, 3, Pace.SLOW));
        assertThat(MeterFacts.read("10M peak").pace()).isEqualTo(Pace.FAST);
        assertThat(MeterFacts.USUAL.limit(12.4, 0.01)).isEqualTo(0.062 + 0.02 + 0.005, offset());
    }

    private static org.assertj.core.data.Offset<Double> offset() {
        return org.assertj.core.data.Offset.offset(1e-12);
    }

    @Test
    void aStepIsWrittenAsItIsRead() {
        StepReader steps = new StepReader(Map.of("rear-door", Worked.DOOR));
        for (String each : steps.accepted()) {
            Step step = steps.read(each).orElseThrow();
            assertThat(steps.read(step.word())).contains(step);
        }
        assertThat(steps.read("opened door + key on + asleep").orElseThrow().word())
                .isEqualTo("key on + opened door + asleep");
        assertThat(steps.read("key on + key off")).isEmpty();
        assertThat(steps.read("asleep").orElseThrow().afterSeconds()).isEqualTo(OptionalDouble.empty());
    }

    /** Seeded slips and noise: readings or problems with lines, never an exception. */
    @Test
    void aMangledFileGivesReadingsOrProblems() {
        Random random = new Random(Sample.seed());
        int bad = 0;
        int rounds = Sample.count(300, 30_000);
        for (int round = 0; round < rounds; round++) {
            String text = Slips.mangled(WHOLE, random);
            if (random.nextInt(4) == 0) {
                text = text.replace(',', "\t;,".charAt(random.nextInt(3)));
            }
            Checked<Readings> read;
            try {
                read = reader.read(new SourceText("r.csv", text));
            } catch (RuntimeException e) {
                throw new AssertionError("round " + round + "\n" + text, e);
            }
            if (read instanceof Checked.Bad<Readings>(List<Problem> problems)) {
                bad++;
                assertThat(problems)
                        .allSatisfy(p -> assertThat(ProblemText.line(p, Messages.english()))
                                .isNotBlank());
            }
        }
        assertThat(bad).isGreaterThan(rounds / 3);
    }
}
