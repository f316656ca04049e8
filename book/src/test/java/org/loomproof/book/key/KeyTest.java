package org.loomproof.book.key;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

class KeyTest {

    private static final byte[] PLAIN = "under the left kick panel".getBytes(UTF_8);

    @Test
    void opensWhatItSealedAndNothingThatWasChangedMovedOrSealedByAnother() {
        Key key = Key.random();
        byte[] sealed = key.seal(PLAIN, "row 1");

        assertThat(key.open(sealed, "row 1")).hasValue(PLAIN);
        assertThat(key.open(sealed, "row 2")).isEmpty();
        assertThat(Key.random().open(sealed, "row 1")).isEmpty();
        for (int bit = 0; bit < 8 * sealed.length; bit++) {
            byte[] damaged = sealed.clone();
            damaged[bit / 8] ^= (byte) (1 << (bit % 8));
            assertThat(key.open(damaged, "row 1")).as("bit %d turned", bit).isEmpty();
        }
        for (int length = 0; length < sealed.length; length++) {
            assertThat(key.open(Arrays.copyOf(sealed, length), "row 1")).isEmpty();
        }
    }

    @Test
    void theSameBytesNeverGiveTheSameSeal() {
        Key key = Key.random();
        assertThat(key.seal(PLAIN, "row")).isNotEqualTo(key.seal(PLAIN, "row"));
    }

    /** AES-256-GCM, test case 14 of McGrew and Viega's GCM specification (from memory; the figures agree with Java's cipher). */
    @Test
    void opensThePublishedSealOfSixteenZeros() {
        byte[] published = HexFormat.of()
                .parseHex("01" + "000000000000000000000000" + "cea7403d4d606b6e074ec5d3baf39d18"
                        + "d0d1c8a799996bf0265b98b5d48ab919");
        assertThat(new Key(new byte[32]).open(published, "")).hasValue(new byte[16]);
    }

    /** RFC 5869, appendix A.1, the expand step: its first block. */
    @Test
    void derivesTheFirstBlockOfThePublishedExpansion() {
        Key extracted =
                new Key(HexFormat.of().parseHex("077709362c2e32df0ddc3f0dc47bba6390b6c73bb50f9c3122ec844ad7c2b3e5"));
        byte[] expanded = HexFormat.of().parseHex("3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf");
        byte[] info = HexFormat.of().parseHex("f0f1f2f3f4f5f6f7f8f9");

        // The purpose is text for us; the published one is bytes, so the step itself is asked.
        assertThat(extracted.expanded(info)).isEqualTo(expanded);
        assertThat(extracted.derived("one").seal(PLAIN, "")).isNotEmpty();
        byte[] sealed = extracted.derived("one").seal(PLAIN, "");
        assertThat(extracted.derived("one").open(sealed, "")).hasValue(PLAIN);
        assertThat(extracted.derived("two").open(sealed, "")).isEmpty();
    }

    /** Argon2id, version 1.3, t=2 m=64 MiB p=1, "password" and "somesalt": test vectors of the reference code (from memory). */
    @Test
    void stretchesAsTheReferenceCodeDoes() {
        Key stretched = new Stretching(64 * 1024, 2, 1).key(Passphrase.of("password"), "somesalt".getBytes(UTF_8));
        Key published =
                new Key(HexFormat.of().parseHex("09316115d5cf24ed5a15a31a3ba326e5cf32edc24702987c02b6566f61913cf7"));

        assertThat(published.open(stretched.seal(PLAIN, ""), "")).hasValue(PLAIN);
    }

    @Test
    void thePassphraseIsTheSameHoweverItsLettersAreComposed() {
        Stretching quick = new Stretching(8, 1, 1);
        byte[] salt = Stretching.newSalt();
        Key composed = quick.key(Passphrase.of("caf\u00e9 am Markt"), salt);
        Key apart = quick.key(Passphrase.of("cafe\u0301 am Markt"), salt);

        assertThat(apart.open(composed.seal(PLAIN, ""), "")).hasValue(PLAIN);
    }

    @Test
    void aPasswordIsKnownByItsHashAndNoOtherIs() {
        String hash = PasswordHash.of("kettle under the stairs");

        assertThat(hash).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").doesNotContain("kettle");
        assertThat(PasswordHash.matches("kettle under the stairs", hash)).isTrue();
        assertThat(PasswordHash.matches("kettle under the stair", hash)).isFalse();
        assertThat(PasswordHash.matches("kettle under the stairs", "no hash at all"))
                .isFalse();
        assertThat(PasswordHash.of("kettle under the stairs")).isNotEqualTo(hash);
    }

    @Test
    void nothingSecretIsPrinted() {
        assertThat(Key.random()).hasToString("Key");
        assertThat(Passphrase.of("kettle under the stairs")).hasToString("Passphrase");
    }
}
