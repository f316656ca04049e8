/** The bay sheet: the work in the car in its order, with what to measure and room for what was measured. */
@NullMarked
package org.loomproof.papers.bay;

import org.jspecify.annotations.NullMarked;
