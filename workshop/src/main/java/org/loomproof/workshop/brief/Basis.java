package org.loomproof.workshop.brief;

import org.loomproof.workshop.problem.Place;

/**
 * What a figure or an entry rests on.
 *
 * @param certainty how sure
 * @param place where it stands in the reader's text; for an assumed figure the path names the entry it stands in for
 */
public record Basis(Certainty certainty, Place place) {}
