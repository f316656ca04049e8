/**
 * Drawings, plots and documents made from a plan and its verdicts. It decides nothing: whatever a paper states was
 * decided or proven in the workshop.
 */
@NullMarked
package org.loomproof.papers;

import org.jspecify.annotations.NullMarked;
