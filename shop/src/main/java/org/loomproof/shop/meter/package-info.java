/**
 * What is asked of the meter, as use cases: files in, findings or problems out, and both as JSON.
 */
@NullMarked
package org.loomproof.shop.meter;

import org.jspecify.annotations.NullMarked;
