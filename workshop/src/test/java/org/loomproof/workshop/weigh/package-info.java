/** What is picked, and why the others lost. */
@NullMarked
package org.loomproof.workshop.weigh;

import org.jspecify.annotations.NullMarked;
