package org.loomproof.pages.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Optional;
import org.loomproof.pages.door.Person;
import org.loomproof.pages.door.Right;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/**
 * What every template is given.
 *
 * @param messages in the reader's language
 * @param person who is signed in
 * @param formMark goes with every form
 * @param path of the page
 */
public record Look(Messages messages, Optional<Person> person, String formMark, String path) {

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

    /** The language as a tag for the page. */
    public String language() {
        return messages.locale().toLanguageTag();
    }

    /** A moment as people write it, in the shop's own time. */
    public String moment(Instant at) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(messages.locale())
                .withZone(ZoneId.systemDefault())
                .format(at);
    }
}
