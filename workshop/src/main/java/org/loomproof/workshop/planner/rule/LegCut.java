package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.cut.CutWire;
import org.loomproof.workshop.planner.cut.CutWire.Hand;
import org.loomproof.workshop.planner.cut.Given;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Severed;
import org.loomproof.workshop.planner.survey.Severed.Cut;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.words.Phrase;

/**
 * One leg of a motor that its switch holds at the other pole at rest: it is cut between switch and motor, the break contact of
 * a relay keeps it whole, the make contact gives it its pole, and the current comes back through the other leg.
 */
final class LegCut {

    /** A wire that passes more than this, put to the pole that makes it active, is held firmly at the other one. */
    private static final double FIRM_AMPS = 20;

    private LegCut() {}

    /** Whether the car's own switch holds the wire at the pole at which it is not active. */
    static boolean isHeld(Job job, Circuit circuit) {
        return switch (circuit.switching().active()) {
            case Level.Supply s -> job.draw().fromSupply(circuit).value() > FIRM_AMPS;
            case Level.Ground g -> job.draw().intoBody(circuit).value() > FIRM_AMPS;
            case Level.Open o -> false;
            case Level.Resistance r -> false;
            case Level.Voltage v -> false;
            case Level.Reversing r -> true;
            case Level.Data d -> false;
        };
    }

    /** The pole that makes a wire active, nothing where it is let go; empty for any other kind of wire. */
    static Optional<Optional<Side>> given(Circuit circuit) {
        return switch (circuit.switching().active()) {
            case Level.Ground g -> Optional.of(Optional.of(Side.LOW));
            case Level.Supply s -> Optional.of(Optional.of(Side.HIGH));
            case Level.Open o -> Optional.of(Optional.empty());
            case Level.Resistance r -> Optional.empty();
            case Level.Voltage v -> Optional.empty();
            case Level.Reversing r -> Optional.empty();
            case Level.Data d -> Optional.empty();
        };
    }

    /**
     * What to do with the lead.
     *
     * @param fuse the fuse before the contact
     * @param byTurns whether the contact draws only while another one behind that fuse does not
     * @param name of coupling and reason
     */
    static List<Option> of(Job job, Lead lead, Wish wish, Circuit leg, AddedPartId fuse, boolean byTurns, String name) {
        Severed severed = Severed.atTheWire(job.brief().sheet(), leg.id());
        Optional<Cut> cut = severed.cut(leg.id());
        Optional<Side> pole = given(leg).flatMap(side -> side);
        if (cut.isEmpty() || pole.isEmpty()) {
            return List.of(Option.of(List.of(
                    Aside.hold(lead, wish, Measurements.cutPlaceOf(leg), Phrase.of("hold.leg-cut-place", leg.id())))));
        }
        Given wanted = Given.of(pole);
        CutWire wire = new CutWire(wanted == Given.HIGH ? Given.LOW : Given.HIGH, Hand.COMES_BACK, List.of(wanted));
        Amps carries = severed.draws(cut.get().load());
        return new Cutting(job, List.of(lead), wish, List.of(leg), fuse)
                .options(List.of(wire), List.of(cut.get()), carries, 1, byTurns, (way, composer) -> {
                    Phrase because = Phrase.of(
                            "rule." + name, leg.id(), carries, way.relay().name());
                    return List.of(Option.of(List.of(new Decision.Join(
                            lead,
                            wish,
                            List.of(leg.id()),
                            composer.draft(0, "coupling." + name),
                            way.guarded(0, because),
                            List.of()))));
                });
    }
}
