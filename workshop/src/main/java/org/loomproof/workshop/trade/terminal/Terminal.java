package org.loomproof.workshop.trade.terminal;

/**
 * A terminal number of DIN 72552.
 *
 * @param number as printed, such as {@code 15} or {@code 87a}
 * @param group what sort of equipment it belongs to
 * @param meaning what is joined there
 */
public record Terminal(String number, String group, String meaning) {}
