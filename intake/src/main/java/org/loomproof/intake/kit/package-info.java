/**
 * From a pasted list of leads to a kit file. What a lead is meant for is read by the words of the circuit it goes to, and by a
 * few that only a kit has; ratings are taken from the text or asked for, never assumed.
 */
@NullMarked
package org.loomproof.intake.kit;

import org.jspecify.annotations.NullMarked;
