package org.loomproof.pages.finished;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of parts and wires in the order in which people look for them: {@code K2} before {@code K10}. */
final class Names {

    private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})");

    static final Comparator<String> NATURAL = Comparator.comparing(Names::letters)
            .thenComparingInt(Names::number)
            .thenComparing(Comparator.naturalOrder());

    private Names() {}

    private static String letters(String name) {
        Matcher matcher = NUMBERED.matcher(name);
        return matcher.matches() ? matcher.group(1) : name;
    }

    private static int number(String name) {
        Matcher matcher = NUMBERED.matcher(name);
        return matcher.matches() ? Integer.parseInt(matcher.group(2)) : -1;
    }
}
