/** Beliefs and likelihoods. */
@NullMarked
package org.loomproof.workshop.meter.evidence;

import org.jspecify.annotations.NullMarked;
