/** Each rule by itself, on small named vehicles. */
@NullMarked
package org.loomproof.workshop.planner.rule;

import org.jspecify.annotations.NullMarked;
