/**
 * One file a rule: when it speaks, what it decides, and why.
 */
@NullMarked
package org.loomproof.workshop.planner.rule;

import org.jspecify.annotations.NullMarked;
