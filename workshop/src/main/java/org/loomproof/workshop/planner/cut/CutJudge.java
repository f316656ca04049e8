package org.loomproof.workshop.planner.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.cut.CutWord.Drive;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/**
 * What poles alone say of the contacts in one wire, with every output on and off and the car's own switch wherever a hand may
 * put it; and of what works the coils.
 */
final class CutJudge {

    private static final int BOTH = Given.LOW.bit() | Given.HIGH.bit();

    private CutJudge() {}

    /** Why those contacts are not offered for that wire. */
    static Optional<LeftOut> leaveOut(CutWire wire, List<Throw> chain) {
        LeftOut reason = reason(wire, chain);
        if (reason == null && withoutOne(chain).stream().anyMatch(less -> reason(wire, less) == null)) {
            return Optional.of(LeftOut.IDLE_PART);
        }
        return Optional.ofNullable(reason);
    }

    private static @Nullable LeftOut reason(CutWire wire, List<Throw> chain) {
        int leads = wire.wanted().size();
        for (int on = 0; on < 1 << leads; on++) {
            for (Given feed : wire.ever()) {
                if (Seen.of(chain, on, feed).isShort()) {
                    return LeftOut.SHORT;
                }
            }
        }
        Seen atRest = Seen.of(chain, 0, Given.NOTHING);
        if (!atRest.whole()) {
            return LeftOut.OPENS_WIRE;
        }
        if (atRest.load() != 0) {
            return LeftOut.WORKS_AT_REST;
        }
        for (int lead = 0; lead < leads; lead++) {
            for (Given feed : wire.atWork()) {
                if (Seen.of(chain, 1 << lead, feed).load()
                        != wire.wanted().get(lead).bit()) {
                    return LeftOut.NEVER_WORKS;
                }
            }
        }
        return null;
    }

    private static List<List<Throw>> withoutOne(List<Throw> chain) {
        List<List<Throw>> all = new ArrayList<>();
        for (int i = 0; i < chain.size(); i++) {
            List<Throw> less = new ArrayList<>(chain);
            less.remove(i);
            all.add(less);
        }
        return all;
    }

    /** Why coils are not worked so. */
    static Optional<LeftOut> leaveOut(Cuts.Output output, Drive drive) {
        boolean follows = drive.buffered()
                ? (drive.buffer() == Buffering.ON_GROUND) == (output.gives() == Side.LOW)
                : drive.coil().pole() != output.gives();
        boolean idleDiode = drive.isolated() && !output.leaks();
        return follows && !idleDiode ? Optional.empty() : Optional.of(LeftOut.IDLE_PART);
    }

    /**
     * What there is in one state.
     *
     * @param load the poles that come to what works
     * @param whole whether it hangs on the car's switch
     * @param isShort whether both poles meet anywhere along the wire
     */
    private record Seen(int load, boolean whole, boolean isShort) {

        static Seen of(List<Throw> chain, int on, Given feed) {
            int load = 0;
            int here = 0;
            boolean whole = true;
            boolean isShort = false;
            for (Throw each : chain) {
                boolean worked = (on & 1 << each.lead()) != 0;
                int given = each.givesBits(worked);
                boolean before = !each.isThrough() || each.isTowardsLoad();
                here |= before ? given : 0;
                if (!each.joins(worked)) {
                    load = whole ? here : load;
                    isShort |= here == BOTH;
                    whole = false;
                    here = 0;
                }
                here |= before ? 0 : given;
            }
            here |= feed.bit();
            return new Seen(whole ? here : load, whole, isShort || here == BOTH);
        }
    }
}
