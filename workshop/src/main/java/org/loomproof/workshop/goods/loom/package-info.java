/** How the leads of a kit are told apart once they are long and loose. */
@NullMarked
package org.loomproof.workshop.goods.loom;

import org.jspecify.annotations.NullMarked;
