/**
 * What goes to the customer: quote, hand-over, and the slip with the place of the override. The same content as a page and as
 * plain text for a message. Hidden places stand on the slip and nowhere else.
 */
@NullMarked
package org.loomproof.papers.letter;

import org.jspecify.annotations.NullMarked;
