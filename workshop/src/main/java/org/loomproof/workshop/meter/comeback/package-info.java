/**
 * A car comes back: from what its owner complains of and a few readings, the likeliest causes among all faults and slips of
 * exactly this plan, and the next measurement that splits them best. What is not of the plan is one cause of its own; a cause
 * is never called found by symptoms alone.
 */
@NullMarked
package org.loomproof.workshop.meter.comeback;

import org.jspecify.annotations.NullMarked;
