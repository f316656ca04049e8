package org.loomproof.workshop.brief.read;

import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.text.SourceText;

/**
 * A brief with the texts it was read from, so that a plan can carry them along.
 *
 * @param brief the sheet completed, the kit and the order
 * @param sheet the sheet's text
 * @param kit the kit's text
 * @param order the order's text
 */
public record ReadBrief(Brief brief, SourceText sheet, SourceText kit, SourceText order) {}
