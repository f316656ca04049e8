package org.loomproof.pages.web;

import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Has the libraries speak only when something is wrong; of requests they could tell more than a log may hold. */
public final class Quiet {

    /** Held, since a logger nobody holds forgets its level. */
    private static final List<Logger> LIBRARIES = List.of(
            Logger.getLogger("io.javalin"),
            Logger.getLogger("org.eclipse.jetty"),
            Logger.getLogger("com.zaxxer.hikari"),
            Logger.getLogger("org.flywaydb"),
            Logger.getLogger("com.github.kagkarlsson"));

    private Quiet() {}

    /** Once, before the first of them is used. */
    public static void libraries() {
        LIBRARIES.forEach(logger -> logger.setLevel(Level.WARNING));
    }
}
