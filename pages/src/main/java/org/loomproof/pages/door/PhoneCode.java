package org.loomproof.pages.door;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import javax.crypto.spec.SecretKeySpec;
import org.bouncycastle.util.encoders.Base32;

/**
 * The second step of signing in: six digits that somebody's phone shows, new every thirty seconds, drawn from a secret that phone and
 * book share (RFC 6238, with HMAC-SHA-1 as every such program on a phone can).
 */
public final class PhoneCode {

    private static final Duration STEP = Duration.ofSeconds(30);

    /** RFC 4226, section 4, recommends 160 bits. */
    private static final int SECRET_BYTES = 20;

    private static final Pattern SHAPE = Pattern.compile("[A-Z2-7]{" + SECRET_BYTES * Byte.SIZE / 5 + "}");
    private static final SecureRandom CHANCE = new SecureRandom();

    private final SecretKeySpec key;
    private final TimeBasedOneTimePasswordGenerator generator = new TimeBasedOneTimePasswordGenerator(STEP);

    /** Codes by a secret as {@link #newSecret} writes one. */
    public PhoneCode(String secret) {
        this.key = new SecretKeySpec(Base32.decode(secret), "HmacSHA1");
    }

    /** A new secret, in letters and digits (RFC 4648, section 6) that can be typed into a phone. */
    public static String newSecret() {
        byte[] secret = new byte[SECRET_BYTES];
        CHANCE.nextBytes(secret);
        return Base32.toBase32String(secret);
    }

    /** True for what {@link #newSecret} can have written. */
    public static boolean isSecret(String text) {
        return SHAPE.matcher(text).matches();
    }

    /** True when a phone with the secret shows the code about now. */
    public boolean fits(String code, Instant now) {
        return step(code, now).isPresent();
    }

    /** The address by which programs on phones take a secret over from a QR code. */
    public static String address(String secret, String signIn) {
        String name =
                URLEncoder.encode("Loomproof:" + signIn, StandardCharsets.UTF_8).replace("+", "%20");
        return "otpauth://totp/%s?secret=%s&issuer=Loomproof".formatted(name, secret);
    }

    /** What the phone shows at a moment. */
    public String at(Instant moment) {
        try {
            return generator.generateOneTimePasswordString(key, moment, Locale.ROOT);
        } catch (InvalidKeyException e) {
            throw new IllegalStateException("any bytes are a key of this kind", e);
        }
    }

    /**
     * The number of the step whose code this is: the one of now, or the one before or after it, since clocks differ (RFC 6238, section
     * 5.2); nothing when it is none of them.
     */
    OptionalLong step(String code, Instant now) {
        OptionalLong found = OptionalLong.empty();
        for (int off = -1; off <= 1; off++) {
            Instant moment = now.plus(STEP.multipliedBy(off));
            if (MessageDigest.isEqual(
                    at(moment).getBytes(StandardCharsets.UTF_8),
                    code.replaceAll("\\s", "").getBytes(StandardCharsets.UTF_8))) {
                found = OptionalLong.of(Math.floorDiv(moment.getEpochSecond(), STEP.toSeconds()));
            }
        }
        return found;
    }
}
