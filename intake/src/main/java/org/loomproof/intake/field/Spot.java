package org.loomproof.intake.field;

/**
 * Where a wire is found, as written; an empty text means not said.
 *
 * @param panel the panel, trim or part of the vehicle
 * @param connector the connector
 * @param cavity its place in that
 */
public record Spot(String panel, String connector, String cavity) {

    public static final Spot NOT_SAID = new Spot("", "", "");

    public boolean isSaid() {
        return !(panel + connector + cavity).isEmpty();
    }

    /** This, and from the other what this leaves open. */
    public Spot or(Spot other) {
        return new Spot(
                panel.isEmpty() ? other.panel : panel,
                connector.isEmpty() ? other.connector : connector,
                cavity.isEmpty() ? other.cavity : cavity);
    }
}
