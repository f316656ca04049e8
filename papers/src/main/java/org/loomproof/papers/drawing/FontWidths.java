package org.loomproof.papers.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide text is, without a font at hand. The figures are the advance widths of DejaVu Sans 2.37 in thousandths of the
 * type's height, read from the font; it is one of the widest of the usual sans-serif fonts, so that text set in another
 * takes less room than is kept for it. Letters outside ASCII get a width that none of their kind exceeds in that font,
 * pictures and east-asian characters one and a half times the height.
 */
public final class FontWidths {

    /** The part of the type's height above the base line that capitals and figures take. */
    public static final double ASCENT = 0.76;

    /** The part below the base line. */
    public static final double DESCENT = 0.21;

    /** Bold is at most this much wider than regular, over a word (measured on the same font). */
    private static final double BOLD = 1.17;

    private static final int FIRST = ' ';

    private static final int[] ASCII = {
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, //
        636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, //
        1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, //
        603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500, //
        500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, //
        635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838
    };

    private FontWidths() {}

    /** Width of a line of text in the unit of {@code size}. */
    public static double width(String text, double size, boolean bold) {
        double thousandths = text.codePoints().mapToDouble(FontWidths::advance).sum();
        return thousandths / 1000 * size * (bold ? BOLD : 1);
    }

    private static double advance(int c) {
        if (c >= FIRST && c < FIRST + ASCII.length) {
            return ASCII[c - FIRST];
        }
        if (c == 0xA0) {
            return ASCII[0];
        }
        if (c < 0x250) {
            return 1000;
        }
        return c < 0x2E80 ? 1050 : 1500;
    }

    /**
     * The text on as many lines as it takes, broken between words; a word that is too wide by itself is cut.
     *
     * @param hang what stands before each line but the first
     */
    public static List<String> wrapped(String text, String hang, double room, double size) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size, false) > room) {
                lines.add(line.toString());
                longer = hang + word;
            }
            line.setLength(0);
            line.append(longer);
        }
        lines.add(line.toString());
        return lines.stream().map(one -> fitted(one, room, size, false)).toList();
    }

    /** The text, cut with an ellipsis where it would be wider than there is room. */
    public static String fitted(String text, double room, double size, boolean bold) {
        if (width(text, size, bold) <= room) {
            return text;
        }
        int[] characters = text.codePoints().toArray();
        for (int length = characters.length - 1; length > 0; length--) {
            String shorter = new String(characters, 0, length).stripTrailing() + "…";
            if (width(shorter, size, bold) <= room) {
                return shorter;
            }
        }
        return "…";
    }

    /** A name, with an ellipsis in its middle where it would be wider: what tells names apart is often at their ends. */
    public static String fittedName(String name, double room, double size) {
        if (width(name, size, false) <= room) {
            return name;
        }
        int[] characters = name.codePoints().toArray();
        for (int kept = characters.length - 1; kept > 1; kept--) {
            int head = (kept + 1) / 2;
            int tail = kept - head;
            String shorter =
                    new String(characters, 0, head) + "…" + new String(characters, characters.length - tail, tail);
            if (width(shorter, size, false) <= room) {
                return shorter;
            }
        }
        return "…";
    }
}
