package org.loomproof.workshop.trade.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourReaderTest {
    @ParameterizedTest
    @CsvSource({
        "GN/BK, GN/BK, ''",
        "gn-bk, GN/BK, ''",
        "GNBK, GN/BK, ''",
        "green, GN, ''",
        "Green/Black, GN/BK, ''",
        "green with black tracer, GN/BK, ''",
        "green w/ black stripe, GN/BK, ''",
        "PNK w/ BLU tracer, PK/BU, ''",
        "LT GRN/blk, GN/BK, light",
        "Lt. green - black, GN/BK, light",
        "dkblu, BU, dark",
        "DK BLU / LT GRN, BU/GN, dark/light",
        "BLK/LT BLU, BK/BU, /light",
        "black stripe on white, WH/BK, ''",
        "white on purple, VT/WH, ''",
        "purple (white tracer), VT/WH, ''",
        "W/BU, WH/BU, ''",
        "YEL/GRA, YE/GY, ''",
        "grey, GY, ''",
        "Gray, GY, ''",
        "tan, BN, light",
        "turquoise/orange, TQ/OG, ''",
        "RDBU, RD/BU, ''",
        "GNYE, GN/YE, ''",
        "brn/wht, BN/WH, ''",
        "solid red, RD, ''",
    })
    void readsWhatTechniciansWrite(String text, String letters, String shade) {
        WireColour colour = ColourReader.read(text).orElseThrow();
        assertThat(colour.letters()).isEqualTo(letters);
        assertThat(colour.shade()).isEqualTo(shade);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "B",
                "G",
                "B/G",
                "P",
                "red/blue/green",
                "light",
                "white on",
                "on red",
                "12 V",
                "no idea",
                "green light",
                "cerulean blue"
            })
    void whatIsNoColourOrMightBeTwoIsNotRead(String text) {
        assertThat(ColourReader.read(text)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Colour.class)
    void everyColourIsReadByItsNameAndItsCode(Colour colour) {
        Optional<WireColour> plain = Optional.of(new WireColour(colour, Optional.empty(), ""));
        assertThat(ColourReader.read(colour.name())).isEqualTo(plain);
        assertThat(ColourReader.read(colour.code())).isEqualTo(plain);
    }

    @Test
    void whatWasReadReadsTheSameFromItsLetters() {
        for (Colour base : Colour.values()) {
            for (Colour tracer : Colour.values()) {
                WireColour colour = new WireColour(base, Optional.of(tracer), "");
                assertThat(ColourReader.read(colour.letters())).contains(colour);
                assertThat(ColourReader.read(base.code() + tracer.code())).contains(colour);
            }
        }
    }
}
