package org.loomproof.intake.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.intake.field.Spot;
import org.loomproof.intake.role.RoleReading;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.colour.WireColour;

/**
 * One circuit as it was understood; what is empty was not said, or not understood and then stands under {@code leftOver}.
 *
 * @param name what the source calls the circuit
 * @param role what it is for
 * @param colour its insulation
 * @param colourAsWritten the cell of a column of colours that is none we know
 * @param size its cross-section
 * @param behaviour how it switches
 * @param spot where it is found
 * @param steering {@code LHD}, {@code RHD}, or empty when it holds for both
 * @param validity for which vehicles it holds, as written: a trim, an option, years; empty when for all
 * @param doubted whether the writer marked it as doubtful
 * @param absent whether the writer says that the vehicle has no such circuit
 * @param notes what the writer added
 * @param leftOver what was not understood
 * @param origin from where to where it stands
 */
public record Entry(
        String name,
        Optional<Answer<RoleReading>> role,
        Optional<Answer<WireColour>> colour,
        String colourAsWritten,
        Optional<Answer<SquareMillimetres>> size,
        Optional<Answer<Behaviour>> behaviour,
        Optional<Answer<Spot>> spot,
        String steering,
        String validity,
        boolean doubted,
        boolean absent,
        List<Passage> notes,
        List<Passage> leftOver,
        Origin origin) {

    public Entry {
        notes = List.copyOf(notes);
        leftOver = List.copyOf(leftOver);
    }

    /** The same entry, its use and way of switching less sure: something speaks against them. */
    Entry contested() {
        return with(
                role.map(Answer::contested),
                colour,
                colourAsWritten,
                size,
                behaviour.map(Answer::contested),
                spot,
                leftOver);
    }

    /** The same entry with that answer for its role. */
    public Entry withRole(Answer<RoleReading> answer) {
        return with(Optional.of(answer), colour, colourAsWritten, size, behaviour, spot, leftOver);
    }

    /** The same entry with that answer for its colour. */
    public Entry withColour(Answer<WireColour> answer) {
        return with(role, Optional.of(answer), "", size, behaviour, spot, leftOver);
    }

    /** The same entry with that answer for its size. */
    public Entry withSize(Answer<SquareMillimetres> answer) {
        return with(role, colour, colourAsWritten, Optional.of(answer), behaviour, spot, leftOver);
    }

    /** The same entry with that answer for its behaviour. */
    public Entry withBehaviour(Answer<Behaviour> answer) {
        return with(role, colour, colourAsWritten, size, Optional.of(answer), spot, leftOver);
    }

    /** The same entry with that answer for its spot. */
    public Entry withSpot(Answer<Spot> answer) {
        return with(role, colour, colourAsWritten, size, behaviour, Optional.of(answer), leftOver);
    }

    /** The same entry, those words among what was understood. */
    Entry understood(Passage words) {
        return with(
                role,
                colour,
                colourAsWritten,
                size,
                behaviour,
                spot,
                leftOver.stream().filter(p -> !p.equals(words)).toList());
    }

    private Entry with(
            Optional<Answer<RoleReading>> otherRole,
            Optional<Answer<WireColour>> otherColour,
            String otherWritten,
            Optional<Answer<SquareMillimetres>> otherSize,
            Optional<Answer<Behaviour>> otherBehaviour,
            Optional<Answer<Spot>> otherSpot,
            List<Passage> otherLeftOver) {
        return new Entry(
                name,
                otherRole,
                otherColour,
                otherWritten,
                otherSize,
                otherBehaviour,
                otherSpot,
                steering,
                validity,
                doubted,
                absent,
                notes,
                otherLeftOver,
                origin);
    }

    /** The least sure of the fields that were read; 0 when the role was not. */
    public double sure() {
        return role.isEmpty()
                ? 0
                : Stream.of(role, colour, size, behaviour, spot)
                        .flatMap(Optional::stream)
                        .mapToDouble(Answer::sure)
                        .min()
                        .orElse(0);
    }
}
