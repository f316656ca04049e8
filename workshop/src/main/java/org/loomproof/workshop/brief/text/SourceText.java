package org.loomproof.workshop.brief.text;

/**
 * A text with the name it is known by.
 *
 * @param name the file's name as the reader gave it
 * @param text its content
 */
public record SourceText(String name, String text) {}
