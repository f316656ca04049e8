package org.loomproof.papers.schematic;

import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.WireId;

/**
 * One added wire as it is drawn between blocks.
 *
 * @param wire which
 * @param root the end where its net is gathered
 * @param tip its other end, where it carries its tag
 * @param tag what is written on it, and its colours
 */
record Link(WireId wire, End root, End tip, Tag tag) {}
