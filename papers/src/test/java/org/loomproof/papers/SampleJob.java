package org.loomproof.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** A job written by hand: 21 leads, two relays, five diodes, three fuses, a siren and a pin switch. */
final class SampleJob {

    private SampleJob() {}

    static Wording words() {
        return new Wording(Messages.english());
    }

    /** What its papers are made from. */
    static Material material() {
        return new Material(brief(), plan(), SampleProof.proof(), Optional.empty(), "");
    }

    static Brief brief() {
        ShopChoices shop = new ShopChoices(
                ShopChoices.Joint.SOLDER,
                ShopChoices.Sizes.MM2,
                new Celsius(-20),
                new Celsius(60),
                Optional.empty(),
                Map.of(),
                exactly(new Metres(1.5)));
        Order order = new Order(
                "Morning round, van 3",
                Set.of(
                        Wish.WATCH_OPENINGS,
                        Wish.STARTER_INTERRUPT,
                        Wish.SIREN,
                        Wish.LAMPS,
                        Wish.LOCKS,
                        Wish.REMOTE_START),
                List.of(new OperableId("left-door"), new OperableId("rear-doors")),
                Optional.of("behind the ash tray"),
                Order.RuleSet.UN_R116,
                21,
                shop,
                Set.of());
        return new Brief(SampleSheet.sheet(), SampleKit.kit(), order);
    }

    static Plan plan() {
        return new Plan(
                List.of(new Choice("lock pulse", "3.5 s")),
                hookups(),
                parts(),
                wires(),
                List.of(new Refusal(
                        Wish.REMOTE_START,
                        written("The gearbox is manual, and nothing on the sheet tells whether it is in neutral."),
                        written("A neutral switch that has been proven with the meter, or an automatic gearbox."))),
                List.of(
                        written("Yellow loom along the left sill: keep at least a hand's width away from it."),
                        written(
                                "The starter wire carries 30 A: solder or crimp at full size, no insulation-piercing tap.")));
    }

    private static List<Hookup> hookups() {
        return List.of(
                connect("P1-1", Wish.BASICS, "coupling.fused-supply", "Constant supply from the box feed, own fuse.")
                        .acting("battery")
                        .with("F1A")
                        .over("W1", "W2")
                        .build(),
                connect("P1-2", Wish.BASICS, "coupling.body", "The controller's ground gets a screw of its own.")
                        .over("W3")
                        .build(),
                connect("P1-3", Wish.BASICS, "coupling.straight", "True ignition: stays live while the starter turns.")
                        .acting("ignition")
                        .over("W4")
                        .build(),
                connect("P1-4", Wish.SIREN, "coupling.added-load", "The siren draws 1.2 A, the output gives 3 A.")
                        .with("H1", "F3A")
                        .over("W5", "W6", "W7")
                        .build(),
                connect(
                                "P1-5",
                                Wish.STARTER_INTERRUPT,
                                "coupling.break-contact",
                                "The starter wire runs through 87a, so the engine starts when the controller is dead.")
                        .acting("starter", "ignition")
                        .with("K1", "D1", "F2A")
                        .over("W8", "W9", "W10", "W11", "W12", "W13", "W14")
                        .insteadOf("A make contact (87): the engine would not start with the controller dead.")
                        .build(),
                connect("P1-6", Wish.LAMPS, "coupling.straight", "The lamps draw 1.7 A, the output gives 10 A.")
                        .acting("side-lamps")
                        .over("W15")
                        .build(),
                new Hookup.CapAndKeep(
                        new LeadId("P1-7"),
                        written("One lamp circuit feeds both sides; a trailer may want it."),
                        List.of()),
                connect("P1-8", Wish.HORN, "coupling.straight", "The horn relay is worked to ground by its button.")
                        .acting("horn")
                        .over("W16")
                        .build(),
                connect(
                                "P2-1",
                                Wish.WATCH_OPENINGS,
                                "coupling.isolation-diodes",
                                "Three doors on one input: a diode each keeps them apart.")
                        .acting("left-door", "right-door", "side-door")
                        .with("D2", "D3", "D4")
                        .over("W17", "W18", "W19", "W20", "W21", "W22")
                        .build(),
                new Hookup.Trim(
                        new LeadId("P2-2"),
                        written("All doors switch to ground; the positive input is not needed."),
                        List.of()),
                connect(
                                "P2-3",
                                Wish.WATCH_OPENINGS,
                                "coupling.inverting-relay",
                                "The load lamp's wire goes to supply, the input wants ground.")
                        .acting("rear-doors")
                        .with("K2", "D5")
                        .over("W23", "W24", "W25", "W26", "W27", "W28")
                        .build(),
                new Hookup.CapAndKeep(
                        new LeadId("P2-4"), written("No further sensor is asked for; one may come later."), List.of()),
                new Hookup.Trim(new LeadId("P2-5"), written("Only remote start would want the brake."), List.of()),
                connect("P2-6", Wish.WATCH_OPENINGS, "coupling.pin-switch", "The hood has no switch; a pin is added.")
                        .with("S1")
                        .over("W29")
                        .build(),
                connect("P2-7", Wish.INDICATOR, "coupling.own-plug", "Goes to the indicator by its own plug.")
                        .build(),
                connect(
                                "P2-8",
                                Wish.OVERRIDE_BUTTON,
                                "coupling.own-plug",
                                "Goes to the override button by its own plug.")
                        .build(),
                connect("P3-1", Wish.LOCKS, "coupling.straight", "The lock input wants ground and draws 2.7 mA.")
                        .acting("lock")
                        .over("W30")
                        .build(),
                connect("P3-2", Wish.LOCKS, "coupling.straight", "The unlock input wants ground and draws 2.7 mA.")
                        .acting("unlock")
                        .over("W31")
                        .build(),
                new Hookup.Hold(
                        new LeadId("P3-3"),
                        Wish.INTERIOR_LIGHT,
                        new Measurement(
                                "levels-of interior-light",
                                written("the interior light's wire at the lamp, door shut and door open")),
                        written("The sheet gives two levels that contradict each other."),
                        List.of()),
                new Hookup.Trim(new LeadId("P3-4"), written("The windows are wound by hand."), List.of()),
                new Hookup.Trim(new LeadId("P3-5"), written("The rear doors have no motor."), List.of()));
    }

