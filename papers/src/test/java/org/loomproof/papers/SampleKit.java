package org.loomproof.papers;

import static org.loomproof.papers.SampleJob.exactly;
import static org.loomproof.papers.SampleJob.said;
import static org.loomproof.papers.SampleSheet.colour;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.kit.Survival;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.colour.Colour;
import org.loomproof.workshop.trade.colour.WireColour;

/** An invented kit of 21 leads in three plugs. */
final class SampleKit {

    private SampleKit() {}

    private static KitOption option(String name, String usual, String other, String lead, Port becomes) {
        return new KitOption(
                name,
                List.of(
                        new KitOption.Setting(usual, Map.of()),
                        new KitOption.Setting(other, Map.of(new LeadId(lead), becomes))));
    }

    static Kit kit() {
        return new Kit(
                "Dormouse 3",
                exactly(new Volts(8)),
                exactly(new Volts(16)),
                Survival.UNSAID,
                exactly(new Amps(0.012)),
                leads(),
                List.of(
                        option("hood input polarity", "negative", "positive", "P2-6", input(Port.Active.HIGH)),
                        option("lock pulse", "0.8 s", "3.5 s", "P3-1", lowSide(0.5))),
                List.of(new Extra(
                        "siren",
                        Extra.Kind.SOUNDER,
                        Optional.of(exactly(new Amps(1.2))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())),
                new Behaviour(
                        exactly(new Seconds(20)),
                        Set.of(new LeadId("P2-1"), new LeadId("P2-2")),
                        Set.of(),
                        List.of(new OutputBehaviour(
                                new LeadId("P1-5"), Set.of(ControllerState.ARMED), OutputTiming.STEADY))));
    }

    private static List<Lead> leads() {
        return List.of(
                lead("P1", 1, colour(Colour.RED, Colour.WHITE), 1, LeadRole.SUPPLY, new Port.Supply()),
                lead("P1", 2, colour(Colour.BLACK), 1, LeadRole.GROUND, new Port.Ground()),
                lead("P1", 3, colour(Colour.ORANGE), 0.5, LeadRole.IGNITION_SENSE, input(Port.Active.HIGH)),
                lead("P1", 4, colour(Colour.WHITE, Colour.BLACK), 1, LeadRole.SIREN, highSide(3)),
                lead("P1", 5, colour(Colour.PINK, Colour.BLACK), 0.5, LeadRole.STARTER_INTERRUPT, lowSide(0.5)),
                lead("P1", 6, colour(Colour.GREEN, Colour.WHITE), 1, LeadRole.LAMPS, highSide(10)),
                lead("P1", 7, colour(Colour.GREEN, Colour.BLACK), 1, LeadRole.LAMPS, highSide(10)),
                lead("P1", 8, colour(Colour.VIOLET, Colour.YELLOW), 0.5, LeadRole.HORN, lowSide(0.3)),
                lead("P2", 1, colour(Colour.BLUE, Colour.RED), 0.35, LeadRole.DOOR_INPUT, input(Port.Active.LOW)),
                lead("P2", 2, colour(Colour.TURQUOISE), 0.35, LeadRole.DOOR_INPUT, input(Port.Active.HIGH)),
                lead("P2", 3, colour(Colour.GREY), 0.35, LeadRole.TRUNK_INPUT, input(Port.Active.LOW)),
                lead("P2", 4, colour(Colour.GREY), 0.35, LeadRole.SENSOR_INPUT, input(Port.Active.LOW)),
                lead("P2", 5, colour(Colour.BROWN, Colour.YELLOW), 0.35, LeadRole.BRAKE_INPUT, input(Port.Active.HIGH)),
                lead(
                        "P2",
                        6,
                        new WireColour(Colour.BLUE, Optional.empty(), "light"),
                        0.35,
                        LeadRole.HOOD_INPUT,
                        input(Port.Active.LOW)),
                lead(
                        "P2",
                        7,
                        colour(Colour.YELLOW, Colour.RED),
                        0.35,
                        LeadRole.INDICATOR,
                        new Port.ToExtra("indicator")),
                lead(
                        "P2",
                        8,
                        colour(Colour.YELLOW, Colour.BLUE),
                        0.35,
                        LeadRole.OVERRIDE_BUTTON,
                        new Port.ToExtra("override button")),
                lead("P3", 1, colour(Colour.GREEN, Colour.RED), 0.5, LeadRole.LOCK, lowSide(0.5)),
                lead("P3", 2, colour(Colour.BLUE, Colour.WHITE), 0.5, LeadRole.UNLOCK, lowSide(0.5)),
                lead("P3", 3, colour(Colour.WHITE, Colour.VIOLET), 0.5, LeadRole.INTERIOR_LIGHT, lowSide(0.3)),
                lead("P3", 4, colour(Colour.WHITE, Colour.ORANGE), 0.5, LeadRole.WINDOW, lowSide(0.3)),
                lead("P3", 5, colour(Colour.BLACK, Colour.RED), 0.5, LeadRole.TRUNK_RELEASE, lowSide(0.3)));
    }

    private static Lead lead(String plug, int position, WireColour colour, double size, LeadRole role, Port port) {
        String id = plug + "-" + position;
        return new Lead(
                new LeadId(id),
                plug,
                String.valueOf(position),
                Optional.of(colour),
                exactly(new SquareMillimetres(size)),
                role,
                port,
                position == 1,
                "",
                said("leads." + id));
    }

    private static Port input(Port.Active active) {
        return new Port.Input(
                active,
                exactly(new Volts(2)),
                exactly(new Volts(4)),
                active == Port.Active.LOW ? Optional.of(exactly(new Ohms(10000))) : Optional.empty(),
                active == Port.Active.HIGH ? Optional.of(exactly(new Ohms(10000))) : Optional.empty(),
                true);
    }

    private static Port lowSide(double amps) {
        return new Port.LowSide(
                exactly(new Amps(amps)), exactly(new Volts(0.3)), Optional.of(exactly(new Seconds(0.8))), true, false);
    }

    private static Port highSide(double amps) {
        return new Port.HighSide(exactly(new Amps(amps)), exactly(new Volts(0.2)), Optional.empty(), false);
    }
}
