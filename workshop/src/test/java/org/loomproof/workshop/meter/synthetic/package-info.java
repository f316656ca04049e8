/**
 * Made-up wires whose networks are drawn apart from the tool's, wider than it assumes, and measured by people who err: what
 * the meter is judged by.
 */
@NullMarked
package org.loomproof.workshop.meter.synthetic;

import org.jspecify.annotations.NullMarked;