    private static List<AddedPart> parts() {
        return List.of(
                new AddedPart.Fuse(id("F1A"), new Amps(15)),
                new AddedPart.Fuse(id("F2A"), new Amps(3)),
                new AddedPart.Fuse(id("F3A"), new Amps(3)),
                relay("K1"),
                diode("D1"),
                new AddedPart.Load(id("H1"), "siren", new Amps(1.2)),
                diode("D2"),
                diode("D3"),
                diode("D4"),
                relay("K2"),
                diode("D5"),
                new AddedPart.PinSwitch(id("S1"), new OperableId("hood")));
    }

    private static AddedPart relay(String id) {
        return new AddedPart.Relay(id(id), new Ohms(85), new Volts(8), new Volts(1.2), new Amps(40), new Amps(30));
    }

    private static AddedPart diode(String id) {
        return new AddedPart.Diode(id(id), new Amps(1), new Volts(400));
    }

    private static List<AddedWire> wires() {
        List<AddedWire> wires = new ArrayList<>();
        add(wires, tap("battery"), at("F1A", "1"), 0.2, 1);
        add(wires, at("F1A", "2"), lead("P1-1"), 0.8, 1);
        add(wires, lead("P1-2"), new End.Body(), 0.4, 1);
        add(wires, lead("P1-3"), tap("ignition"), 0.9, 0.5);
        add(wires, lead("P1-4"), at("F3A", "1"), 0.3, 1);
        add(wires, at("F3A", "2"), at("H1", "+"), 1.8, 1);
        add(wires, at("H1", "-"), new End.Body(), 0.3, 1);
        add(wires, tap("ignition"), at("F2A", "1"), 0.2, 0.75);
        add(wires, at("F2A", "2"), at("K1", "86"), 0.4, 0.75);
        add(wires, lead("P1-5"), at("K1", "85"), 0.6, 0.5);
        add(wires, new End.CutBefore(new CircuitId("starter")), at("K1", "30"), 0.5, 4);
        add(wires, new End.CutAfter(new CircuitId("starter")), at("K1", "87a"), 0.5, 4);
        add(wires, at("D1", "K"), at("K1", "86"), 0.1, 0.5);
        add(wires, at("D1", "A"), at("K1", "85"), 0.1, 0.5);
        add(wires, lead("P1-6"), tap("side-lamps"), 1.1, 1);
        add(wires, lead("P1-8"), tap("horn"), 0.9, 0.5);
        add(wires, lead("P2-1"), at("D2", "A"), 0.4, 0.5);
        add(wires, at("D2", "A"), at("D3", "A"), 0.1, 0.5);
        add(wires, at("D3", "A"), at("D4", "A"), 0.1, 0.5);
        add(wires, at("D2", "K"), tap("left-door"), 0.5, 0.5);
        add(wires, at("D3", "K"), tap("right-door"), 0.5, 0.5);
        add(wires, at("D4", "K"), tap("side-door"), 0.5, 0.5);
        add(wires, tap("rear-doors"), at("K2", "86"), 3.2, 0.5);
        add(wires, at("K2", "85"), new End.Body(), 0.3, 0.5);
        add(wires, at("K2", "30"), new End.Body(), 0.3, 0.5);
        add(wires, at("K2", "87"), lead("P2-3"), 0.4, 0.5);
        add(wires, at("D5", "K"), at("K2", "86"), 0.1, 0.5);
        add(wires, at("D5", "A"), at("K2", "85"), 0.1, 0.5);
        add(wires, lead("P2-6"), at("S1", "1"), 1.9, 0.5);
        add(wires, lead("P3-1"), tap("lock"), 1.2, 0.5);
        add(wires, lead("P3-2"), tap("unlock"), 1.2, 0.5);
        return wires;
    }

