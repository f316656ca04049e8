@NullMarked
package org.loomproof.workshop.meter.drain;

import org.jspecify.annotations.NullMarked;
