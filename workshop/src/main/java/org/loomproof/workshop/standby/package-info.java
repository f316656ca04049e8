/** What a car with the plan carried out draws while it stands. Knows the plan and what is given, and no rule of the planner. */
@NullMarked
package org.loomproof.workshop.standby;

import org.jspecify.annotations.NullMarked;
