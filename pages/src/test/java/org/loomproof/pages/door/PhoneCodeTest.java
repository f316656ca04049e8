package org.loomproof.pages.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.OptionalLong;
import org.bouncycastle.util.encoders.Base32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.book.card.CardId;

/** Codes of a phone against those of the standard, and how long each is taken. */
class PhoneCodeTest {

    /** The secret of RFC 6238, appendix B. */
    private static final String PUBLISHED =
            Base32.toBase32String("12345678901234567890".getBytes(StandardCharsets.US_ASCII));

    /** The table of RFC 6238, appendix B, for SHA-1; of its eight digits a phone shows the last six (section 5.3 of RFC 4226). */
    @ParameterizedTest
    @CsvSource({
        "59, 94287082",
        "1111111109, 07081804",
        "1111111111, 14050471",
        "1234567890, 89005924",
        "2000000000, 69279037",
        "20000000000, 65353130"
    })
    void theCodesAreThoseOfTheStandard(long second, String published) {
        assertThat(new PhoneCode(PUBLISHED).at(Instant.ofEpochSecond(second))).isEqualTo(published.substring(2));
    }

    @Test
    void aCodeIsTakenInItsOwnStepAndTheTwoBesideIt() {
        PhoneCode phone = new PhoneCode(PUBLISHED);
        String code = phone.at(Instant.ofEpochSecond(3_000));
        assertThat(phone.step(code, Instant.ofEpochSecond(2_969)))
                .as("two before")
                .isEmpty();
        assertThat(phone.step(code, Instant.ofEpochSecond(2_970))).isEqualTo(OptionalLong.of(100));
        assertThat(phone.step(code, Instant.ofEpochSecond(3_029))).isEqualTo(OptionalLong.of(100));
        assertThat(phone.step(code, Instant.ofEpochSecond(3_059))).isEqualTo(OptionalLong.of(100));
        assertThat(phone.step(code, Instant.ofEpochSecond(3_060)))
                .as("two after")
                .isEmpty();
        assertThat(phone.step(code.substring(0, 3) + " " + code.substring(3), Instant.ofEpochSecond(3_000)))
                .as("as phones show it")
                .isPresent();
        assertThat(phone.step("", Instant.ofEpochSecond(3_000))).isEmpty();
    }

    @Test
    void noCodeDoesTwiceNorOneBeforeIt() {
        UsedCodes used = new UsedCodes(Clock.fixed(Instant.EPOCH, ZoneOffset.UTC));
        CardId ada = CardId.fresh();
        CardId bo = CardId.fresh();
        assertThat(used.use(ada, 100)).isTrue();
        assertThat(used.use(ada, 100)).isFalse();
        assertThat(used.use(ada, 99)).isFalse();
        assertThat(used.use(bo, 100)).isTrue();
        assertThat(used.use(ada, 101)).isTrue();
    }

    @Test
    void aNewSecretIsOneThatAPhoneTakes() {
        String secret = PhoneCode.newSecret();
        assertThat(Base32.decode(secret)).hasSize(20);
        assertThat(PhoneCode.isSecret(secret)).isTrue();
        assertThat(PhoneCode.isSecret(secret + "A")).isFalse();
        assertThat(PhoneCode.isSecret(secret.toLowerCase(Locale.ROOT))).isFalse();
        assertThat(PhoneCode.address(secret, "ada at the bench"))
                .isEqualTo("otpauth://totp/Loomproof%%3Aada%%20at%%20the%%20bench?secret=%s&issuer=Loomproof"
                        .formatted(secret));
    }
}
