/**
 * One security system: its leads, what each can bear, and how its controller behaves.
 */
@NullMarked
package org.loomproof.workshop.brief.kit;

import org.jspecify.annotations.NullMarked;
