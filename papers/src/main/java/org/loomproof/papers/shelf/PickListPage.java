package org.loomproof.papers.shelf;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Article.Bin;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.goods.shelf.Stock;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;

/** What to take from the shelf, bin by bin, and the tools to lay out. */
public final class PickListPage {

    private final Brief brief;
    private final Plan plan;
    private final PickList list;
    private final Optional<Stock> stock;
    private final Wording words;
    private final ArticleWords articles;

    private PickListPage(Brief brief, Plan plan, PickList list, Optional<Stock> stock, Wording words) {
        this.stock = stock;
        this.brief = brief;
        this.plan = plan;
        this.list = list;
        this.words = words;
        this.articles = new ArticleWords(words);
    }

    /**
     * The list as a page.
     *
     * @param stock what lies on the shelf; without it nothing is said of what to order
     */
    public static Page page(Brief brief, Plan plan, PickList list, Optional<Stock> stock, Wording words) {
        return new PickListPage(brief, plan, list, stock, words).page();
    }

    private Page page() {
        List<Markup> content = new ArrayList<>();
        content.add(Parts.heading(words.of("pick-list.title"), brief, words));
        if (!list.unsized().isEmpty()) {
            List<String> places =
                    list.unsized().stream().map(j -> words.end(j.place())).toList();
            content.add(Element.of("section")
                    .styled("cautions")
                    .add(Element.of("h2", words.of("pick-list.unsized")))
                    .add(Element.of("p", words.of("pick-list.unsized-at", places))));
        }
        stock.ifPresent(shelf -> content.add(toOrder(shelf)));
        bins().forEach((bin, items) -> content.add(bin(bin, items)));
        content.add(tools());
        return Page.of(words.of("pick-list.title"), brief, "pick-list", content, words);
    }

    private Map<Bin, List<Item>> bins() {
        Map<Bin, List<Item>> bins = new LinkedHashMap<>();
        for (Item item : list.items()) {
            Bin bin = item.from() == Item.From.BOX
                    ? Bin.BOX
                    : item.article().kind().bin();
            bins.computeIfAbsent(bin, b -> new ArrayList<>()).add(item);
        }
        return bins;
    }

    /** What the shelf does not hold, and what its list does not name. */
    private Element toOrder(Stock shelf) {
        List<String> said = new ArrayList<>();
        for (Item item : list.items()) {
            if (item.from() == Item.From.SHELF) {
                String name = articles.name(item.article());
                Optional<BigDecimal> missing = shelf.missing(item);
                if (missing.isEmpty()) {
                    said.add(words.of("pick-list.look-for", articles.amount(item), name));
                } else if (missing.get().signum() > 0) {
                    said.add(words.of("pick-list.order", articles.amount(item.article(), missing.get()), name));
                }
            }
        }
        if (said.isEmpty()) {
            said.add(words.of("pick-list.enough"));
        }
        return Element.of("section")
                .styled("to-order")
                .add(Element.of("h2", words.of("pick-list.to-order")), Parts.sentences("points", said));
    }

    private Element bin(Bin bin, List<Item> items) {
        Element body = Element.of("tbody");
        for (Item item : items) {
            body = body.add(row(item));
        }
        return Element.of("section")
                .styled("bin")
                .add(
                        Element.of("h2", words.of("pick-list.bin." + bin.word()))
                                .add(Element.of("small", words.of("pick-list.count", items.size()))),
                        Element.of("table")
                                .styled("list picks")
                                .add(Parts.tableHead(columns().toArray(String[]::new)), body));
    }

    private List<String> columns() {
        List<String> keys =
                new ArrayList<>(List.of("pick-list.taken", "pick-list.amount", "pick-list.article", "pick-list.for"));
        stock.ifPresent(shelf -> keys.add("pick-list.stock"));
        return keys.stream().map(words::of).toList();
    }

    private Element row(Item item) {
        Element row = Element.of("tr")
                .add(
                        Parts.tick(articles.name(item.article())),
                        Element.of("th", articles.amount(item)).with("scope", "row"),
                        Parts.cell(words.of("pick-list.article"), articles.name(item.article())),
                        uses(item));
        return stock.map(shelf -> row.add(Parts.cell(words.of("pick-list.stock"), onTheShelf(item, shelf))))
                .orElse(row);
    }

    /** What it is for; no name is broken at a line's end. */
    private Element uses(Item item) {
        if (item.uses().isEmpty()) {
            return Parts.cell(words.of("pick-list.for"), words.of(use(item)));
        }
        Element cell = Parts.cell(words.of("pick-list.for"), "");
        for (String use : item.uses()) {
            cell = cell.add(use.equals(item.uses().getFirst()) ? "" : ", ")
                    .add(Element.of("span", coloured(use)).styled("together"));
        }
        return cell;
    }

    private String onTheShelf(Item item, Stock shelf) {
        return item.from() == Item.From.BOX
                ? words.of("pick-list.boxed")
                : shelf.find(item.article())
                        .map(count -> articles.amount(item.article(), count))
                        .orElseGet(() -> words.of("pick-list.not-counted"));
    }

    /** A wire that goes on from a lead of the kit is taken in that lead's colour, so that it can be followed. */
    private String coloured(String name) {
        return plan.wires().stream()
                .filter(wire -> wire.id().value().equals(name))
                .findFirst()
                .flatMap(AddedWire::lead)
                .map(brief.kit()::lead)
                .flatMap(Lead::colour)
                .map(colour -> words.of("pick-list.wire-coloured", name, colour.letters()))
                .orElse(name);
    }

    private static String use(Item item) {
        return item.from() == Item.From.BOX && item.article().kind() != Article.Kind.KIT
                ? "pick-list.in-box"
                : "pick-list.everywhere";
    }

    private Element tools() {
        Element items = Element.of("ul").styled("tools");
        for (var tool : list.tools()) {
            items = items.add(Element.of("li", words.of("tool." + tool.word())));
        }
        return Element.of("section").add(Element.of("h2", words.of("pick-list.tools")), items);
    }
}
