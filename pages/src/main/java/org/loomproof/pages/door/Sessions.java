package org.loomproof.pages.door;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.loomproof.book.card.CardId;

/**
 * Who is signed in. A cookie holds 256 bits of chance; only their hash is kept, in memory, so that a restart signs everybody out.
 */
public final class Sessions {

    /** Without a request for so long somebody is signed out; a technician under a dash must not be, somebody who went home must. */
    public static final Duration IDLE = Duration.ofMinutes(90);

    /** A working day. */
    public static final Duration LONGEST = Duration.ofHours(12);

    private static final int BYTES = 32;
    private static final SecureRandom CHANCE = new SecureRandom();

    /**
     * Somebody's session.
     *
     * @param person who
     * @param formMark goes with every form of the session; a request without it comes from elsewhere
     * @param device from which they signed in
     * @param begun when they signed in
     * @param seen when they last asked for something
     */
    public record Session(CardId person, String formMark, Device device, Instant begun, Instant seen) {

        private Session seenAt(Instant now) {
            return new Session(person, formMark, device, begun, now);
        }
    }

    /**
     * What is known of a device.
     *
     * @param name drawn by chance at sign-in; says which session is meant without giving it away
     * @param address from where it asks
     * @param isHandheld true for a phone or tablet, as it says itself
     */
    public record Device(CardId name, String address, boolean isHandheld) {}

    private final Map<String, Session> byHash = new ConcurrentHashMap<>();
    private final Clock clock;

    public Sessions(Clock clock) {
        this.clock = clock;
    }

    /** A new session; what is returned goes into the cookie and is kept nowhere else. */
    public String begin(CardId person, Device device) {
        Instant now = clock.instant();
        byHash.values().removeIf(session -> isOver(session, now));
        String token = chance();
        byHash.put(hash(token), new Session(person, chance(), device, now, now));
        return token;
    }

    /** The session of a cookie, unless it is over; being asked for keeps it alive. */
    public Optional<Session> find(String token) {
        Instant now = clock.instant();
        return Optional.ofNullable(byHash.computeIfPresent(
                hash(token), (hash, session) -> isOver(session, now) ? null : session.seenAt(now)));
    }

    /** Where somebody is signed in, the latest sign-in first. */
    public List<Session> of(CardId person) {
        Instant now = clock.instant();
        return byHash.values().stream()
                .filter(session -> session.person().equals(person) && !isOver(session, now))
                .sorted(Comparator.comparing(Session::begun)
                        .reversed()
                        .thenComparing(session -> session.device().name()))
                .toList();
    }

    /** Ends somebody's session on the device of that name; nobody else's. */
    public void end(CardId person, CardId device) {
        byHash.values()
                .removeIf(session -> session.person().equals(person)
                        && session.device().name().equals(device));
    }

    /** Ends the session of a cookie. */
    public void end(String token) {
        byHash.remove(hash(token));
    }

    /** Ends every session of somebody. */
    public void endAll(CardId person) {
        byHash.values().removeIf(session -> session.person().equals(person));
    }

    /** A text of 256 bits of chance. */
    public static String chance() {
        byte[] bytes = new byte[BYTES];
        CHANCE.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static boolean isOver(Session session, Instant now) {
        return session.seen().plus(IDLE).isBefore(now)
                || session.begun().plus(LONGEST).isBefore(now);
    }

    private static String hash(String token) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
