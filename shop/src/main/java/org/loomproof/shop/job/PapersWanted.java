package org.loomproof.shop.job;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Which papers to write, and where.
 *
 * @param folder into which they go, whole or not at all
 * @param prices the shop's price list; without one there is no quote
 */
public record PapersWanted(Path folder, Optional<Path> prices) {}
