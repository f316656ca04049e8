@NullMarked
package org.loomproof.workshop.meter.shock;

import org.jspecify.annotations.NullMarked;
