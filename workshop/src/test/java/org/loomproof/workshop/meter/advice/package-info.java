/** What to measure next. */
@NullMarked
package org.loomproof.workshop.meter.advice;

import org.jspecify.annotations.NullMarked;
