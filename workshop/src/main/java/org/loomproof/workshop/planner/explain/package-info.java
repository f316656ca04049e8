/**
 * The words behind decisions: named measurements and the phrases several rules share.
 */
@NullMarked
package org.loomproof.workshop.planner.explain;

import org.jspecify.annotations.NullMarked;
