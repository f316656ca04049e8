package org.loomproof.workshop.trade.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Messages;

class TradeDefaultsTest {
    private final TradeDefaults defaults = TradeDefaults.read();

    @Test
    void aFactoryRelayCoilIsUsuallyAboutTheCubeRelay() {
        Range<Ohms> coil = defaults.find("coil.resistance", Ohms.class).orElseThrow();
        assertThat(coil.typical()).isEqualTo(new Ohms(85));
        assertThat(12.0 / coil.high().value()).isCloseTo(0.1, within(1e-9));
        assertThat(12.0 / coil.low().value()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void milliUnitsAreTurnedIntoUnits() {
        assertThat(defaults.find("kit.standby", Amps.class)
                        .orElseThrow()
                        .typical()
                        .value())
                .isCloseTo(0.015, within(1e-12));
    }

    @Test
    void everyFigureIsARangeThatAReadingWouldSettle() {
        assertThat(defaults.listKeys())
                .hasSizeGreaterThan(20)
                .allSatisfy(key -> assertThat(defaults.findReading(key))
                        .as(key)
                        .get()
                        .asString()
                        .isNotBlank());
    }

    @Test
    void everyReadingIsSaidInWords() {
        Messages words = Messages.english();
        assertThat(defaults.listKeys())
                .allSatisfy(key -> assertThat(words.knows(
                                "reading." + defaults.findReading(key).orElseThrow()))
                        .as(key)
                        .isTrue());
    }

    @Test
    void theReadingOfAFigureIsFoundByTheWayToItOnTheSheet() {
        assertThat(defaults.findReading("circuits[doors].path[2].lamp.power")).contains("print");
        assertThat(defaults.findReading("circuits[starter].path[3].load.resistance"))
                .contains("amps-through");
        assertThat(defaults.findReading("circuits[doors].branches[0][1].switch.closed-resistance"))
                .contains("drop-across");
        assertThat(defaults.findReading("note")).isEmpty();
    }

    @Test
    void whatTheTradeHasNoUsualFigureForIsNotMadeUp() {
        assertThat(defaults.find("resistor.resistance", Ohms.class)).isEmpty();
    }

    @Test
    void askingInTheWrongUnitIsOurOwnMistake() {
        assertThatThrownBy(() -> defaults.find("coil.resistance", Volts.class)).hasMessageContaining("coil.resistance");
    }
}
