package org.loomproof.workshop.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;
import org.loomproof.workshop.words.ReaderUnits;
import org.loomproof.workshop.words.ReaderUnits.Sizes;

/** Wire gauges or square millimetres, degrees Celsius or Fahrenheit: whoever reads decides, by keywords of the locale. */
class ReaderUnitsTest {

    private static final Locale GAUGES = Locale.forLanguageTag("en-u-ms-ussystem-mu-fahrenhe");
    private static final Locale METRIC = Locale.forLanguageTag("en-u-ms-metric");

    /** Areas of gauges: ASTM B258, the table in docs/sources.md. Which gauge is no thinner than which metric size follows from it. */
    @ParameterizedTest
    @CsvSource({
        "0.35, 20 AWG",
        "0.5, 20 AWG",
        "0.75, 18 AWG",
        "1, 16 AWG",
        "1.5, 14 AWG",
        "2.5, 12 AWG",
        "4, 10 AWG",
        "6, 8 AWG",
        "10, 6 AWG",
        "16, 4 AWG",
        "50, 1/0 AWG",
        "95, 4/0 AWG"
    })
    void aMetricSizeIsFollowedByTheThinnestGaugeThatIsNoThinner(double area, String gauge) {
        SquareMillimetres size = new SquareMillimetres(area);
        assertThat(size.in(GAUGES)).isEqualTo(size + " (" + gauge + ")");
        assertThat(size.in(METRIC)).isEqualTo(size.toString());
        assertThat(size.in(Locale.ENGLISH)).isEqualTo(size.toString());
    }

    @Test
    void aGaugeIsFollowedByItsArea() {
        assertThat(WireGauge.area(18).in(METRIC)).isEqualTo("18 AWG (0.823 mm²)");
        assertThat(WireGauge.area(10).in(METRIC)).isEqualTo("10 AWG (5.26 mm²)");
        assertThat(WireGauge.area(18).in(GAUGES)).isEqualTo("18 AWG");
        assertThat(WireGauge.area(18).in(Locale.ENGLISH)).isEqualTo("18 AWG");
        assertThat(new SquareMillimetres(120).in(GAUGES))
                .as("none is that thick")
                .isEqualTo("120 mm²");
    }

    /** The fixed points of the two scales: ice, steam, and where both agree. */
    @ParameterizedTest
    @CsvSource({"0, 32 °F", "100, 212 °F", "-40, -40 °F", "85, 185 °F", "20, 68 °F"})
    void temperaturesFollowTheReader(double celsius, String fahrenheit) {
        assertThat(new Celsius(celsius).in(GAUGES)).isEqualTo(fahrenheit);
        assertThat(new Celsius(celsius).in(METRIC)).isEqualTo(new Celsius(celsius).toString());
    }

    @Test
    void aSignStandsBeforeTemperaturesOfWeather() {
        assertThat(new Celsius(-10).signed().in(Locale.ENGLISH)).isEqualTo("−10 °C");
        assertThat(new Celsius(-10).signed().in(GAUGES)).isEqualTo("+14 °F");
        assertThat(new Celsius(-30).signed().in(GAUGES)).isEqualTo("−22 °F");
    }

    @Test
    void messagesSpeakInTheUnitsOfTheirLocaleInEveryLanguage() {
        Phrase warm = Phrase.of("step.warmth", new Celsius(20));
        assertThat(Messages.english().text(warm)).isEqualTo("in a car that is at 20 °C all through");
        assertThat(Messages.in(GAUGES).text(warm)).isEqualTo("in a car that is at 68 °F all through");
        Phrase drain = Phrase.of(
                "info.drain",
                new Amps(0.02),
                new Amps(0.04),
                30,
                21,
                20,
                "-",
                new Celsius(20).signed(),
                new Celsius(-10).signed());
        assertThat(Messages.in(Locale.forLanguageTag("es-u-mu-fahrenhe")).text(drain))
                .contains("El equipo", "a +68 °F", "a +14 °F");
        assertThat(Messages.in(Locale.of("es")).text(drain)).contains("a +20 °C", "a −10 °C");
        assertThat(Messages.in(Locale.forLanguageTag("fr-u-mu-fahrenhe")).text(warm))
                .as("English where nobody speaks the language, in the reader's units all the same")
                .isEqualTo("in a car that is at 68 °F all through");
    }

    @Test
    void theLocaleCarriesThemAndNothingElse() {
        ReaderUnits units = new ReaderUnits(Optional.of(Sizes.AWG), true);
        Locale carried = units.with(Locale.forLanguageTag("es-u-nu-arab"));
        assertThat(carried.toLanguageTag()).isEqualTo("es-u-ms-ussystem-mu-fahrenhe");
        assertThat(ReaderUnits.of(Locale.forLanguageTag(carried.toLanguageTag())))
                .isEqualTo(units);
        assertThat(ReaderUnits.of(Locale.forLanguageTag("en-u-ms-uksystem-mu-kelvin")))
                .isEqualTo(ReaderUnits.PLAIN);
        assertThat(ReaderUnits.PLAIN.with(Locale.ENGLISH)).isEqualTo(Locale.ENGLISH);
    }
}
