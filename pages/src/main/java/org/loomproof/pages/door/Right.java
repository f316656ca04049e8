package org.loomproof.pages.door;

import io.javalin.security.RouteRole;

/** What a page asks of whoever wants to see it. Every route names one; a route without any is shown to nobody. */
public enum Right implements RouteRole {
    /** Nothing: signing in, style and script. */
    ANYONE,
    /** Jobs and customers. */
    JOBS,
    /** Wiring, plans, papers, hidden places. */
    WORK,
    /** People of the shop. */
    PEOPLE
}
