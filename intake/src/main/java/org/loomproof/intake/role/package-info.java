/**
 * What a circuit is for, by the trade's words in four languages: words name ideas, and a role is a set of ideas. Every answer says why.
 */
@NullMarked
package org.loomproof.intake.role;

import org.jspecify.annotations.NullMarked;
