package org.loomproof.papers.schematic;

import java.util.List;
import java.util.stream.Stream;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.Port.Side;
import org.loomproof.papers.drawing.Sketch;

/**
 * A changeover relay at rest: contact above, coil below, a dashed link between them. Every terminal can be led out to
 * either side without a crossing in the symbol: the contact is mirrored when its break contact goes to the right.
 *
 * @param width of the outline
 * @param height of the outline
 * @param isTurned whether 30 is above, 87a and 87 below
 * @param breakSide where 87a is led out
 * @param makeSide where 87 is led out
 * @param commonSide where 30 is led out
 * @param coilSide where 86 is led out
 * @param otherCoilSide where 85 is led out
 */
record RelaySymbol(
        double width,
        double height,
        boolean isTurned,
        Side breakSide,
        Side makeSide,
        Side commonSide,
        Side coilSide,
        Side otherCoilSide) {

    private static final double ROW_87 = 24;
    private static final double ROW_87A = 37;
    private static final double ROW_30 = 76;
    private static final double ROW_86 = 92;
    private static final double ROW_85 = 120;

    /** Where the contact and the coil stand, seen from the left. */
    private static final double AXIS = 46;

    private static final double CONTACT = 50;
    private static final double SPREAD = 11;
    private static final double COIL_TOP = 98;
    private static final double COIL_BOTTOM = 112;
    private static final double COIL_HALF = 20;
    private static final double CLAMP_AXIS = 80;

    void draw(Sketch s, String name, String note, boolean hasClamp, boolean cathodeOn86) {
        s.rectangle(Pen.OUTLINE, "none", 0, 0, width, height);
        s.letter(4, 10, name, name, Ink.Anchor.START, true);
        contact(s);
        coil(s, note);
        if (hasClamp) {
            s.line(Pen.INK, AXIS, ROW_86, CLAMP_AXIS, ROW_86);
            s.line(Pen.INK, AXIS, ROW_85, CLAMP_AXIS, ROW_85);
            Symbols.standingDiode(s, CLAMP_AXIS, ROW_86, ROW_85, cathodeOn86);
            joint(s, coilSide, AXIS, ROW_86);
            joint(s, otherCoilSide, AXIS, ROW_85);
        }
    }

    private void joint(Sketch s, Side side, double axis, double row) {
        s.joint(side == Side.LEFT ? axis : CLAMP_AXIS, row);
    }

    /** The clamp diode's name and its wires. */
    void letterClamp(Sketch s, String name, List<String> wires) {
        s.letter(CLAMP_AXIS + 8, ROW_86 + 9, name, name, Ink.Anchor.START, true);
        double y = ROW_86 + 17;
        if (!wires.isEmpty()) {
            s.letter(CLAMP_AXIS + 8, y, String.join(" ", wires), Ink.Anchor.START);
        }
    }

    /** The height at which a terminal is led out. */
    double row(String terminal) {
        return switch (terminal) {
            case "87" -> contactY(ROW_87);
            case "87a" -> contactY(ROW_87A);
            case "30" -> contactY(ROW_30);
            case "86" -> ROW_86;
            case "85" -> ROW_85;
            default -> throw new IllegalArgumentException("a relay has no terminal " + terminal);
        };
    }

    private double contactY(double y) {
        return isTurned ? ROW_87 + ROW_30 - y : y;
    }

    private void contact(Sketch s) {
        double mirror = breakSide == Side.LEFT ? -1 : 1;
        double rest = AXIS + mirror * SPREAD;
        double make = AXIS - mirror * SPREAD;
        double fixed = contactY(CONTACT);
        double pivot = contactY(ROW_30 - 8);
        out(s, "87", makeSide, make);
        s.line(Pen.INK, make, row("87"), make, fixed);
        out(s, "87a", breakSide, rest);
        s.line(Pen.INK, rest, row("87a"), rest, fixed, rest - mirror * 4, fixed);
        s.line(Pen.INK, AXIS, pivot, rest - mirror * 0.5, contactY(CONTACT - 2));
        s.line(Pen.INK, AXIS, pivot, AXIS, row("30"));
        out(s, "30", commonSide, AXIS);
        link(s, AXIS + mirror * SPREAD * 0.55);
    }

    /** From the blade's middle to the coil, on the side where it meets fewer conductors. */
    private void link(Sketch s, double bladeX) {
        double y = contactY(58);
        long atLeft = passed().filter(side -> side == Side.LEFT).count();
        boolean isRight = 2 * atLeft >= passed().count();
        double x = isRight ? AXIS + COIL_HALF - 5 : AXIS - COIL_HALF + 5;
        s.line(Pen.LINK, bladeX, y, x, y, x, COIL_TOP);
    }

    /** Where the terminals are led out that stand between blade and coil. */
    private Stream<Side> passed() {
        return isTurned ? Stream.of(breakSide, makeSide, coilSide) : Stream.of(commonSide, coilSide);
    }

    private void coil(Sketch s, String note) {
        out(s, "86", coilSide, AXIS);
        s.line(Pen.INK, AXIS, ROW_86, AXIS, COIL_TOP);
        s.rectangle(Pen.INK, "#ffffff", AXIS - COIL_HALF, COIL_TOP, 2 * COIL_HALF, COIL_BOTTOM - COIL_TOP);
        s.letter(AXIS, COIL_BOTTOM - 4.5, note, Ink.Anchor.MIDDLE);
        s.line(Pen.INK, AXIS, COIL_BOTTOM, AXIS, ROW_85);
        out(s, "85", otherCoilSide, AXIS);
    }

    private void out(Sketch s, String terminal, Side side, double x) {
        double row = row(terminal);
        double edge = side == Side.LEFT ? 0 : width;
        s.line(Pen.INK, x, row, edge, row);
        s.letter(
                side == Side.LEFT ? 3 : width - 3,
                row - 2.5,
                terminal,
                side == Side.LEFT ? Ink.Anchor.START : Ink.Anchor.END);
    }
}
