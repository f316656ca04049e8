/**
 * What draws from the battery of a locked car: a log of its current in plateaus, steps of modules that go to sleep told from a
 * drain and from something that wakes again and again, the branch to measure next, and how long the battery lasts. Knows the
 * plan by what it adds while the car stands; solves no network.
 */
@NullMarked
package org.loomproof.workshop.meter.drain;

import org.jspecify.annotations.NullMarked;
