package org.loomproof.workshop.goods.shelf;

import java.math.BigDecimal;
import java.util.List;

/**
 * So much of one article.
 *
 * @param article what
 * @param amount how many pieces, or metres
 * @param from where it comes from
 * @param uses the names in the plan of what it is for; empty for what is used everywhere
 */
public record Item(Article article, BigDecimal amount, From from, List<String> uses) {

    public Item {
        uses = List.copyOf(uses);
        if (amount.signum() <= 0) {
            throw new IllegalArgumentException("none of " + article);
        }
    }

    /** Where an item comes from. */
    public enum From {
        /** It came with the kit. */
        BOX,
        /** The shop's own. */
        SHELF
    }
}
