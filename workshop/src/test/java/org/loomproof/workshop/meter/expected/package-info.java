@NullMarked
package org.loomproof.workshop.meter.expected;

import org.jspecify.annotations.NullMarked;
