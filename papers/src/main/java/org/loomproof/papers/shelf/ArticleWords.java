package org.loomproof.papers.shelf;

import java.math.BigDecimal;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.quantity.QuantityText;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Unit;

/** Articles and amounts in words. */
public record ArticleWords(Wording words) {

    /** An article with its size, such as {@code fuse 7.5 A}. */
    public String name(Article article) {
        String size = size(article).replace(' ', '\u00A0');
        String sleeve = "article.sleeve-colour." + size;
        return words.of("article." + article.kind().word(), words.messages().knows(sleeve) ? words.of(sleeve) : size)
                .strip();
    }

    /** As the shop calls it; a wire's in the reader's own measure too. */
    private String size(Article article) {
        return article.kind() == Article.Kind.WIRE
                        && QuantityText.read(article.size(), Unit.SQUARE_MILLIMETRES)
                                instanceof QuantityText.Outcome.Read<SquareMillimetres>(var range)
                ? words.size(range.typical())
                : article.size();
    }

    /** How many, or how long. */
    public String amount(Item item) {
        return amount(item.article(), item.amount());
    }

    /** So many, or so long. */
    public String amount(Article article, BigDecimal amount) {
        String number = amount.stripTrailingZeros().toPlainString();
        return switch (article.kind().per()) {
            case PIECE -> words.of("amount.pieces", number);
            case METRE -> words.of("amount.metres", number);
        };
    }
}
