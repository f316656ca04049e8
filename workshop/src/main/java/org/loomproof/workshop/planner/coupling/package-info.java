/**
 * What may stand between a lead and a circuit, built from a small grammar of parts and runs of wire. A coupling has no
 * numbers yet: parts have local names, so that two hookups that name the same part share it.
 */
@NullMarked
package org.loomproof.workshop.planner.coupling;

import org.jspecify.annotations.NullMarked;
