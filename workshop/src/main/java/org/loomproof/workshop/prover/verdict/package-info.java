/**
 * What the proof found: verdicts, margins, witnesses.
 */
@NullMarked
package org.loomproof.workshop.prover.verdict;

import org.jspecify.annotations.NullMarked;
