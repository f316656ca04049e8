/**
 * Tables, transactions and seals. Whatever leaves a method that changes something is on the disk; nothing that names a person, a
 * plate, a vehicle number or a place reaches a table unsealed.
 */
@NullMarked
package org.loomproof.book.store;

import org.jspecify.annotations.NullMarked;
