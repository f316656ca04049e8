package org.loomproof.papers.schematic;

import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.Sketch;

/**
 * Graphical symbols in the manner of IEC 60617, lying along a conductor that runs from left to right at {@code y}. Each
 * fills the stretch from {@code x} to {@code x + LENGTH}. The shapes are drawn from memory of the standard.
 */
final class Symbols {

    /** Length of every symbol along its conductor. */
    static final double LENGTH = 30;

    /** How far a symbol reaches above and below its conductor. */
    static final double REACH = 7;

    private static final double MIDDLE = LENGTH / 2;

    private Symbols() {}

    static void fuse(Sketch s, double x, double y) {
        s.rectangle(Pen.INK, "#ffffff", x + 6, y - 3.5, LENGTH - 12, 7);
        s.line(Pen.INK, x, y, x + LENGTH, y);
    }

    /** A contact of a connector: the pin in its socket. */
    static void plugContact(Sketch s, double x, double y) {
        s.line(Pen.INK, x, y, x + MIDDLE + 3, y);
        s.line(Pen.INK, x + MIDDLE + 8, y - 6, x + MIDDLE + 2, y, x + MIDDLE + 8, y + 6);
        s.line(Pen.INK, x + MIDDLE + 2, y, x + LENGTH, y);
        s.line(Pen.INK, x + MIDDLE + 3, y - 6, x + MIDDLE - 3, y, x + MIDDLE + 3, y + 6);
    }

    static void resistor(Sketch s, double x, double y) {
        leads(s, x, y, 6);
        s.rectangle(Pen.INK, "#ffffff", x + 6, y - 3.5, LENGTH - 12, 7);
    }

    /** A make contact, drawn open. */
    static void switchContact(Sketch s, double x, double y) {
        s.line(Pen.INK, x, y, x + 9, y);
        s.line(Pen.INK, x + LENGTH - 9, y, x + LENGTH, y);
        s.line(Pen.INK, x + 9, y, x + LENGTH - 9.5, y - 6.5);
    }

    /** A break contact, drawn closed. */
    static void breakContact(Sketch s, double x, double y) {
        s.line(Pen.INK, x, y, x + 9, y);
        s.line(Pen.INK, x + LENGTH - 9, y - 4, x + LENGTH - 9, y, x + LENGTH, y);
        s.line(Pen.INK, x + 9, y, x + LENGTH - 7, y - 4.5);
    }

    static void lamp(Sketch s, double x, double y) {
        leads(s, x, y, MIDDLE - 6);
        s.ring(x + MIDDLE, y, 6);
        double d = 6 / Math.sqrt(2);
        s.line(Pen.INK, x + MIDDLE - d, y - d, x + MIDDLE + d, y + d);
        s.line(Pen.INK, x + MIDDLE - d, y + d, x + MIDDLE + d, y - d);
    }

    static void motor(Sketch s, double x, double y) {
        leads(s, x, y, MIDDLE - 7);
        s.ring(x + MIDDLE, y, 7);
        s.letter(x + MIDDLE, y + 2.6, "M", Ink.Anchor.MIDDLE);
    }

    /** A coil that moves something. */
    static void coil(Sketch s, double x, double y) {
        leads(s, x, y, MIDDLE - 4);
        s.rectangle(Pen.INK, "#ffffff", x + MIDDLE - 4, y - REACH, 8, 2 * REACH);
    }

    /** Any load: a box. */
    static void load(Sketch s, double x, double y) {
        leads(s, x, y, 5);
        s.rectangle(Pen.INK, "#ffffff", x + 5, y - REACH, LENGTH - 10, 2 * REACH);
    }

    /** A heating element: a box with bars. */
    static void heater(Sketch s, double x, double y) {
        load(s, x, y);
        for (int i = 1; i < 4; i++) {
            s.line(Pen.INK, x + 5 + 5 * i, y - REACH, x + 5 + 5 * i, y + REACH);
        }
    }

    /** An input of an electronic module: a box that reads. */
    static void input(Sketch s, double x, double y) {
        s.line(Pen.INK, x, y, x + 8, y);
        s.rectangle(Pen.INK, "#ffffff", x + 8, y - REACH, LENGTH - 8, 2 * REACH);
        s.filled(Pen.INK.colour(), x + 10, y - 3, x + 15, y, x + 10, y + 3);
    }

    /** A sounder: a box with the half disc of a horn's mouth, here as a trapeze. */
    static void sounder(Sketch s, double x, double y) {
        leads(s, x, y, 6);
        s.rectangle(Pen.INK, "#ffffff", x + 6, y - 4, 8, 8);
        s.outline(Pen.INK, x + 14, y - 4, x + LENGTH - 6, y - REACH, x + LENGTH - 6, y + REACH, x + 14, y + 4);
    }

    /** A diode; forwards conducts from left to right. */
    static void diode(Sketch s, double x, double y, boolean forwards) {
        s.line(Pen.INK, x, y, x + LENGTH, y);
        double tip = forwards ? x + MIDDLE + 4.5 : x + MIDDLE - 4.5;
        double base = forwards ? x + MIDDLE - 4.5 : x + MIDDLE + 4.5;
        s.filled(Pen.INK.colour(), base, y - 5, base, y + 5, tip, y);
        s.line(Pen.INK, tip, y - 5, tip, y + 5);
    }

    /** A zener lying on the conductor: a diode whose bar is bent, forwards when its anode is on the left. */
    static void zener(Sketch s, double x, double y, boolean forwards) {
        diode(s, x, y, forwards);
        double bar = forwards ? x + MIDDLE + 4.5 : x + MIDDLE - 4.5;
        double bend = forwards ? 2.2 : -2.2;
        s.line(Pen.INK, bar, y + 5, bar - bend, y + 5);
        s.line(Pen.INK, bar, y - 5, bar + bend, y - 5);
    }

    /** A diode standing upright at {@code x} between two heights; upwards conducts towards the top. */
    static void standingDiode(Sketch s, double x, double top, double bottom, boolean upwards) {
        double middle = (top + bottom) / 2;
        s.line(Pen.INK, x, top, x, bottom);
        double tip = upwards ? middle - 4.5 : middle + 4.5;
        double base = upwards ? middle + 4.5 : middle - 4.5;
        s.filled(Pen.INK.colour(), x - 5, base, x + 5, base, x, tip);
        s.line(Pen.INK, x - 5, tip, x + 5, tip);
    }

    /** The body, at the end of a conductor that comes from the right when {@code towardsLeft}. */
    static void ground(Sketch s, double x, double y, boolean towardsLeft) {
        double step = towardsLeft ? -2.2 : 2.2;
        for (int i = 0; i < 3; i++) {
            double half = 5.5 - 1.8 * i;
            s.line(Pen.INK, x + step * i, y - half, x + step * i, y + half);
        }
    }

    /** The battery's plus, at the start of a conductor that goes to the right. */
    static void supply(Sketch s, double x, double y) {
        s.ring(x + 2.5, y, 2.5);
    }

    private static void leads(Sketch s, double x, double y, double length) {
        s.line(Pen.INK, x, y, x + length, y);
        s.line(Pen.INK, x + LENGTH - length, y, x + LENGTH, y);
    }
}
