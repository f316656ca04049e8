package org.loomproof.shop.job;

import java.nio.file.Path;
import java.util.Optional;
import org.loomproof.papers.pdf.Sheet;

/**
 * Which papers to write, and where.
 *
 * @param folder into which they go, whole or not at all
 * @param prices the shop's price list; without one there is no quote
 * @param print the sheets on which every page is also printed into a PDF; none when nobody asked
 */
public record PapersWanted(Path folder, Optional<Path> prices, Optional<Sheet> print) {}
