@NullMarked
package org.loomproof.workshop.wiring;

import org.jspecify.annotations.NullMarked;
