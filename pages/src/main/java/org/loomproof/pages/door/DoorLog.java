package org.loomproof.pages.door;

import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.book.card.CardId;

/**
 * What happened at the door, for whoever looks into the server's log after something went wrong: what, when, from which address, and by
 * which person's card. Never what was typed, since people type passwords into the wrong field; never a name.
 */
public final class DoorLog {

    /** What is told. */
    public enum What {
        UNLOCKED,
        UNLOCK_REFUSED,
        SIGNED_IN,
        SIGN_IN_REFUSED,
        SIGN_IN_MUST_WAIT,
        SIGNED_OUT,
        PASSWORD_CHANGED,
        PASSWORD_REFUSED,
        SECOND_STEP_BEGUN,
        SECOND_STEP_ENDED,
        ACCESS_TAKEN,
        ACCESS_GIVEN,
        RIGHT_MISSING,
        FORGED,
        FOREIGN_HOST,
        TOO_MANY_REQUESTS;

        /** True for what nobody does who means well. */
        boolean isRefusal() {
            return switch (this) {
                case UNLOCK_REFUSED,
                        SIGN_IN_REFUSED,
                        SIGN_IN_MUST_WAIT,
                        PASSWORD_REFUSED,
                        RIGHT_MISSING,
                        FORGED,
                        FOREIGN_HOST,
                        TOO_MANY_REQUESTS -> true;
                default -> false;
            };
        }
    }

    private static final System.Logger LOG = System.getLogger(DoorLog.class.getName());

    private final Clock clock;

    public DoorLog(Clock clock) {
        this.clock = clock;
    }

    /** Writes a line. */
    public void tell(What what, Optional<CardId> person, String address) {
        LOG.log(
                what.isRefusal() ? System.Logger.Level.WARNING : System.Logger.Level.INFO,
                "{0} {1} from {2} by {3}",
                clock.instant().toString(),
                what.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                address,
                person.map(CardId::value).orElse("nobody"));
    }
}
