/**
 * The command {@code loomproof}: one class a command. A command reads, calls and prints, nothing more.
 */
@NullMarked
package org.loomproof.cli;

import org.jspecify.annotations.NullMarked;
