package org.loomproof.workshop.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wakefulness;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.trade.connector.ContactPlace;
import org.loomproof.workshop.words.Phrase;

/** Draws the controller between a supply node and a ground node of its own. */
final class ControllerWiring {

    /** Standby current is stated at the rest supply point. */
    private static final double STANDBY_RATED_VOLTS = 12.6;

    /** A controller that has woken sleeps again this little below its least supply: the kit states one figure only. */
    private static final double WAKING_HYSTERESIS_VOLTS = 0.01;

    private static final Node SUPPLY = new Node("controller supply");
    private static final Node GROUND = new Node("controller ground");

    private static final double PLUG_CONTACT_OHMS =
            ContactPlace.PLUG_CONTACT.typical().value();

    private final Kit kit;
    private final Drawing drawing;
    private final Wakefulness wakefulness;
    private final Map<LeadId, Reach> outputs = new LinkedHashMap<>();
    private final Map<LeadId, InputReach> inputs = new LinkedHashMap<>();
    private final List<PartId> supplySwitches = new ArrayList<>();
    private final List<PartId> groundSwitches = new ArrayList<>();

    ControllerWiring(Kit kit, Drawing drawing) {
        this.kit = kit;
        this.drawing = drawing;
        double least = drawing.figures.take("kit least supply", kit.leastSupply());
        this.wakefulness = new Wakefulness(least, least - WAKING_HYSTERESIS_VOLTS);
    }

    static Node node(LeadId lead) {
        return new Node("kit " + lead);
    }

    ControllerParts draw(FeedFuses feedFuses) {
        double standbyAmps = drawing.figures.take("kit standby", kit.standby());
        drawing.add(
                new Resistor(new PartId("kit standby"), SUPPLY, GROUND, STANDBY_RATED_VOLTS / standbyAmps),
                Phrase.of("origin.kit-standby"));
        Map<LeadId, Node> leads = new LinkedHashMap<>();
        for (Lead lead : kit.leads()) {
            leads.put(lead.id(), node(lead.id()));
            draw(lead);
        }
        return new ControllerParts(
                SUPPLY,
                GROUND,
                wakefulness.wakesAtVolts(),
                leads,
                outputs,
                inputs,
                supplySwitches,
                groundSwitches,
                feedFuses.fuses().stream().map(AddedWiring::partId).toList(),
                feedFuses.standAlone());
    }

    private void draw(Lead lead) {
        PartId id = new PartId("kit " + lead.id());
        Node end = node(lead.id());
        Phrase words = Phrase.of("origin.kit-lead", lead.id());
        switch (lead.port()) {
            case Port.Supply port -> {
                drawing.add(new Switch(id, end, SUPPLY, PLUG_CONTACT_OHMS), words);
                supplySwitches.add(id);
            }
            case Port.Ground port -> {
                drawing.add(new Switch(id, end, GROUND, PLUG_CONTACT_OHMS), words);
                groundSwitches.add(id);
            }
            case Port.Input port -> inputs.put(lead.id(), drawInput(id, lead, port, words));
            case Port.LowSide port -> {
                Drive drive = drive(lead, port.saturation(), port.rating());
                drawing.add(
                        new LowSideOutput(id, end, SUPPLY, GROUND, drive, wakefulness, port.bodyDiode(), port.clamp()),
                        words);
                outputs.put(lead.id(), new Reach(id, "output", true, end, GROUND));
            }
            case Port.HighSide port -> {
                Drive drive = drive(lead, port.saturation(), port.rating());
                drawing.add(
                        new HighSideOutput(id, end, SUPPLY, GROUND, drive, wakefulness, port.bodyDiode(), false),
                        words);
                outputs.put(lead.id(), new Reach(id, "output", true, end, SUPPLY));
            }
            case Port.ToExtra port -> {
                // Its own plug; it never meets the vehicle.
            }
        }
    }

    /** A path of constant resistance, which at its rating leaves the stated volts. */
    private Drive drive(Lead lead, Figure<? extends Quantity> saturation, Figure<? extends Quantity> rating) {
        double volts = drawing.figures.take(lead.id() + " saturation", saturation);
        double amps = drawing.figures.take(lead.id() + " rating", rating);
        return new Drive(volts / amps, 0, Double.POSITIVE_INFINITY);
    }

    private InputReach drawInput(PartId id, Lead lead, Port.Input port, Phrase words) {
        Node end = node(lead.id());
        double low = drawing.figures.take(lead.id() + " low-below", port.lowBelow());
        double high = drawing.figures.take(lead.id() + " high-above", port.highAbove());
        drawing.add(
                new LogicInput(
                        id,
                        end,
                        SUPPLY,
                        GROUND,
                        pull(lead.id() + " pull-up", port.pullUp()),
                        pull(lead.id() + " pull-down", port.pullDown()),
                        low,
                        Math.max(high, Math.nextUp(low)),
                        port.clamps()),
                words);
        return new InputReach(id, end, GROUND, low, high);
    }

    private OptionalDouble pull(String key, Optional<? extends Figure<? extends Quantity>> figure) {
        return figure.isPresent() ? OptionalDouble.of(drawing.figures.take(key, figure.get())) : OptionalDouble.empty();
    }
}
