/**
 * What is usual where nobody has said anything: ranges for single figures, and whole paths by the role of a circuit.
 */
@NullMarked
package org.loomproof.workshop.trade.template;

import org.jspecify.annotations.NullMarked;
