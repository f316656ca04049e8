/**
 * What the book is made of: cards with entries, and the changes by which each became what it is. Values only; how they are kept
 * is the store's affair.
 */
@NullMarked
package org.loomproof.book.card;

import org.jspecify.annotations.NullMarked;
