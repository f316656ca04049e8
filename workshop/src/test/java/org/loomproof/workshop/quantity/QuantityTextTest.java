package org.loomproof.workshop.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.workshop.quantity.QuantityText.Outcome;

class QuantityTextTest {

    private static Unit<?> unit(String name) {
        return switch (name) {
            case "volts" -> Unit.VOLTS;
            case "amps" -> Unit.AMPS;
            case "ohms" -> Unit.OHMS;
            case "watts" -> Unit.WATTS;
            case "metres" -> Unit.METRES;
            case "area" -> Unit.SQUARE_MILLIMETRES;
            case "seconds" -> Unit.SECONDS;
            case "charge" -> Unit.AMP_HOURS;
            case "celsius" -> Unit.CELSIUS;
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static List<Double> read(String text, Unit<?> unit) {
        if (QuantityText.read(text, unit) instanceof Outcome.Read<?>(Range<?> range)) {
            return List.of(
                    range.low().value(), range.typical().value(), range.high().value());
        }
        throw new AssertionError(text + " is not read: " + QuantityText.read(text, unit));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "12 V, volts, 12, 12, 12",
        "12V, volts, 12, 12, 12",
        "300 mV, volts, 0.3, 0.3, 0.3",
        "148 mA, amps, 0.148, 0.148, 0.148",
        "150 µA, amps, 0.00015, 0.00015, 0.00015",
        "150 \u03bcA, amps, 0.00015, 0.00015, 0.00015",
        "0.3 ohm, ohms, 0.3, 0.3, 0.3",
        "0.3 Ω, ohms, 0.3, 0.3, 0.3",
        "0.3 \u2126, ohms, 0.3, 0.3, 0.3",
        "4.7 kohm, ohms, 4700, 4700, 4700",
        "10 MΩ, ohms, 1e7, 1e7, 1e7",
        "12 mohm, ohms, 0.012, 0.012, 0.012",
        "8..12 W, watts, 8, 10, 12",
        "8..9..12 W, watts, 8, 9, 12",
        "800 mA..1.2 A, amps, 0.8, 1, 1.2",
        "1.2 m, metres, 1.2, 1.2, 1.2",
        "25 cm, metres, 0.25, 0.25, 0.25",
        "2.5 mm2, area, 2.5, 2.5, 2.5",
        "2.5 mm², area, 2.5, 2.5, 2.5",
        "0.8 s, seconds, 0.8, 0.8, 0.8",
        "2 min, seconds, 120, 120, 120",
        "70 Ah, charge, 70, 70, 70",
        "-20 C, celsius, -20, -20, -20",
        "-40..85 °C, celsius, -40, 22.5, 85",
        ".5 A, amps, 0.5, 0.5, 0.5",
        "1e3 ohm, ohms, 1000, 1000, 1000",
    })
    void usualSpellingsAreRead(String text, String unit, double low, double typical, double high) {
        assertThat(read(text, unit(unit))).containsExactly(low, typical, high);
    }

    /** Solid copper areas by the gauge law; the published table of ASTM B258 gives them to 0.05 % (docs/sources.md). */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"18 AWG, 0.8230", "AWG 12, 3.3088", "10 awg, 5.2612", "1/0 AWG, 53.475", "4/0 AWG, 107.22"})
    void aGaugeIsReadAsTheAreaOfSolidCopper(String text, double squareMillimetres) {
        assertThat(read(text, Unit.SQUARE_MILLIMETRES).getFirst())
                .isCloseTo(squareMillimetres, Percentage.withPercentage(0.05));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "twelve volts, NotANumber",
        "'', NotANumber",
        "V, NotANumber",
        "NaN V, NotANumber",
        "Infinity V, NotANumber",
        "1.2.3 V, NotANumber",
        "1...2 V, NotANumber",
        "1..2..3..4 V, NotANumber",
        "0x10 V, NotANumber",
        "'12,5 V', DecimalComma",
        "12, NoUnit",
        "8..12, NoUnit",
        "12 A, WrongUnit",
        "12 volt, Read",
        "12 mv, WrongUnit",
        "-1 V, BeyondSense",
        "1e9 V, BeyondSense",
        "1e999 V, BeyondSense",
        "12..8 V, NotRising",
        "8..13..12 V, NotRising",
    })
    void whatIsWrongIsNamed(String text, String outcome) {
        assertThat(QuantityText.read(text, Unit.VOLTS).getClass().getSimpleName())
                .isEqualTo(outcome);
    }

    @Test
    void aMissingUnitAndADecimalCommaAreAnsweredWithWhatToWrite() {
        assertThat(QuantityText.read("8..12", Unit.WATTS)).isEqualTo(new Outcome.NoUnit<Watts>("8..12 W"));
        assertThat(QuantityText.read("0,75 mm2", Unit.SQUARE_MILLIMETRES))
                .isEqualTo(new Outcome.DecimalComma<SquareMillimetres>("0.75 mm2"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "148 mA",
                "0.3 ohm",
                "12 mohm",
                "4.7 kohm",
                "8..9..12 W",
                "8..12 W",
                "18 AWG",
                "2/0 AWG",
                "0.05 m",
                "-20 C"
            })
    void whatWasReadIsWrittenAsAPersonWouldWriteIt(String text) {
        Unit<?> unit = unit(
                switch (text.substring(text.lastIndexOf(' ') + 1)) {
                    case "mA" -> "amps";
                    case "ohm", "mohm", "kohm" -> "ohms";
                    case "W" -> "watts";
                    case "AWG" -> "area";
                    case "C" -> "celsius";
                    default -> "metres";
                });
        if (QuantityText.read(text, unit) instanceof Outcome.Read<?>(Range<?> range)) {
            assertThat(QuantityWriter.write(range.low(), range.typical(), range.high()))
                    .isEqualTo(text);
        } else {
            throw new AssertionError(text);
        }
    }

    @Test
    void anyValueIsWrittenSoThatExactlyTheSameIsReadBack() {
        long seed = 20261125;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double low = Math.pow(10, random.nextDouble(-5.5, 4));
            double high = random.nextBoolean() ? low : low * (1 + random.nextDouble());
            double typical = random.nextBoolean() ? low + (high - low) / 2 : low;
            List<Quantity> range = switch (random.nextInt(3)) {
                case 0 -> List.of(new Ohms(low), new Ohms(typical), new Ohms(high));
                case 1 -> List.of(new Amps(low / 2), new Amps(typical / 2), new Amps(high / 2));
                default -> List.of(new Celsius(low / 200), new Celsius(typical / 200), new Celsius(high / 200));
            };
            Unit<?> unit = Unit.of(range.getFirst());
            String text = QuantityWriter.write(range.get(0), range.get(1), range.get(2));
            assertThat(read(text, unit))
                    .as("seed %d, case %d: %s", seed, i, text)
                    .isEqualTo(range.stream().map(Quantity::value).toList());
        }
    }
}
