/**
 * What a terminal shows of a job: plain text, no wider than eighty columns.
 */
@NullMarked
package org.loomproof.cli.report;

import org.jspecify.annotations.NullMarked;
