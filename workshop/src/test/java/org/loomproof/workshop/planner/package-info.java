/** What the planner decides, rule by rule and as a whole. */
@NullMarked
package org.loomproof.workshop.planner;

import org.jspecify.annotations.NullMarked;
