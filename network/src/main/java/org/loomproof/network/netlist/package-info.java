/** Parts joined into a network, and what is set from outside: switches, outputs, supply, faults. Knows no equations. */
@NullMarked
package org.loomproof.network.netlist;

import org.jspecify.annotations.NullMarked;
