package org.loomproof.papers.shelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Article.Bin;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;

/** What to take from the shelf, bin by bin, and the tools to lay out. */
public final class PickListPage {

    private final Brief brief;
    private final PickList list;
    private final Wording words;
    private final ArticleWords articles;

    private PickListPage(Brief brief, PickList list, Wording words) {
        this.brief = brief;
        this.list = list;
        this.words = words;
        this.articles = new ArticleWords(words);
    }

    /** The list as a page. */
    public static Page page(Brief brief, PickList list, Wording words) {
        return new PickListPage(brief, list, words).page();
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
                                .add(
                                        Parts.tableHead(
                                                words.of("pick-list.taken"),
                                                words.of("pick-list.amount"),
                                                words.of("pick-list.article"),
                                                words.of("pick-list.for")),
                                        body));
    }

    private Element row(Item item) {
        String uses = item.uses().isEmpty() ? words.of(use(item)) : String.join(", ", item.uses());
        return Element.of("tr")
                .add(
                        Parts.tick(articles.name(item.article())),
                        Element.of("th", articles.amount(item)).with("scope", "row"),
                        Parts.cell(words.of("pick-list.article"), articles.name(item.article())),
                        Parts.cell(words.of("pick-list.for"), uses));
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
