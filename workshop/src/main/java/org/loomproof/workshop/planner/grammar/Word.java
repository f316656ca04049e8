package org.loomproof.workshop.planner.grammar;

import java.util.List;
import java.util.stream.Stream;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.grammar.Tie.Way;

/**
 * One coupling of the grammar.
 *
 * <pre>
 * coupling = [pull] [through] [from-supply] [to-body] {relay} [buffer]
 * pull     = resistor between the source and (supply | body)
 * tie      = [diode] [resistor] [contact | buffer output]
 * relay    = changeover contact, coil, clamp diode
 * coil     = (source [diode] | buffer output | contact of the first relay) to (supply | body)
 * buffer   = input on the source, output to the body
 * </pre>
 *
 * The source is what decides, the target is what is worked. Where one source works several targets, ties and relays stand
 * once for each target, and isolating diode and buffer once for all. Where several sources work one target, pull, diode and
 * isolating diode stand once for each source. This is the one extension of the bound.
 *
 * @param through between source and target
 * @param fromSupply between the fused supply and the target
 * @param toBody between the target and the body
 * @param coils of the relays, the first one first
 * @param buffer which kind, if any
 * @param pull of the source
 */
public record Word(Tie through, Tie fromSupply, Tie toBody, List<Coil> coils, Buffering buffer, Pull pull) {

    /** A word without a pull. */
    public Word(Tie through, Tie fromSupply, Tie toBody, List<Coil> coils, Buffering buffer) {
        this(through, fromSupply, toBody, coils, buffer, Pull.NONE);
    }

    /** Whether there is a buffer, and what it works on. */
    public enum Buffering {
        NONE,
        ON_GROUND,
        ON_SUPPLY
    }

    /** The bound: what one coupling may hold. */
    public static final int MOST_RELAYS = 2;

    public static final int MOST_DIODES = 3;
    public static final int MOST_RESISTORS = 3;

    /** A wire and nothing else. */
    public static final Word STRAIGHT = new Word(Tie.WIRE, Tie.NONE, Tie.NONE, List.of(), Buffering.NONE);

    /** A diode that lets the output work the wire. */
    public static Word diode(Side output) {
        return new Word(Tie.diode(workedBy(output)), Tie.NONE, Tie.NONE, List.of(), Buffering.NONE);
    }

    /** A wire, and a diode from the target to the supply. */
    public static Word clamped() {
        return new Word(Tie.WIRE, Tie.diode(Way.FROM_TARGET), Tie.NONE, List.of(), Buffering.NONE);
    }

    /** A relay that gives the target a pole. */
    public static Word relay(Side output, Side gives, boolean isolated) {
        return relay(new Coil(Coil.Driver.SOURCE, opposite(output), isolated), gives);
    }

    private static Word relay(Coil coil, Side gives) {
        Tie contact = Tie.gated(Gate.MAKE_1);
        return gives == Side.HIGH
                ? new Word(Tie.NONE, contact, Tie.NONE, List.of(coil), Buffering.NONE)
                : new Word(Tie.NONE, Tie.NONE, contact, List.of(coil), Buffering.NONE);
    }

    /** A resistor between output and target. */
    public static Word step() {
        return new Word(Tie.resistor(Gate.ALWAYS), Tie.NONE, Tie.NONE, List.of(), Buffering.NONE);
    }

    /** A resistor to the body behind a relay's make contact. */
    public static Word stepByRelay(Side output) {
        Coil coil = new Coil(Coil.Driver.SOURCE, opposite(output), false);
        return new Word(Tie.NONE, Tie.NONE, Tie.resistor(Gate.MAKE_1), List.of(coil), Buffering.NONE);
    }

    Word withThrough(Tie tie) {
        return new Word(tie, fromSupply, toBody, coils, buffer, pull);
    }

    Word withFromSupply(Tie tie) {
        return new Word(through, tie, toBody, coils, buffer, pull);
    }

    Word withToBody(Tie tie) {
        return new Word(through, fromSupply, tie, coils, buffer, pull);
    }

    Word with(Pull other) {
        return new Word(through, fromSupply, toBody, coils, buffer, other);
    }

    static Way workedBy(Side output) {
        return output == Side.LOW ? Way.FROM_TARGET : Way.TO_TARGET;
    }

    static Side opposite(Side side) {
        return side == Side.LOW ? Side.HIGH : Side.LOW;
    }

    static Buffering bufferFor(Side output) {
        return output == Side.LOW ? Buffering.ON_GROUND : Buffering.ON_SUPPLY;
    }

    /** Its ties. */
    public Stream<Tie> ties() {
        return Stream.of(through, fromSupply, toBody);
    }

    /** Diodes, clamps included. */
    public int diodes() {
        int diodes = through.diodes() + fromSupply.diodes() + toBody.diodes();
        for (Coil coil : coils) {
            diodes += coil.diodes();
        }
        return diodes;
    }

    /** Resistors. */
    public int resistors() {
        return through.resistors() + fromSupply.resistors() + toBody.resistors() + pull.resistors();
    }

    /** True when it needs the fused supply. */
    public boolean needsSupply() {
        return fromSupply.joined()
                || pull == Pull.UP
                || buffer != Buffering.NONE
                || coils.stream().anyMatch(coil -> coil.pole() == Side.HIGH);
    }

    /** All its parts, the fuse of its feed included. */
    public int parts() {
        return diodes() + resistors() + coils.size() + (buffer == Buffering.NONE ? 0 : 1) + (needsSupply() ? 1 : 0);
    }
}
