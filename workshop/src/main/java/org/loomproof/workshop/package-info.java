/**
 * The job itself, from brief to plan to proof. It may know the network module and nothing of paper, pages or the
 * command line.
 */
@NullMarked
package org.loomproof.workshop;

import org.jspecify.annotations.NullMarked;
