package org.loomproof.book.key;

import com.password4j.Argon2Function;
import com.password4j.BadParametersException;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.text.Normalizer;

/**
 * Passwords of people, as Argon2id hashes in the usual text form ({@code $argon2id$v=19$m=...}), with a salt each.
 *
 * <p>19 MiB, two passes, one lane: the OWASP Password Storage Cheat Sheet's least for Argon2id (read in an earlier year, from
 * memory).
 */
public final class PasswordHash {

    /** NIST SP 800-63B asks for eight at least, and OWASP ASVS 5.0 6.2.1 recommends fifteen; twelve for hands in gloves. */
    public static final int FEWEST_CHARACTERS = 12;

    /** ASVS 5.0 asks that long ones are taken; beyond this it is an attack on our patience. */
    public static final int MOST_CHARACTERS = 256;

    private static final Argon2Function FUNCTION = Argon2Function.getInstance(19 * 1024, 2, 1, 32, Argon2.ID);

    private PasswordHash() {}

    /** The hash of a new password. */
    public static String of(String password) {
        return Password.hash(normal(password)).addRandomSalt(16).with(FUNCTION).getResult();
    }

    /** True when the password is the one that was hashed. */
    public static boolean matches(String password, String hash) {
        if (password.length() > MOST_CHARACTERS) {
            return false;
        }
        try {
            return Password.check(normal(password), hash).with(Argon2Function.getInstanceFromHash(hash));
        } catch (BadParametersException e) {
            return false;
        }
    }

    private static String normal(String password) {
        return Normalizer.normalize(password, Normalizer.Form.NFKC);
    }
}
