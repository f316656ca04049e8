package org.loomproof.papers.markup;

/** A piece of a page or of a drawing. */
public sealed interface Markup permits Element, Text {}
