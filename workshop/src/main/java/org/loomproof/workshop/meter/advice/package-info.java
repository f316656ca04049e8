/**
 * What to measure next, and when enough is known to act: never a test that could hurt, never an act dearer than what is known.
 */
@NullMarked
package org.loomproof.workshop.meter.advice;

import org.jspecify.annotations.NullMarked;
