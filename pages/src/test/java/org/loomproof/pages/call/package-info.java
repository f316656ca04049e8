@NullMarked
package org.loomproof.pages.call;

import org.jspecify.annotations.NullMarked;
