/** The proof report: what was refused, what waits, and every claim with its verdict and what it rests on. */
@NullMarked
package org.loomproof.papers.report;

import org.jspecify.annotations.NullMarked;
