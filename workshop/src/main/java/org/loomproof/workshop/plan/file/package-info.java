/**
 * A plan on disk: one self-contained file with the texts it was made from, written by the planner or by hand.
 */
@NullMarked
package org.loomproof.workshop.plan.file;

import org.jspecify.annotations.NullMarked;
