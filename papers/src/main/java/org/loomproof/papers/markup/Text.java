package org.loomproof.papers.markup;

/**
 * Characters to be read as they stand; escaping is the writer's affair.
 *
 * @param value any string, whoever wrote it
 */
public record Text(String value) implements Markup {}
