package org.loomproof.book.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.book.vehicle.VehicleNumber.Standing;

class VehicleNumberTest {

    /**
     * The worked example of 49 CFR 565.15 (its table of check digit computation, digit 8), the one most handbooks print (digit X),
     * and seventeen ones, all from memory.
     */
    @ParameterizedTest
    @CsvSource({"1G4AH59H45G118341, 4", "1M8GDM9AXKP042788, X", "11111111111111111, 1"})
    void publishedNumbersAgree(String number, String digit) {
        VehicleNumber read = new VehicleNumber(number);
        assertThat(read.checkDigit()).isEqualTo(digit);
        assertThat(read.standing()).isEqualTo(Standing.AGREES);
    }

    /** The weights are chosen so that one misread digit cannot hide; letters of the same value can stand for each other. */
    @Test
    void anyOneDigitMisreadAnywhereIsNoticed() {
        String good = "11111111111111111";
        for (int at = 0; at < good.length(); at++) {
            for (char digit = '0'; digit <= '9'; digit++) {
                if (digit != '1') {
                    String misread = good.substring(0, at) + digit + good.substring(at + 1);
                    assertThat(new VehicleNumber(misread).standing())
                            .as(misread)
                            .isEqualTo(Standing.DISAGREES);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1M8GDM9AXKP04278",
        "1M8GDM9AXKP0427888",
        "1M8GDM9AXKPO42788",
        "1M8GDM9AXKPI42788",
        "1M8GDM9AXKPQ42788",
        "-",
        "1M8GDM9AXKPÉ42788"
    })
    void whatIsNoNumberIsSaidToBeNone(String text) {
        assertThat(new VehicleNumber(text).standing()).isEqualTo(Standing.NO_NUMBER);
    }

    @Test
    void spacesHyphensAndSmallLettersAreAsPeopleWriteThem() {
        assertThat(new VehicleNumber("1m8-gdm9 axkp 042788").text()).isEqualTo("1M8GDM9AXKP042788");
    }
}
