package org.loomproof.intake.check;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Spot;
import org.loomproof.intake.layout.Cell;

/** Where one record has its wire, gathered from all its cells: what is said first stays, later cells fill what is left. */
final class Whereabouts {
    private Spot spot = Spot.NOT_SAID;
    private Evidence evidence = Evidence.IN_ITS_COLUMN;
    private @Nullable Origin origin;

    /** Whether anything is said yet. */
    boolean isSaid() {
        return spot.isSaid();
    }

    /** Whether it is said behind what it lies, and not only in which plug. */
    boolean hasPanel() {
        return !spot.panel().isEmpty();
    }

    /** What is said rests on this. */
    void on(Evidence other) {
        evidence = other;
    }

    /** Said by a cell of a column that is there for it. */
    void inItsColumn(Spot said, Cell cell) {
        spot = spot.or(said);
        origin = origin == null ? cell.text().origin() : origin;
        if (cell.takenOver()) {
            evidence = Evidence.TAKEN_OVER;
        }
    }

    /** Said by a heading above several records. */
    void inHeading(Spot said, Origin at) {
        spot = spot.or(said);
        evidence = Evidence.TAKEN_OVER;
        origin = at;
    }

    /** Said in passing, by a cell that is there for something else. */
    void amongOthers(Spot plug, Optional<Found<String>> place) {
        Spot said = new Spot(place.map(Found::value).orElse(""), plug.connector(), plug.cavity());
        if (said.isSaid()) {
            boolean first = !spot.isSaid();
            spot = spot.or(said);
            if (first) {
                // A cavity without the plug it is in says half of where the wire is.
                evidence = place.map(Found::evidence)
                        .orElse(plug.connector().isEmpty() ? Evidence.HALF_NAMED : Evidence.AMONG_OTHERS);
                origin = place.map(Found::origin).orElse(origin);
            }
        }
    }

    /**
     * Where the wire is, if anything was said.
     *
     * @param ofRecord where the record stands, for what has no place of its own in the notes
     */
    Optional<Answer<Spot>> answer(Origin ofRecord, boolean doubted) {
        if (!spot.isSaid()) {
            return Optional.empty();
        }
        Evidence on = spot.panel().isEmpty() && spot.connector().isEmpty() ? Evidence.HALF_NAMED : evidence;
        return Optional.of(new Answer<>(
                spot, on, Sureness.of(Field.PLACE, on, doubted), origin == null ? ofRecord : origin, spot.panel()));
    }
}
