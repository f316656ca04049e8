package org.loomproof.papers.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.ResistorHeat;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Says in the reader's language what a brief, a plan or a situation holds. */
public record Wording(Messages messages) {

    /** A figure and the unit behind it. */
    private static final Pattern FIGURE = Pattern.compile("(?<![\\p{L}\\d.,])(\\d[\\d.,]*) "
            + "(?=(?:[µmk]?[AV]|[mkM]?Ω|W|N|lbf|mm²|mm|m|s|min|h|°C|%)(?![\\p{L}\\d]))");

    /** A phrase in words, each figure on one line with its unit. */
    public String of(Phrase phrase) {
        return FIGURE.matcher(messages.text(phrase)).replaceAll("$1\u00A0");
    }

    /** A message in words, each figure on one line with its unit. */
    public String of(String key, Object... arguments) {
        return of(Phrase.of(key, arguments));
    }

    /** What was asked for. */
    public String wish(Wish wish) {
        return of("term.wish." + wish.word());
    }

    /** What a lead is meant for. */
    public String role(LeadRole role) {
        return of("lead-role." + role.word());
    }

    /** What a factory circuit is for. */
    public String role(CircuitRole role) {
        return of("circuit-role." + role.word());
    }

    /** The name of what stands between a lead and a circuit; a name that is not ours is shown as it is. */
    public String coupling(String name) {
        return messages.knows(name) ? of(name) : name;
    }

    /** How a joint is made in this shop. */
    public String joint(ShopChoices.Joint joint) {
        return of(
                switch (joint) {
                    case SOLDER -> "joint.solder";
                    case CRIMP -> "joint.crimp";
                });
    }

    /** Where a wire is found; empty when nothing was said. */
    public String where(Where where) {
        List<String> said = new ArrayList<>();
        unlessBlank(where.panel()).ifPresent(p -> said.add(of("where.panel", p)));
        unlessBlank(where.connector()).ifPresent(c -> said.add(of("where.connector", c)));
        unlessBlank(where.cavity()).ifPresent(c -> said.add(of("where.cavity", c)));
        unlessBlank(where.note()).ifPresent(said::add);
        return String.join(", ", said);
    }

    private static Optional<String> unlessBlank(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(text);
    }

    /** A circuit's own name with what it is for, when the two differ. */
    public String circuit(Circuit circuit) {
        String role = role(circuit.role());
        String id = circuit.id().value();
        return role.equalsIgnoreCase(id.replace('-', ' ')) ? role : of("circuit.named", role, id);
    }

    /** One end of an added wire. */
    public String end(End end) {
        return switch (end) {
            case End.OfLead e -> of("end.lead", e.lead().value());
            case End.OfPart e -> of("end.part", e.part().value(), terminal(e.terminal()));
            case End.Tap e -> of("end.tap", e.circuit().value());
            case End.CutBefore e -> of("end.cut-before", e.circuit().value());
            case End.CutAfter e -> of("end.cut-after", e.circuit().value());
            case End.Body e -> of("end.body");
        };
    }

    /** A terminal as it is lettered; a minus sign is written as one. */
    public String terminal(String terminal) {
        return terminal.equals("-") ? "−" : terminal;
    }

    /** A value that a line never ends in: number and unit stay together. */
    public String figure(Quantity quantity) {
        return quantity.toString().replace(' ', '\u00A0');
    }

    /** A short length, in millimetres. */
    public String millimetres(Metres length) {
        return Figures.plain(length.value() * 1000) + "\u00A0mm";
    }

    /** A conductor's size as the trade buys it, metric or gauge, and behind it in the reader's own measure where that is the other one. */
    public String size(SquareMillimetres area) {
        return area.in(messages.locale()).replace(' ', '\u00A0');
    }

    /** A wire: size and length. */
    public String wire(AddedWire wire) {
        return of("wire.size-length", size(wire.size()), figure(wire.length()));
    }

    /** What an added part is, without its name. */
    public String kind(AddedPart part) {
        return switch (part) {
            case AddedPart.Relay p -> of("part.relay");
            case AddedPart.Buffer p -> of("part.buffer");
            case AddedPart.Diode p -> of("part.diode");
            case AddedPart.Zener p -> of("part.zener");
            case AddedPart.Resistor p -> of("part.resistor");
            case AddedPart.Fuse p -> of("part.fuse");
            case AddedPart.Pole p -> of("part.pole", p.connector(), p.to());
            case AddedPart.Load p -> p.extra();
            case AddedPart.StandbyBattery b -> of("part.standby-battery", b.extra());
            case AddedPart.Sender s -> s.extra();
            case AddedPart.PinSwitch p -> of("part.pin-switch", p.opening().value());
        };
    }

    /** What to look for on the part: its ratings. */
    public String ratings(AddedPart part) {
        return switch (part) {
            case AddedPart.Relay p ->
                of(
                        "part.relay.ratings",
                        figure(p.coil()),
                        figure(p.pullIn()),
                        figure(p.dropOut()),
                        figure(p.makeRating()),
                        figure(p.breakRating()));
            case AddedPart.Buffer p ->
                of(
                        "part.buffer.ratings." + p.worksOn().name().toLowerCase(Locale.ROOT),
                        figure(p.input()),
                        figure(p.rating()));
            case AddedPart.Diode p -> of("part.diode.ratings", figure(p.rating()), figure(p.reverse()));
            case AddedPart.Zener p -> of("part.zener.ratings", figure(p.rating()), figure(p.volts()));
            case AddedPart.Resistor p ->
                ResistorHeat.size(ResistorHeat.most(p.resistance()))
                        .map(size -> of("part.resistor.ratings", figure(p.resistance()), figure(size)))
                        .orElseGet(() -> of(
                                "part.resistor.too-hot",
                                figure(p.resistance()),
                                figure(ResistorHeat.most(p.resistance()))));
            case AddedPart.Fuse p -> figure(p.rating());
            case AddedPart.Pole p -> of("part.pole.ratings", figure(p.rating()));
            case AddedPart.Load p -> of("part.load.ratings", figure(p.draws()));
            case AddedPart.StandbyBattery b ->
                of("part.standby-battery.ratings", figure(b.charging()), figure(b.charged()));
            case AddedPart.Sender s ->
                of("part.sender.ratings." + s.closes().name().toLowerCase(Locale.ROOT));
            case AddedPart.PinSwitch p -> of("part.pin-switch.ratings");
        };
    }

    /** The situation in one line: what is not at rest, the battery, the controller. */
    public String situation(Situation situation, Sheet sheet) {
        List<String> moved = new ArrayList<>();
        for (Operable operable : sheet.operables()) {
            String position = situation.positions().get(operable.id());
            if (position != null && !position.equals(operable.rest())) {
                moved.add(of("situation.moved", operable.id().value(), position));
            }
        }
        List<String> parts = new ArrayList<>();
        parts.add(moved.isEmpty() ? of("situation.at-rest") : moved.stream().collect(Collectors.joining(", ")));
        parts.add(of(
                "situation.battery",
                figure(situation.supply().volts()),
                of("supply-point." + situation.supply().word())));
        parts.add(of("controller-state." + situation.controller().word()));
        if (situation.feed() != ControllerFeed.WHOLE) {
            parts.add(of("feed." + situation.feed().word()));
        }
        return String.join("; ", parts);
    }
}
