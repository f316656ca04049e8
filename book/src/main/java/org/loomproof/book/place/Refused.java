package org.loomproof.book.place;

/** Thrown inside the book when it must not go on, and turned into an answer at its door. */
public final class Refused extends RuntimeException {

    private final transient Refusal refusal;

    /** @param refusal why */
    public Refused(Refusal refusal) {
        super(refusal.name());
        this.refusal = refusal;
    }

    /** @param cause what the machine said, for the log of whoever runs the server */
    public Refused(Refusal refusal, Throwable cause) {
        super(refusal.name(), cause);
        this.refusal = refusal;
    }

    /** Why. */
    public Refusal refusal() {
        return refusal;
    }
}
