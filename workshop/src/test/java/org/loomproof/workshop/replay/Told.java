package org.loomproof.workshop.replay;

/**
 * A command, or a blow to the car.
 *
 * @param seconds when
 * @param command which
 */
record Told(double seconds, Command command) {

    /** What a person tells a controller by its sender and its button, and what strikes the car. */
    enum Command {
        ARM,
        DISARM,
        AGAIN,
        OVERRIDE,
        LIGHT_BLOW,
        HARD_BLOW
    }
}
