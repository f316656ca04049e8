package org.loomproof.pages.door;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.pages.door.People.Added;

/** Which passwords will do. That many use these is common knowledge, no published source; the estimate is a kept library's. */
class PasswordsTest {

    private static Added judged(String password) {
        return Passwords.judged(password, "Odile Marrow", "odile");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "password1234",
                "123456789012",
                "qwertyuiop12",
                "aaaaaaaaaaaa",
                "abcabcabcabc",
                "iloveyou2026",
                "loomproof2026",
                "OdileMarrow1",
                "odileodileodile",
                "P@ssw0rd2026"
            })
    void whatSomebodyTriesFirstWillNotDo(String password) {
        assertThat(judged(password)).isEqualTo(Added.PASSWORD_TOO_EASY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "four brass kettles sing",
                "a kettle for Ada",
                "vq8!mzr20ktu",
                "ñandú bajo la lluvia",
                "湿った毛布と古い時計の音がする"
            })
    void wordsThatDoNotBelongTogetherWill(String password) {
        assertThat(judged(password)).isEqualTo(Added.DONE);
    }

    @Test
    void tooShortAndTooLongAreToldApart() {
        assertThat(judged("vq8!mzr20kt")).isEqualTo(Added.PASSWORD_TOO_SHORT);
        assertThat(judged("vq8!mzr20ktu".repeat(22))).isEqualTo(Added.PASSWORD_TOO_LONG);
    }

    @Test
    void theOwnNameHelpsWhoeverGuesses() {
        assertThat(Passwords.judged("zygmuntowicz7", "Bo Larch", "bo")).isEqualTo(Added.DONE);
        assertThat(Passwords.judged("zygmuntowicz7", "Jan Zygmuntowicz", "jan")).isEqualTo(Added.PASSWORD_TOO_EASY);
    }
}
