/** The bench card: the loom lead by lead, with the parts and the wires to add. */
@NullMarked
package org.loomproof.papers.card;

import org.jspecify.annotations.NullMarked;
