package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Driving.Line;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Target;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Duties;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.FuseChoice;
import org.loomproof.workshop.trade.relay.ContactDuty;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/** What becomes of a lead that is to work factory wires: which poles they want, what they carry, and the ways to work them. */
final class FactoryOutputs {

    private FactoryOutputs() {}

    static List<Option> options(Job job, Lead lead, Wish wish, Found found, AllowedDrop drop) {
        if (!(found instanceof Found.Usable usable)) {
            return List.of(AddedLoads.without(lead, wish, found));
        }
        Optional<Side> side = Side.of(lead.port());
        if (side.isEmpty()) {
            return List.of(Option.of(List.of(Aside.misfit(lead, wish))));
        }
        if (usable.circuits().size() == 1 && Family.of(usable.first().switching()) == Family.STEPPED) {
            return SteppedOutput.options(job, lead, wish, usable.first(), usable.passedOver());
        }
        Optional<Circuit> strange =
                usable.circuits().stream().filter(c -> activePole(c).isEmpty()).findFirst();
        if (strange.isPresent()) {
            return List.of(Option.refused(refusalOf(wish, strange.get()), List.of(Aside.refused(lead, wish))));
        }
        List<Line> lines =
                usable.circuits().stream().map(c -> line(job, c, drop)).toList();
        if (lines.stream().map(Line::active).distinct().count() > 1) {
            Circuit first = usable.first();
            return List.of(Option.of(List.of(Aside.hold(
                    lead,
                    wish,
                    Measurements.levelsOf(first),
                    Phrase.of("hold.mixed-polarity", OutputWords.ids(lines))))));
        }
        return new OutputWords(job, lead, wish, side.get(), lines, usable.passedOver()).list();
    }

    /** The pole that makes a circuit active; empty for families that one pole does not work. */
    private static Optional<Side> activePole(Circuit circuit) {
        return switch (Family.of(circuit.switching())) {
            case NEGATIVE -> Optional.of(Side.LOW);
            case POSITIVE -> Optional.of(Side.HIGH);
            case LOGIC ->
                circuit.switching().active() instanceof Level.Ground ? Optional.of(Side.LOW) : Optional.empty();
            case OPENS_WHEN_ACTIVE, STEPPED, REVERSING, DATA, CONTRADICTORY -> Optional.empty();
        };
    }

    static Refusal refusalOf(Wish wish, Circuit circuit) {
        Family family = Family.of(circuit.switching());
        return new Refusal(
                wish,
                Phrase.of("refuse.family", circuit.id(), family.phrase()),
                Phrase.of("possible.family." + family.word()));
    }

    private static Line line(Job job, Circuit circuit, AllowedDrop drop) {
        Side active = activePole(circuit).orElseThrow();
        Amps carries =
                active == Side.LOW ? job.draw().intoBody(circuit) : job.draw().fromSupply(circuit);
        boolean lamps = circuit.paths().stream().flatMap(List::stream).anyMatch(PathStep.Lamp.class::isInstance);
        return new Line(
                new Target.Wire(circuit),
                active,
                carries,
                lamps ? FuseChoice.forLamps(carries) : carries,
                job.run(circuit),
                drop,
                Duties.of(circuit) == ContactDuty.SOLENOID);
    }
}
