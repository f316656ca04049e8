package org.loomproof.shop.job;

import java.nio.file.Path;
import java.util.Optional;
import org.loomproof.papers.pdf.Sheet;

/**
 * Which papers to write, and where.
 *
 * @param folder into which they go, whole or not at all
 * @param shop where the shop wrote down what they take from it
 * @param print the sheets on which every page is also printed into a PDF; none when nobody asked
 */
public record PapersWanted(Path folder, ShopFiles shop, Optional<Sheet> print) {}
