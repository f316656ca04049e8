/**
 * The job book at rest: customers, jobs, sheets, kits and people as cards, every change of which is an event that stays.
 *
 * <p>It knows how to keep and find, and leaves to others what a card means to a car.
 */
@NullMarked
package org.loomproof.book;

import org.jspecify.annotations.NullMarked;
