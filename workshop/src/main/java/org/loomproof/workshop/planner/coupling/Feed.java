package org.loomproof.workshop.planner.coupling;

import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * A feed taken from a factory circuit through a fuse of its own near the take-off. Everything that names the same fuse hangs
 * on the same feed.
 *
 * @param circuit where it is taken
 * @param fuse the fuse's local name
 * @param run the length from the fuse to what it feeds
 * @param reached an end that the feed already reaches, from where it goes on
 */
public record Feed(Circuit circuit, AddedPartId fuse, Metres run, Optional<End> reached) {

    /**
     * A fuse stands 150 to 300 mm from where the feed is taken (common practice, no published source); 33 CFR 183.455(b) allows
     * a boat's fuse 7 inches (178 mm). This much is planned.
     */
    public static final Metres TAKE_OFF = new Metres(0.15);

    /** A feed that reaches nothing yet. */
    public static Feed from(Circuit circuit, AddedPartId fuse, Metres run) {
        return new Feed(circuit, fuse, run, Optional.empty());
    }

    /** Runs the feed to an end. */
    public void to(End end, Amps carries, AllowedDrop drop, Draft.Builder draft) {
        to(end, carries, carries, drop, draft);
    }

    /** Runs the feed to a terminal whose load may start with a surge, and gives the feed as it goes on from there. */
    public Feed reaching(
            AddedPartId part, String terminal, Amps carries, Amps fusedFor, AllowedDrop drop, Draft.Builder draft) {
        End end = Draft.at(part, terminal);
        to(end, carries, fusedFor, drop, draft);
        return new Feed(circuit, fuse, run, Optional.of(end));
    }

    /**
     * Runs the feed to a terminal that draws only while what is fused already does not: the fuse and the take-off carry no more
     * for it.
     */
    public Feed reachingByTurns(
            AddedPartId part, String terminal, Amps carries, AllowedDrop drop, Draft.Builder draft) {
        End end = Draft.at(part, terminal);
        lay(end, new Amps(0), carries, new Amps(0), drop, draft);
        return new Feed(circuit, fuse, run, Optional.of(end));
    }

    private void to(End end, Amps carries, Amps fusedFor, AllowedDrop drop, Draft.Builder draft) {
        lay(end, carries, carries, fusedFor, drop, draft);
    }

    private void lay(End end, Amps taken, Amps carries, Amps fusedFor, AllowedDrop drop, Draft.Builder draft) {
        draft.with(new Piece.Fuse(fuse, fusedFor, false));
        draft.fused(Draft.tap(circuit), Draft.at(fuse, "1"), TAKE_OFF, taken, drop, fuse);
        draft.fused(
                reached.orElse(Draft.at(fuse, "2")),
                end,
                reached.isPresent() ? Draft.BESIDE : run,
                carries,
                drop,
                fuse);
    }
}
