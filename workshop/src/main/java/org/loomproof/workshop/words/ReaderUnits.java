package org.loomproof.workshop.words;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * In which units somebody wants to read, which goes with their language as keywords of the locale (Unicode Technical Standard 35:
 * {@code ms} for the system of measures, {@code mu} for the unit of temperature). So {@code es-u-ms-ussystem-mu-fahrenhe} is
 * Spanish with wire gauges and degrees Fahrenheit, wherever a locale goes: a page, work in the background, a paper. In which sizes
 * wire is bought is something else, and the order says it.
 *
 * @param sizes how sizes of wire are read; nothing where they stand as they are bought
 * @param fahrenheit whether temperatures are read in degrees Fahrenheit
 */
public record ReaderUnits(Optional<Sizes> sizes, boolean fahrenheit) {

    /** As plans and files have them. */
    public static final ReaderUnits PLAIN = new ReaderUnits(Optional.empty(), false);

    private static final String MEASURES = "ms";
    private static final String TEMPERATURE = "mu";
    private static final String FAHRENHEIT = "fahrenhe";

    /** How sizes of wire are read. */
    public enum Sizes {
        MM2("metric"),
        AWG("ussystem");

        private final String keyword;

        Sizes(String keyword) {
            this.keyword = keyword;
        }
    }

    /** Those of a locale; what it names otherwise counts as not said. */
    public static ReaderUnits of(Locale locale) {
        Optional<Sizes> sizes = Optional.ofNullable(locale.getUnicodeLocaleType(MEASURES))
                .flatMap(keyword -> Stream.of(Sizes.values())
                        .filter(one -> one.keyword.equals(keyword))
                        .findFirst());
        return new ReaderUnits(sizes, FAHRENHEIT.equals(locale.getUnicodeLocaleType(TEMPERATURE)));
    }

    /** The language of a locale with these units, and with nothing else that a locale may carry. */
    public Locale with(Locale locale) {
        Locale.Builder builder = new Locale.Builder().setLocale(locale.stripExtensions());
        sizes.ifPresent(one -> builder.setUnicodeLocaleKeyword(MEASURES, one.keyword));
        if (fahrenheit) {
            builder.setUnicodeLocaleKeyword(TEMPERATURE, FAHRENHEIT);
        }
        return builder.build();
    }
}
