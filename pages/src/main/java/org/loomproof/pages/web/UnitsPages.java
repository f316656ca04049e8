package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.words.ReaderUnits;
import org.loomproof.workshop.words.ReaderUnits.Sizes;

/**
 * In which units a device shows everything: kept with the device, since a reel of wire hangs beside it. What is planned is the same
 * in all of them; papers are written in those of whoever had the plan made.
 */
final class UnitsPages {

    private static final String COOKIE = "units";
    private static final String FAHRENHEIT = "fahrenheit";
    private static final int A_YEAR_SECONDS = 31_536_000;

    private final Listen listen;

    UnitsPages(Listen listen) {
        this.listen = listen;
    }

    /** Those of the device that asks; the plain ones where it says nothing that can be read. */
    static ReaderUnits of(Context context) {
        String said = Optional.ofNullable(context.cookie(COOKIE)).orElse("");
        return units(said.replaceFirst("-.*", ""), said.replaceFirst("[^-]*-?", ""));
    }

    private static ReaderUnits units(String sizes, String temperature) {
        return new ReaderUnits(
                Stream.of(Sizes.values()).filter(one -> word(one).equals(sizes)).findFirst(),
                temperature.equals(FAHRENHEIT));
    }

    private static String word(Sizes sizes) {
        return sizes.name().toLowerCase(Locale.ROOT);
    }

    /** Keeps them with the device, and goes back to the page. */
    void choose(Context context) {
        Visit visit = Visit.of(context);
        ReaderUnits units = units(visit.form("sizes"), visit.form("temperature"));
        String kept = units.sizes().map(UnitsPages::word).orElse("bought")
                + "-"
                + (units.fahrenheit() ? FAHRENHEIT : "celsius");
        context.cookie(new Cookie(COOKIE, kept, "/", A_YEAR_SECONDS, listen.isSecure(), true, null, SameSite.STRICT));
        String back = visit.form("back");
        visit.go(back.matches("/([A-Za-z0-9@._-]+/?)*") ? back : "/");
    }
}
