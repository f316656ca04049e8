package org.loomproof.workshop.brief.kit;

/**
 * How one option of a kit is set.
 *
 * @param option its name
 * @param setting the setting's name
 */
public record Choice(String option, String setting) {}
