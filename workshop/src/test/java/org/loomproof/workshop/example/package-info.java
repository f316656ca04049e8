/**
 * The worked examples as tests: each is read, solved where a figure was worked by hand, planned and proven.
 */
@NullMarked
package org.loomproof.workshop.example;

import org.jspecify.annotations.NullMarked;
