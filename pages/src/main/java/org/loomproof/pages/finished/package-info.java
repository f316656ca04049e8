/**
 * What is asked of a finished car: what comes of its faults and slips, whether it passes its tests, and why it comes back. Knows no
 * request and no markup.
 */
@NullMarked
package org.loomproof.pages.finished;

import org.jspecify.annotations.NullMarked;
