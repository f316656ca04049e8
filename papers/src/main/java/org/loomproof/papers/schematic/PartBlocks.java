package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.loomproof.papers.drawing.Block;
import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.Port.Side;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;

/** The symbols of added parts, each led out to the sides where its wires go. */
final class PartBlocks {

    private static final double RELAY_WIDTH = 84;
    private static final double RELAY_HEIGHT = 128;
    private static final double CLAMP_WIDTH = 52;
    private static final double MODULE_WIDTH = 70;
    private static final double MODULE_ROW = 18;

    private final Kit kit;
    private final Connections connections;
    private final Nets nets;
    private final Sides sides;
    private final Set<AddedPartId> turned;
    private final Wording words;

    /**
     * Makes blocks.
     *
     * @param turned relays whose contact is drawn upside down
     */
    PartBlocks(Kit kit, Connections connections, Nets nets, Sides sides, Set<AddedPartId> turned, Wording words) {
        this.kit = kit;
        this.connections = connections;
        this.nets = nets;
        this.sides = sides;
        this.turned = turned;
        this.words = words;
    }

    /** The part's block; empty for a diode that is drawn at a relay's coil. */
    Optional<Block> block(AddedPart part) {
        if (nets.isClamp(part.id())) {
            return Optional.empty();
        }
        return Optional.of(
                switch (part) {
                    case AddedPart.Relay p -> relay(p);
                    case AddedPart.Buffer p -> buffer(p);
                    case AddedPart.Diode p -> junction(p, Symbols::diode);
                    case AddedPart.Zener p -> junction(p, Symbols::zener);
                    case AddedPart.Resistor p -> pair(p, Symbols::resistor);
                    case AddedPart.Fuse p -> pair(p, Symbols::fuse);
                    case AddedPart.Pole p -> pair(p, Symbols::plugContact);
                    case AddedPart.Load p -> pair(p, load(p));
                    case AddedPart.StandbyBattery p -> pair(p, Symbols::load);
                    case AddedPart.Sender p ->
                        p.closes() == Extra.Closes.DRY ? pair(p, Symbols::switchContact) : sender(p);
                    case AddedPart.PinSwitch p -> pair(p, Symbols::switchContact);
                });
    }

    /** Draws a symbol on a conductor. */
    private interface Drawer {
        void draw(Sketch s, double x, double y);
    }

    /** The same where it matters which way round. */
    private interface Turned {
        void draw(Sketch s, double x, double y, boolean forwards);
    }

    /** A load by what the box says it is; what nobody knows is a plain box. */
    private Drawer load(AddedPart.Load load) {
        return kit.findExtra(load.extra())
                .<Drawer>map(extra -> switch (extra.kind()) {
                    case SOUNDER -> Symbols::sounder;
                    case ACTUATOR -> Symbols::motor;
                    case INDICATOR -> Symbols::lamp;
                    case OVERRIDE_BUTTON, SHOCK_SENSOR, INTERRUPT_RELAY, RELAY_SOCKET, OTHER -> Symbols::load;
                })
                .orElse(Symbols::load);
    }

    /** What a current goes through one way, with its symbol turned to its anode. */
    private Block junction(AddedPart.Junction part, Turned drawer) {
        boolean anodeLeft = sides.isFirstLeft(part, "A", "K");
        return pair(part, (s, x, y) -> drawer.draw(s, x, y, anodeLeft));
    }

    private Block pair(AddedPart part, Drawer drawer) {
        String first = part.terminals().get(0);
        String second = part.terminals().get(1);
        return sides.isFirstLeft(part, first, second)
                ? inLine(part, first, second, drawer)
                : inLine(part, second, first, drawer);
    }

    private Block inLine(AddedPart part, String left, String right, Drawer drawer) {
        String note = note(part);
        double width =
                Math.max(Symbols.LENGTH + 12, 8 + Math.max(width(part.id().value(), true), width(note, false)));
        double y = 20;
        Sketch s = new Sketch();
        s.letter(width / 2, 9, part.id().value(), part.id().value(), Ink.Anchor.MIDDLE, true);
        s.letter(width / 2, y + Symbols.REACH + 8, note, Ink.Anchor.MIDDLE);
        double x = (width - Symbols.LENGTH) / 2;
        drawer.draw(s, x, y);
        s.line(Pen.INK, 0, y, x, y);
        s.line(Pen.INK, x + Symbols.LENGTH, y, width, y);
        if (part instanceof AddedPart.Load || part instanceof AddedPart.StandbyBattery) {
            s.letter(x - 1, y - 2.5, words.terminal(left), Ink.Anchor.END);
            s.letter(x + Symbols.LENGTH + 1, y - 2.5, words.terminal(right), Ink.Anchor.START);
        }
        List<Stubs.Stub> stubs = List.of(stub(part, left, Side.LEFT, y), stub(part, right, Side.RIGHT, y));
        return Stubs.block(blockId(part.id()), Block.Zone.MIDDLE, width, y + Symbols.REACH + 12, s.ink(), stubs);
    }

