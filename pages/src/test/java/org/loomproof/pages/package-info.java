@NullMarked
package org.loomproof.pages;

import org.jspecify.annotations.NullMarked;
