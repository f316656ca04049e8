@NullMarked
package org.loomproof.pages.desk;

import org.jspecify.annotations.NullMarked;