    private String note(AddedPart part) {
        return switch (part) {
            case AddedPart.Relay p -> p.coil().toString();
            case AddedPart.Buffer p -> p.rating().toString();
            case AddedPart.Diode p -> p.rating().toString();
            case AddedPart.Zener p -> p.volts().toString();
            case AddedPart.Resistor p -> p.resistance().toString();
            case AddedPart.Fuse p -> p.rating().toString();
            case AddedPart.Pole p -> p.to();
            case AddedPart.Load p ->
                words.of("schematic.load", p.extra(), p.draws().toString());
            case AddedPart.StandbyBattery p ->
                words.of("schematic.load", p.extra(), p.charging().toString());
            case AddedPart.Sender p -> p.extra();
            case AddedPart.PinSwitch p -> p.opening().value();
        };
    }

    private static double width(String text, boolean bold) {
        return FontWidths.width(text, Sketch.TYPE, bold);
    }

    private Stubs.Stub stub(AddedPart part, String terminal, Side side, double y) {
        End end = new End.OfPart(part.id(), terminal);
        boolean isMounted = part instanceof AddedPart.PinSwitch
                && terminal.equals("2")
                && nets.listWires(end).isEmpty();
        boolean isFree = nets.listWires(end).isEmpty() && !isMounted;
        return new Stubs.Stub(
                terminal, side, y, connections.tags(end), isMounted || connections.isGrounded(end), isFree);
    }

    /** The id of a part's block. */
    static String blockId(AddedPartId part) {
        return "part " + part.value();
    }

    private Block relay(AddedPart.Relay relay) {
        Optional<AddedPartId> clamp = nets.findClampOf(relay.id());
        Side breakSide = sides.side(relay.id(), "87a", Side.LEFT);
        Side makeSide = sides.side(relay.id(), "87", Side.RIGHT);
        Side commonSide = sides.side(
                relay.id(),
                "30",
                Sides.opposite(nets.listWires(end(relay, "87a")).isEmpty() ? makeSide : breakSide));
        Side coilSide = sides.side(relay.id(), "86", Sides.opposite(sides.side(relay.id(), "85", Side.RIGHT)));
        Side otherCoilSide = sides.side(relay.id(), "85", Sides.opposite(coilSide));
        double width = RELAY_WIDTH + (clamp.isPresent() ? CLAMP_WIDTH : 0);
        boolean isTurned = turned.contains(relay.id());
        RelaySymbol symbol = new RelaySymbol(
                width, RELAY_HEIGHT, isTurned, breakSide, makeSide, commonSide, coilSide, otherCoilSide);
        Sketch s = new Sketch();
        symbol.draw(
                s,
                relay.id().value(),
                note(relay),
                clamp.isPresent(),
                clamp.map(d -> nets.isCathodeOn86(relay.id(), d)).orElse(false));
        clamp.ifPresent(diode -> symbol.letterClamp(s, diode.value(), connections.clampTags(diode)));
        List<Stubs.Stub> stubs = new ArrayList<>();
        stubs.add(stub(relay, "87", makeSide, symbol.row("87")));
        stubs.add(stub(relay, "87a", breakSide, symbol.row("87a")));
        stubs.add(stub(relay, "30", commonSide, symbol.row("30")));
        stubs.add(stub(relay, "86", coilSide, symbol.row("86")));
        stubs.add(stub(relay, "85", otherCoilSide, symbol.row("85")));
        return Stubs.block(blockId(relay.id()), Block.Zone.MIDDLE, width, RELAY_HEIGHT, s.ink(), stubs);
    }

    /** A module is a box with its terminals named, the input on the controller's side. */
    private Block buffer(AddedPart.Buffer buffer) {
        Side in = sides.side(buffer.id(), "in", Side.RIGHT);
        Side out = sides.side(buffer.id(), "out", Sides.opposite(in));
        Side plus = sides.side(buffer.id(), "+", out);
        Side minus = sides.side(buffer.id(), "-", in);
        return module(buffer, terminal -> switch (terminal) {
            case "in" -> in;
            case "out" -> out;
            case "+" -> plus;
            default -> minus;
        });
    }

    /** A sensor is a box too, its contacts on the controller's side. */
    private Block sender(AddedPart.Sender sender) {
        return module(
                sender,
                terminal -> sides.side(
                        sender.id(), terminal, terminal.equals("+") || terminal.equals("-") ? Side.LEFT : Side.RIGHT));
    }

    private Block module(AddedPart part, Function<String, Side> sideOf) {
        double width = Math.max(MODULE_WIDTH, 8 + width(note(part), false));
        double height = (part.terminals().size() + 1) * MODULE_ROW;
        Sketch s = new Sketch();
        s.rectangle(Pen.INK, "none", 0, 0, width, height);
        s.letter(width / 2, 10, part.id().value(), part.id().value(), Ink.Anchor.MIDDLE, true);
        s.letter(width / 2, height - 4, note(part), Ink.Anchor.MIDDLE);
        List<Stubs.Stub> stubs = new ArrayList<>();
        double y = MODULE_ROW;
        for (String terminal : part.terminals()) {
            Side side = sideOf.apply(terminal);
            boolean left = side == Side.LEFT;
            s.letter(left ? 3 : width - 3, y + 2.5, terminal, left ? Ink.Anchor.START : Ink.Anchor.END);
            stubs.add(stub(part, terminal, side, y));
            y += MODULE_ROW;
        }
        return Stubs.block(blockId(part.id()), Block.Zone.MIDDLE, width, height, s.ink(), stubs);
    }

    private static End end(AddedPart part, String terminal) {
        return new End.OfPart(part.id(), terminal);
    }
}
