/** Parts on their own: what their data say before they are wired. */
@NullMarked
package org.loomproof.network.part;

import org.jspecify.annotations.NullMarked;
