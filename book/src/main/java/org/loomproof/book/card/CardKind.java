package org.loomproof.book.card;

import java.util.List;
import java.util.Locale;

/** The kinds of card, with what a list shows of each, what it is found by, and what stays when its customer is erased. */
public enum CardKind {
    /** A person or firm that brings vehicles. */
    CUSTOMER,
    /** One vehicle's work from the first call to the comeback. */
    JOB,
    /** What was done and measured at one job, each entry under a name that the device drew. */
    WORK,
    /** What is known of one model's circuits, for all jobs. */
    SHEET,
    /** One security system, for all jobs. */
    KIT,
    /** How often a meter confirmed what a vehicle sheet says, beside the sheet; of no customer. */
    TALLY,
    /** A vehicle sheet with a kit, and what the proof of the two came to. */
    FIT,
    /** The shop's price list; there is one. */
    PRICES,
    /** How long the work of jobs took, kind by kind, of no customer; there is one. */
    TIMINGS,
    /** What the shop remembers of the readings it put right; there is one. */
    MEMORY,
    /** Somebody who works with the book. */
    PERSON,
    /** What stayed of a job after its customer was erased. */
    REMAINS;

    /** The entries that a list shows. */
    public List<String> headline() {
        return switch (this) {
            case CUSTOMER -> List.of("name", "phone");
            case JOB -> List.of("plate", "make", "model", "year", "title", "verdict");
            case SHEET, KIT, PRICES, MEMORY -> List.of("title");
            case FIT -> List.of("pair", "verdict", "holds", "broken", "open", "sum");
            case PERSON -> List.of("name", "sign-in", "role", "active");
            case REMAINS -> List.of("make", "model", "year");
            case WORK, TALLY, TIMINGS -> List.of();
        };
    }

    /** The entries whose words a search finds. */
    public List<String> foundBy() {
        return switch (this) {
            case CUSTOMER -> List.of("name", "phone", "email");
            case JOB -> List.of("plate", "number", "make", "model", "title", "sheet-from", "sum");
            case SHEET, KIT, PRICES, MEMORY -> List.of("title");
            case PERSON -> List.of("sign-in");
            case FIT, REMAINS, WORK, TALLY, TIMINGS -> List.of();
        };
    }

    /** The entries of a job that stay as {@link #REMAINS}: nothing that names a person, a plate, a vehicle number or a place. */
    public static List<String> kept() {
        return List.of(
                "make", "model", "year", "stage", "kit-name", "verdict", "handed-over", "warranty-until", "parts");
    }

    /** True for what is a customer's own, under the customer's key. */
    public boolean isOfCustomer() {
        return this == JOB || this == WORK;
    }

    /** As it stands in a row. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The kind a row names. */
    public static CardKind of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
