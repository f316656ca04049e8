/**
 * All that is known of one vehicle and its factory circuits.
 */
@NullMarked
package org.loomproof.workshop.brief.sheet;

import org.jspecify.annotations.NullMarked;
