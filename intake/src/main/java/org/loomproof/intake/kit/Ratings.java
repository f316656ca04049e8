package org.loomproof.intake.kit;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Seconds;

/** Amperes and seconds that a list of leads states. */
final class Ratings {

    private static final Pattern AMPS =
            Pattern.compile("(?<![\\w.,])(\\d{1,4}(?:[.,]\\d{1,2})?)\\s*(m?)(?:a|amps?|ampere|amperios|amperes)\\b");
    private static final Pattern SECONDS = Pattern.compile(
            "(?<![\\w.,])(\\d{1,4}(?:[.,]\\d{1,2})?)\\s*(m?)(?:s|sec|secs|seconds?|sek|sekunden?|segundos?|secondes?)\\b");
    private static final double THOUSANDTH = 0.001;

    private Ratings() {}

    /** The only current that is stated; of several nobody can tell which is meant. */
    static Optional<Amps> amps(String folded) {
        return single(AMPS, folded).map(Amps::new);
    }

    /** The only time that is stated. */
    static Optional<Seconds> pulse(String folded) {
        return single(SECONDS, folded).map(Seconds::new);
    }

    /** The text without its currents and times. */
    static String without(String folded) {
        return SECONDS.matcher(AMPS.matcher(folded).replaceAll(" ")).replaceAll(" ");
    }

    private static Optional<Double> single(Pattern pattern, String folded) {
        Matcher matcher = pattern.matcher(folded);
        if (!matcher.find()) {
            return Optional.empty();
        }
        double amount = Double.parseDouble(matcher.group(1).replace(',', '.'))
                * (matcher.group(2).isEmpty() ? 1 : THOUSANDTH);
        return matcher.find() || amount <= 0 ? Optional.empty() : Optional.of(amount);
    }
}
