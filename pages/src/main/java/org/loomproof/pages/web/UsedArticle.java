package org.loomproof.pages.web;

import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.pages.work.Work;
import org.loomproof.workshop.goods.shelf.Article;

/** The article that an entry of a work log names. */
public final class UsedArticle {

    private UsedArticle() {}

    /** It, by its word, which was found to be one before the entry was written. */
    public static Article of(Work.PartUsed used) {
        return new Article(kind(used.article()).orElseThrow(), used.size());
    }

    /** What a word from outside names. */
    static Optional<Article.Kind> kind(String word) {
        return Stream.of(Article.Kind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst();
    }
}
