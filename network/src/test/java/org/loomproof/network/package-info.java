/** Shared words of the engine's tests. */
@NullMarked
package org.loomproof.network;

import org.jspecify.annotations.NullMarked;
