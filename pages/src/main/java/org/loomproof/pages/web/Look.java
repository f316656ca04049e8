package org.loomproof.pages.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.text.NumberFormat;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.loomproof.pages.door.Person;
import org.loomproof.pages.door.Right;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.shelf.ArticleWords;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;
import org.loomproof.workshop.words.ReaderUnits;

/**
 * What every template is given.
 *
 * @param messages in the reader's language
 * @param person who is signed in
 * @param formMark goes with every form
 * @param path of the page
 */
public record Look(Messages messages, Optional<Person> person, String formMark, String path) {

    private static final long A_HOUR = 60;

    /** A sentence in the reader's language. */
    public String text(String key, Object... arguments) {
        return messages.text(key, arguments);
    }

    /** A sentence in the reader's language. */
    public String text(Phrase phrase) {
        return messages.text(phrase);
    }

    /** What an entry of a card is called; its own name where nobody gave it another. */
    public String entry(String name) {
        String key = "pages.entry." + name;
        return messages.knows(key) ? messages.text(key) : name;
    }

    /** True when somebody is signed in who has the right. */
    public boolean may(Right right) {
        return person.map(p -> p.role().has(right)).orElse(false);
    }

    /** What a form notes of work, but for what is chosen and typed in it: names and texts in turn, as JSON. */
    public String entry(String... namesAndTexts) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        for (int k = 0; k + 1 < namesAndTexts.length; k += 2) {
            node.put(namesAndTexts[k], namesAndTexts[k + 1]);
        }
        return node.toString();
    }

    /** A name for an entry that a form will note. */
    public String fresh() {
        return UUID.randomUUID().toString();
    }

    /** Markup of a paper, for a page. */
    public String drawn(List<Markup> markup) {
        return MarkupWriter.fragment(Element.of("div", markup));
    }

    /** The language as a tag for the page. */
    public String language() {
        return messages.locale().getLanguage();
    }

    /** An article of the shelf with its size. */
    public String article(Article article) {
        return new ArticleWords(new Wording(messages)).name(article);
    }

    /** In which units the reader wants to read. */
    public ReaderUnits units() {
        return ReaderUnits.of(messages.locale());
    }

    /** A time in hours and minutes. */
    public String minutes(double minutes) {
        long whole = Math.round(minutes);
        return messages.text("pages.spent.time", whole / A_HOUR, whole % A_HOUR);
    }

    /** A number as people write it. */
    public String number(double number) {
        return NumberFormat.getInstance(messages.locale()).format(number);
    }

    /** A moment as people write it, in the shop's own time. */
    public String moment(Instant at) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(messages.locale())
                .withZone(ZoneId.systemDefault())
                .format(at);
    }
}
