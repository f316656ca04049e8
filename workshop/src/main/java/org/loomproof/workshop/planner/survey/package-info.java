/**
 * What the planner reads out of a sheet before it decides: which circuit serves a role and how sure that is, how it
 * switches, and what flows in a wire when somebody joins it to the body or to the supply.
 */
@NullMarked
package org.loomproof.workshop.planner.survey;

import org.jspecify.annotations.NullMarked;
