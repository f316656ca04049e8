/**
 * What may go wrong with a plan by itself (faults) and by the hand that carries it out (slips), with the list of them for a
 * plan. Knows brief and plan, nothing of volts.
 */
@NullMarked
package org.loomproof.workshop.fault;

import org.jspecify.annotations.NullMarked;
