package org.loomproof.workshop.planner.coupling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * What stands between one lead and the vehicle: parts and runs, not yet numbered or sized.
 *
 * @param key the message key of the coupling's name
 * @param pieces its parts
 * @param runs its wires
 * @param throughController what the lead draws through the controller's own supply for long
 */
public record Draft(String key, List<Piece> pieces, List<Run> runs, Amps throughController) {

    public Draft {
        pieces = List.copyOf(pieces);
        runs = List.copyOf(runs);
    }

    /** Parts lie side by side: the wire between them. Common practice, no published source. */
    public static final Metres BESIDE = new Metres(0.1);

    /** Both couplings on one lead, under another name. */
    public Draft and(Draft more, String name) {
        List<Piece> allPieces = new ArrayList<>(pieces);
        allPieces.addAll(more.pieces);
        List<Run> allRuns = new ArrayList<>(runs);
        allRuns.addAll(more.runs);
        return new Draft(
                name, allPieces, allRuns, new Amps(throughController.value() + more.throughController.value()));
    }

    /** The same with other parts and runs. */
    public Draft with(List<Piece> otherPieces, List<Run> otherRuns) {
        return new Draft(key, otherPieces, otherRuns, throughController);
    }

    /** A coupling of that name, to be filled. */
    public static Builder of(String key) {
        return new Builder(key);
    }

    /** Fills a draft piece by piece. */
    public static final class Builder {
        private final String key;
        private final List<Piece> pieces = new ArrayList<>();
        private final List<Run> runs = new ArrayList<>();
        private Amps throughController = new Amps(0);

        private Builder(String key) {
            this.key = key;
        }

        /** Adds a part. */
        public Builder with(Piece piece) {
            pieces.add(piece);
            return this;
        }

        /** Adds a run behind a fuse. */
        public Builder fused(End from, End to, Metres length, Amps carries, AllowedDrop drop, AddedPartId fuse) {
            runs.add(new Run(from, to, length, carries, drop, Optional.of(fuse), Optional.empty()));
            return this;
        }

        /** Adds a run that no added fuse protects. */
        public Builder run(End from, End to, Metres length, Amps carries, AllowedDrop drop) {
            runs.add(new Run(from, to, length, carries, drop, Optional.empty(), Optional.empty()));
            return this;
        }

        /** Adds a run that lengthens a factory wire, and is no thinner. */
        public Builder factory(
                End from, End to, Metres length, Amps carries, AllowedDrop drop, SquareMillimetres noThinnerThan) {
            runs.add(new Run(from, to, length, carries, drop, Optional.empty(), Optional.of(noThinnerThan)));
            return this;
        }

        /** Says what the lead draws through the controller's own supply. */
        public Builder throughController(Amps amps) {
            throughController = amps;
            return this;
        }

        /** The draft as filled. */
        public Draft build() {
            return new Draft(key, pieces, runs, throughController);
        }
    }

    /** The end of a lead. */
    public static End lead(Lead lead) {
        return new End.OfLead(lead.id());
    }

    /** A terminal of a part. */
    public static End at(AddedPartId part, String terminal) {
        return new End.OfPart(part, terminal);
    }

    /** A tap on a circuit. */
    public static End tap(Circuit circuit) {
        return new End.Tap(circuit.id());
    }

    /** The body. */
    public static End body() {
        return new End.Body();
    }

    /** A local part name: what it belongs to and what it is. */
    public static AddedPartId local(Object owner, String what) {
        return new AddedPartId(owner + " " + what);
    }
}
