/**
 * What may go wrong with a plan: slips of the hand, each as the plan that then comes out. Knows the plan only.
 */
@NullMarked
package org.loomproof.workshop.fault;

import org.jspecify.annotations.NullMarked;
