package org.loomproof.book.key;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.security.SecureRandom;

/**
 * How a passphrase becomes a key: Argon2id (RFC 9106) with a salt of its own.
 *
 * @param memoryKib memory to fill, in KiB
 * @param passes how often it is gone over
 * @param lanes how many parts of it can be filled beside each other
 */
public record Stretching(int memoryKib, int passes, int lanes) {

    /** RFC 9106 section 4, the second recommended choice: 64 MiB, three passes, four lanes. */
    public static final Stretching STANDARD = new Stretching(64 * 1024, 3, 4);

    /** RFC 9106 section 4: 128 bits are enough for all. */
    public static final int SALT_BYTES = 16;

    public Stretching {
        if (lanes < 1 || passes < 1 || memoryKib < 8 * lanes) {
            throw new IllegalArgumentException(
                    "not Argon2: %d KiB, %d passes, %d lanes".formatted(memoryKib, passes, lanes));
        }
    }

    /** A salt for one book. */
    public static byte[] newSalt() {
        byte[] salt = new byte[SALT_BYTES];
        new SecureRandom().nextBytes(salt);
        return salt;
    }

    /** The key of 256 bits that the passphrase gives with this salt. */
    public Key key(Passphrase passphrase, byte[] salt) {
        return new Key(Argon2Function.getInstance(memoryKib, passes, lanes, Key.BYTES, Argon2.ID)
                .hash(passphrase.bytes(), salt)
                .getBytes());
    }
}
