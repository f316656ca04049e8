package org.loomproof.pages.door;

import io.javalin.security.RouteRole;

/** What a page asks of whoever wants to see it. Every route names one; a route without any is shown to nobody. */
public enum Right implements RouteRole {
    /** Nothing: signing in, style and script. */
    ANYONE,
    /** Being signed in: one's own password and devices. The only pages open to whoever has yet to choose a password of their own. */
    ONESELF,
    /** Jobs and customers. */
    JOBS,
    /** Wiring, plans, papers, hidden places. */
    WORK,
    /** People of the shop. */
    PEOPLE
}
