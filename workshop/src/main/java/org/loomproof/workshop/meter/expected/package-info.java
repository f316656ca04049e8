/**
 * What a meter must show at the wires of a car before anything is joined to them, and at both ends of a cut: computed from the
 * sheet alone, over all that its ranges allow. Knows no reading that somebody took.
 */
@NullMarked
package org.loomproof.workshop.meter.expected;

import org.jspecify.annotations.NullMarked;
