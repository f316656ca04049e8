@NullMarked
package org.loomproof.pages.door;

import org.jspecify.annotations.NullMarked;
