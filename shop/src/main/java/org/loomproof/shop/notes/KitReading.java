package org.loomproof.shop.notes;

import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.kit.LeadNotes;

/**
 * A list of leads that was read.
 *
 * @param source its lines
 * @param notes what was understood
 * @param text the beginning of a kit file
 */
public record KitReading(SourceLines source, LeadNotes notes, String text) {}
