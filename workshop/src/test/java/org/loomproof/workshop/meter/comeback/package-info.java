@NullMarked
package org.loomproof.workshop.meter.comeback;

import org.jspecify.annotations.NullMarked;
