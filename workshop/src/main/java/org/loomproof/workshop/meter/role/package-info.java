/**
 * What a wire may be, and what a meter shows on each: networks of our own for every way in which such a wire is usually
 * built, solved for many drawn cars. Knows no reading that was taken.
 */
@NullMarked
package org.loomproof.workshop.meter.role;

import org.jspecify.annotations.NullMarked;
