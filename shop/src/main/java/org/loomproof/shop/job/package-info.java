/**
 * The use cases of one job - plan it, prove it again - that the command line and the pages both call.
 *
 * <p>Reads, calls the workshop's rooms in order, has the papers written, and says how it ended. Decides nothing itself.
 */
@NullMarked
package org.loomproof.shop.job;

import org.jspecify.annotations.NullMarked;
