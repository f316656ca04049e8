/** What can be wired: sealed records of pins and ratings. Knows nothing of networks, settings or equations. */
@NullMarked
package org.loomproof.network.part;

import org.jspecify.annotations.NullMarked;
