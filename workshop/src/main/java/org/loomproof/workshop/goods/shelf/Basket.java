package org.loomproof.workshop.goods.shelf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Gathers what is asked for, one heap an article and source. */
final class Basket {

    /** Lengths are cut in steps of ten centimetres. */
    private static final int LENGTH_DECIMALS = 1;

    private final Map<Article, Heap> fromBox = new TreeMap<>();
    private final Map<Article, Heap> fromShelf = new TreeMap<>();

    void add(Article article, int pieces, Item.From from, String... uses) {
        if (pieces > 0) {
            add(article, BigDecimal.valueOf(pieces), from, uses);
        }
    }

    void addMetres(Article article, BigDecimal metres, String... uses) {
        add(article, metres, Item.From.SHELF, uses);
    }

    private void add(Article article, BigDecimal amount, Item.From from, String... uses) {
        Heap heap = (from == Item.From.BOX ? fromBox : fromShelf).computeIfAbsent(article, a -> new Heap());
        heap.amount = heap.amount.add(amount);
        heap.uses.addAll(List.of(uses));
    }

    /** What came together: the box first, each part in the order of the bins. Lengths are rounded up. */
    List<Item> list() {
        List<Item> items = new ArrayList<>();
        fromBox.forEach((article, heap) -> items.add(heap.item(article, Item.From.BOX)));
        fromShelf.forEach((article, heap) -> items.add(heap.item(article, Item.From.SHELF)));
        return items;
    }

    private static final class Heap {
        private BigDecimal amount = BigDecimal.ZERO;
        private final Set<String> uses = new LinkedHashSet<>();

        Item item(Article article, Item.From from) {
            BigDecimal cut = article.kind().per() == Article.Per.METRE
                    ? amount.setScale(LENGTH_DECIMALS, RoundingMode.CEILING)
                    : amount;
            return new Item(article, cut, from, List.copyOf(uses));
        }
    }
}
