package org.loomproof.workshop.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

/**
 * Turns a {@link Phrase} into a sentence of one language.
 *
 * <p>English is kept in one file a room, since the rooms are written apart; another language is the single file
 * {@code LANGUAGE.properties} beside them, laid over the English text. A key without a message is our own mistake and is
 * told at once.
 */
public final class Messages {

    /** The rooms of the English text, in reading order. */
    public static final List<String> ROOMS = List.of(
            "problem",
            "brief",
            "plan",
            "proof",
            "fault",
            "readings",
            "papers",
            "intake",
            "terminal",
            "command",
            "meter",
            "book",
            "pages",
            "bay",
            "finished");

    /** The languages of which there are words, English first. */
    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.of("es"));

    private final Locale locale;
    private final Map<String, String> patterns;

    private Messages(Locale locale, Map<String, String> patterns) {
        this.locale = locale;
        this.patterns = patterns;
    }

    /** The languages of which there are words, English first. */
    public static List<Locale> languages() {
        return LANGUAGES;
    }

    /** The English text. */
    public static Messages english() {
        return in(Locale.ENGLISH);
    }

    /** The text in the locale's language; in English, numbers too, where that language has no file or its file is silent. */
    public static Messages in(Locale locale) {
        Map<String, String> patterns = new LinkedHashMap<>();
        for (String room : ROOMS) {
            lay("en/" + room + ".properties", patterns);
        }
        boolean spoken = lay(locale.getLanguage() + ".properties", patterns);
        return new Messages(spoken ? locale : ReaderUnits.of(locale).with(Locale.ENGLISH), patterns);
    }

    private static boolean lay(String file, Map<String, String> over) {
        try (InputStream in = Messages.class.getResourceAsStream(file)) {
            if (in == null) {
                return false;
            }
            Properties properties = new Properties();
            Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
            properties.load(reader);
            properties.stringPropertyNames().forEach(key -> over.put(key, properties.getProperty(key)));
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException("message file " + file + " cannot be read", e);
        }
    }

    /** The language of the words, with the units of whoever reads them ({@link ReaderUnits}). */
    public Locale locale() {
        return locale;
    }

    /** The phrase as a sentence; phrases among its arguments are rendered first. */
    public String text(Phrase phrase) {
        String pattern = patterns.get(phrase.key());
        if (pattern == null) {
            throw new IllegalArgumentException("no message for key " + phrase.key());
        }
        Object[] arguments = phrase.arguments().stream().map(this::rendered).toArray();
        return new MessageFormat(pattern, locale).format(arguments);
    }

    /** Shorthand for {@code text(Phrase.of(key, arguments))}. */
    public String text(String key, Object... arguments) {
        return text(Phrase.of(key, arguments));
    }

    private Object rendered(Object argument) {
        return switch (argument) {
            case Phrase nested -> text(nested);
            case Written written -> written.in(locale);
            case Number number -> number;
            case Collection<?> many -> joined(many);
            default -> argument.toString();
        };
    }

    private String joined(Collection<?> many) {
        StringBuilder out = new StringBuilder();
        for (Object one : many) {
            out.append(out.isEmpty() ? "" : ", ").append(rendered(one));
        }
        return out.toString();
    }

    /** The message as it stands in its file, for those who fill its holes themselves; empty when there is none. */
    public Optional<String> findPattern(String key) {
        return Optional.ofNullable(patterns.get(key));
    }

    /** True when the key has a message. */
    public boolean knows(String key) {
        return patterns.containsKey(key);
    }

    /** Every key there is, sorted. */
    public Set<String> keys() {
        return new TreeSet<>(patterns.keySet());
    }
}
