/** What wires show. */
@NullMarked
package org.loomproof.workshop.meter.role;

import org.jspecify.annotations.NullMarked;
