/**
 * Jobs at rest, people and web pages. It may know the workshop, papers and intake, and leaves every decision about a
 * car to them.
 */
@NullMarked
package org.loomproof.shop;

import org.jspecify.annotations.NullMarked;
