/**
 * From the three files of a job to its brief, with every problem of all three told at once.
 */
@NullMarked
package org.loomproof.workshop.brief.read;

import org.jspecify.annotations.NullMarked;
