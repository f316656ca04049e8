package org.loomproof.workshop.goods.shelf;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;

/**
 * A thing that a shop buys.
 *
 * @param kind what it is
 * @param size what tells it from others of its kind, such as {@code 7.5 A}; empty where there is only one
 */
public record Article(Kind kind, String size) implements Comparable<Article> {

    /** Bins in the order of a shelf; inside a bin the sizes by their text. */
    private static final Comparator<Article> BY_BIN =
            Comparator.comparing(Article::kind).thenComparing(Article::size);

    /** What a price list may write for the letters of a data sheet. */
    private static final Map<String, String> PLAIN =
            Map.of("\u03a9", "ohm", "\u2126", "ohm", "\u00b2", "2", " ", "", "\u00a0", "");

    /** An article of which there is only one size. */
    public static Article of(Kind kind) {
        return new Article(kind, "");
    }

    /** The size as it is compared with a price list: without spaces, in small letters, units in plain letters. */
    public static String plain(String size) {
        String plain = size;
        for (Map.Entry<String, String> letter : PLAIN.entrySet()) {
            plain = plain.replace(letter.getKey(), letter.getValue());
        }
        return plain.toLowerCase(Locale.ROOT);
    }

    @Override
    public int compareTo(Article other) {
        return BY_BIN.compare(this, other);
    }

    /** What it is; the order is that of the bins on the shelf. */
    public enum Kind {
        KIT(Bin.BOX),
        EXTRA(Bin.BOX),
        RELAY(Bin.PARTS),
        RELAY_SOCKET(Bin.PARTS),
        BUFFER(Bin.PARTS),
        DIODE(Bin.PARTS),
        RESISTOR(Bin.PARTS),
        FUSE(Bin.PARTS),
        FUSE_HOLDER(Bin.PARTS),
        CONNECTOR(Bin.PARTS),
        PIN_SWITCH(Bin.PARTS),
        WIRE(Bin.WIRE),
        TAP(Bin.TERMINALS),
        SPLICE(Bin.TERMINALS),
        TERMINAL(Bin.TERMINALS),
        RING(Bin.TERMINALS),
        SLEEVE(Bin.AROUND),
        END_CAP(Bin.AROUND),
        GROMMET(Bin.AROUND),
        SCREW(Bin.AROUND),
        TIE(Bin.AROUND),
        TAPE(Bin.AROUND);

        private final Bin bin;

        Kind(Bin bin) {
            this.bin = bin;
        }

        /** Where on the shelf it lies. */
        public Bin bin() {
            return bin;
        }

        /** The word used in files, such as {@code fuse-holder}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** In what it is counted. */
        public Per per() {
            return this == WIRE || this == SLEEVE ? Per.METRE : Per.PIECE;
        }
    }

    /** The bins of the shelf, in the order in which a list goes along them. */
    public enum Bin {
        /** What usually comes with the kit. */
        BOX,
        PARTS,
        WIRE,
        TERMINALS,
        /** What goes around the work. */
        AROUND;

        /** The word used in message keys. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** In what an article is counted. */
    public enum Per {
        PIECE,
        METRE
    }
}
