/**
 * From paper to network: the stock vehicle and the fitted vehicle. The only place where a sheet, a kit or a plan becomes nodes and parts; each part remembers the line it came from.
 */
@NullMarked
package org.loomproof.workshop.wiring;

import org.jspecify.annotations.NullMarked;
