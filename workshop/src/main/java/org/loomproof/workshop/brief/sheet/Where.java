package org.loomproof.workshop.brief.sheet;

/**
 * Where a wire is found; an empty text means not said.
 *
 * @param panel the panel or trim that covers it
 * @param connector the connector it runs into
 * @param cavity its place in that connector
 * @param note free text
 */
public record Where(String panel, String connector, String cavity, String note) {}
