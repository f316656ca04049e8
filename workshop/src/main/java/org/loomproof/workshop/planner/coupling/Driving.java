package org.loomproof.workshop.planner.coupling;

import java.util.Optional;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** What every way to work something with an output has in common: its pole, its isolation, the coil it holds. */
public final class Driving {

    /** What a buffer's input draws. Common practice, no published source. */
    private static final Amps BUFFER_INPUT = new Amps(0.005);

    private Driving() {}

    /** Which pole the output gives while it is on. */
    public enum Side {
        LOW,
        HIGH;

        /** The pole that a lead gives; empty for what is no output. */
        public static Optional<Side> of(Port port) {
            return switch (port) {
                case Port.LowSide out -> Optional.of(LOW);
                case Port.HighSide out -> Optional.of(HIGH);
                case Port.Supply s -> Optional.empty();
                case Port.Ground g -> Optional.empty();
                case Port.Input in -> Optional.empty();
                case Port.ToExtra x -> Optional.empty();
            };
        }
    }

    /**
     * One thing to be driven.
     *
     * @param target which
     * @param active the pole that makes it active
     * @param carries what flows then
     * @param fusedFor what a fuse in its feed is chosen for
     * @param run from the controller
     * @param drop what it is for
     * @param kicks whether a coil hangs on it, whose current wants a way when it is let go
     */
    public record Line(
            Target target, Side active, Amps carries, Amps fusedFor, Metres run, AllowedDrop drop, boolean kicks) {}

    /** A diode behind the source that lets it work what follows and nothing flow back; gives the end behind it. */
    public static End isolated(
            String owner, End source, Side output, DiodeType diode, Amps carries, Metres run, Draft.Builder draft) {
        AddedPartId d = Draft.local(owner, "isolation");
        boolean sinks = output == Side.LOW;
        draft.with(new Piece.Diode(d, diode));
        draft.run(source, Draft.at(d, sinks ? "K" : "A"), run, carries, AllowedDrop.SIGNAL);
        return Draft.at(d, sinks ? "A" : "K");
    }

    /**
     * A buffer between the source and what follows, which it takes to the body; gives its output's end, and the feed as it goes
     * on from there.
     *
     * @param owner of the local name
     * @param source whose level it takes
     * @param sinks what comes to the body through it
     * @param drop what that is for
     */
    public static Buffered buffered(
            String owner, End source, BufferType type, Amps sinks, AllowedDrop drop, Feed feed, Draft.Builder draft) {
        AddedPartId buffer = Draft.local(owner, "buffer");
        draft.with(new Piece.Buffer(buffer, type));
        draft.run(source, Draft.at(buffer, "in"), feed.run(), BUFFER_INPUT, AllowedDrop.SIGNAL);
        draft.run(Draft.at(buffer, "-"), Draft.body(), Draft.BESIDE, sinks, drop);
        Feed on = feed.reaching(buffer, "+", BUFFER_INPUT, BUFFER_INPUT, AllowedDrop.SIGNAL, draft);
        return new Buffered(Draft.at(buffer, "out"), on);
    }

    /** What a buffer leaves to go on from. */
    public record Buffered(End out, Feed feed) {}

    /** Puts the coil between the output and the other pole; a wire from the lead is as long as the feed's. */
    public static End coil(Side output, AddedPartId k, End last, Amps coil, Feed feed, Draft.Builder draft) {
        return coil(output, k, last, coil, feed, feed.run(), draft);
    }

    /** The same with a wire of that length from the lead. */
    public static End coil(
            Side output, AddedPartId k, End last, Amps coil, Feed feed, Metres run, Draft.Builder draft) {
        Metres length = last instanceof End.OfLead ? run : Draft.BESIDE;
        return switch (output) {
            case LOW -> {
                feed.to(Draft.at(k, "86"), coil, AllowedDrop.SIGNAL, draft);
                draft.run(last, Draft.at(k, "85"), length, coil, AllowedDrop.SIGNAL);
                yield Draft.at(k, "85");
            }
            case HIGH -> {
                draft.run(Draft.at(k, "85"), Draft.body(), Draft.BESIDE, coil, AllowedDrop.SIGNAL);
                draft.run(last, Draft.at(k, "86"), length, coil, AllowedDrop.SIGNAL);
                yield Draft.at(k, "86");
            }
        };
    }
}
