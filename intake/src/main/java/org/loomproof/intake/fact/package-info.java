/**
 * What notes say of the vehicle as a whole, beside its circuits: taken where it is said and nothing differs, never assumed.
 */
@NullMarked
package org.loomproof.intake.fact;

import org.jspecify.annotations.NullMarked;
