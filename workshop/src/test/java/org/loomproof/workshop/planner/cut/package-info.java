/** What the grammar offers and leaves out, against the engine. */
@NullMarked
package org.loomproof.workshop.planner.cut;

import org.jspecify.annotations.NullMarked;
