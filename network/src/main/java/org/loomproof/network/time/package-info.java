/**
 * A network run in time: a timeline of what is set from outside goes in, a trace of volts, amps, contacts and events comes
 * out, or words that say why the run stopped early. Every step in time is one or two instants of {@code solve}, in which
 * whatever stores something stands for its companion; {@code Step} holds the method, {@code Contacts} what moves, {@code
 * TimeRun} the order of things. Knows no wall clock.
 */
@NullMarked
package org.loomproof.network.time;

import org.jspecify.annotations.NullMarked;
