/**
 * The guide to the couplings, made from the worked examples and held to them.
 */
@NullMarked
package org.loomproof.papers.guide;

import org.jspecify.annotations.NullMarked;
