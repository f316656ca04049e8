/**
 * Locks and latches: how long what moves them takes.
 */
@NullMarked
package org.loomproof.workshop.trade.lock;

import org.jspecify.annotations.NullMarked;
