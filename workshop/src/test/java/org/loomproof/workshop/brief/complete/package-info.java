@NullMarked
package org.loomproof.workshop.brief.complete;

import org.jspecify.annotations.NullMarked;