    private static void add(List<AddedWire> wires, End from, End to, double metres, double squareMillimetres) {
        wires.add(new AddedWire(
                new WireId("W" + (wires.size() + 1)),
                from,
                to,
                new Metres(metres),
                new SquareMillimetres(squareMillimetres)));
    }

    private static End at(String part, String terminal) {
        return new End.OfPart(id(part), terminal);
    }

    private static End tap(String circuit) {
        return new End.Tap(new CircuitId(circuit));
    }

    private static End lead(String lead) {
        return new End.OfLead(new LeadId(lead));
    }

    private static AddedPartId id(String id) {
        return new AddedPartId(id);
    }

    static Phrase written(String text) {
        return Phrase.of("as-written", text);
    }

    static Basis said(String path) {
        return new Basis(Certainty.STATED, Place.nowhere(path));
    }

    static <Q extends Quantity> Figure<Q> exactly(Q value) {
        return Figure.exactly(value, said("example"));
    }

    private static ConnectBuilder connect(String lead, Wish serves, String coupling, String because) {
        return new ConnectBuilder(lead, serves, coupling, because);
    }

    /** Says a connection in a few words. */
    private static final class ConnectBuilder {
        private final LeadId lead;
        private final Wish serves;
        private final String coupling;
        private final String because;
        private final List<CircuitId> circuits = new ArrayList<>();
        private final List<AddedPartId> parts = new ArrayList<>();
        private final List<WireId> wires = new ArrayList<>();
        private final List<Phrase> lost = new ArrayList<>();

        ConnectBuilder(String lead, Wish serves, String coupling, String because) {
            this.lead = new LeadId(lead);
            this.serves = serves;
            this.coupling = coupling;
            this.because = because;
        }

        ConnectBuilder acting(String... ids) {
            List.of(ids).forEach(c -> circuits.add(new CircuitId(c)));
            return this;
        }

        ConnectBuilder with(String... ids) {
            List.of(ids).forEach(p -> parts.add(id(p)));
            return this;
        }

        ConnectBuilder over(String... ids) {
            List.of(ids).forEach(w -> wires.add(new WireId(w)));
            return this;
        }

        ConnectBuilder insteadOf(String why) {
            lost.add(written(why));
            return this;
        }

        Hookup build() {
            return new Hookup.Connect(lead, serves, circuits, coupling, parts, wires, written(because), lost);
        }
    }

    static SortedMap<OperableId, String> positions(String... pairs) {
        SortedMap<OperableId, String> positions = new TreeMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            positions.put(new OperableId(pairs[i]), pairs[i + 1]);
        }
        return positions;
    }
}
