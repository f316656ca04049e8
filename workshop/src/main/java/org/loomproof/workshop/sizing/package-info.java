/**
 * Rules of size: wire, fuse, relay, diode, and how long the battery lasts. Every formula names its source. Knows the trade
 * and its units; has not heard of circuits, leads or plans.
 */
@NullMarked
package org.loomproof.workshop.sizing;

import org.jspecify.annotations.NullMarked;
