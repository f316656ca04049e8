/**
 * How a shock sensor is set: blows of a known strength given by the up-and-down method, the strength that is noticed half of the
 * time with its spread, and the setting that bears the street and still notices the blow that matters. Knows no network.
 */
@NullMarked
package org.loomproof.workshop.meter.shock;

import org.jspecify.annotations.NullMarked;
