package org.loomproof.book.card;

/** How an attempt to change a card ended. */
public sealed interface Saved {

    /** Kept, durably; the card as it is now. */
    record Done(Card card) implements Saved {}

    /** Somebody was faster: nothing was written. The card as that somebody left it. */
    record Overtaken(Card now) implements Saved {}

    /** The card is gone: its customer was erased, or there never was one. */
    record Gone() implements Saved {}
}
