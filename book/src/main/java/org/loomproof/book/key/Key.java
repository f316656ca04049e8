package org.loomproof.book.key;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Optional;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * A key of 256 bits. It seals bytes with AES-GCM (NIST SP 800-38D: random nonce of 96 bits, tag of 128), bound to what they
 * are about, so that a sealed value moved to another row or column does not open.
 *
 * <p>A sealed value is one byte for the format, the nonce, and the ciphertext with its tag.
 */
public final class Key {

    /** The length of every key. */
    public static final int BYTES = 32;

    private static final byte FORMAT = 1;
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    private static final SecureRandom CHANCE = new SecureRandom();

    private final byte[] bytes;

    Key(byte[] bytes) {
        if (bytes.length != BYTES) {
            throw new IllegalArgumentException("a key has 256 bits, not " + 8 * bytes.length);
        }
        this.bytes = bytes.clone();
    }

    /** A new random key. */
    public static Key random() {
        byte[] fresh = new byte[BYTES];
        CHANCE.nextBytes(fresh);
        return new Key(fresh);
    }

    /** A key for one purpose, from which neither this one nor its sisters can be told. */
    public Key derived(String purpose) {
        return new Key(expanded(purpose.getBytes(StandardCharsets.UTF_8)));
    }

    /** HKDF-Expand of RFC 5869 with SHA-256, one block; the extract step is not needed, since this key is uniform by itself. */
    byte[] expanded(byte[] info) {
        return mac(ByteBuffer.allocate(info.length + 1).put(info).put((byte) 1).array());
    }

    /** The bytes sealed; the same bytes never give the same seal twice. */
    public byte[] seal(byte[] plain, String about) {
        byte[] nonce = new byte[NONCE_BYTES];
        CHANCE.nextBytes(nonce);
        try {
            byte[] secret = cipher(Cipher.ENCRYPT_MODE, nonce, about).doFinal(plain);
            return ByteBuffer.allocate(1 + NONCE_BYTES + secret.length)
                    .put(FORMAT)
                    .put(nonce)
                    .put(secret)
                    .array();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java cannot seal", e);
        }
    }

    /** What was sealed; nothing when the key is another, a bit was changed, or it was about something else. */
    public Optional<byte[]> open(byte[] sealed, String about) {
        if (sealed.length < 1 + NONCE_BYTES + TAG_BITS / 8 || sealed[0] != FORMAT) {
            return Optional.empty();
        }
        byte[] nonce = Arrays.copyOfRange(sealed, 1, 1 + NONCE_BYTES);
        try {
            return Optional.of(cipher(Cipher.DECRYPT_MODE, nonce, about)
                    .doFinal(sealed, 1 + NONCE_BYTES, sealed.length - 1 - NONCE_BYTES));
        } catch (AEADBadTagException e) {
            return Optional.empty();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java cannot open a seal", e);
        }
    }

    /** Another key, sealed by this one. */
    public byte[] wrap(Key other, String about) {
        return seal(other.bytes, about);
    }

    /** The key that was wrapped, under the same conditions as {@link #open}. */
    public Optional<Key> unwrap(byte[] wrapped, String about) {
        return open(wrapped, about).map(Key::new);
    }

    /** A mark of 128 bits that the same bytes always get and nobody without the key can make: HMAC-SHA-256, its first half. */
    public byte[] mark(byte[] of) {
        return Arrays.copyOf(mac(of), BYTES / 2);
    }

    private byte[] mac(byte[] of) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(bytes, "HmacSHA256"));
            return mac.doFinal(of);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java has no HMAC", e);
        }
    }

    private Cipher cipher(int mode, byte[] nonce, String about) throws GeneralSecurityException {
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, new SecretKeySpec(bytes, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
        cipher.updateAAD(about.getBytes(StandardCharsets.UTF_8));
        return cipher;
    }

    /** Never the key itself. */
    @Override
    public String toString() {
        return "Key";
    }
}
