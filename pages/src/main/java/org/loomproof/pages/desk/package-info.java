/**
 * What pages do: the shop's book, locked or open, the steps of a job, and plans being proven in the background. Knows no request
 * and no markup.
 */
@NullMarked
package org.loomproof.pages.desk;

import org.jspecify.annotations.NullMarked;
