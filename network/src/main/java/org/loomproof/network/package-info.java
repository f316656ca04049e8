/**
 * The electrical engine: networks of parts, solved for volts and amps, with contacts settled. It has never heard of a
 * car and knows no other module.
 */
@NullMarked
package org.loomproof.network;

import org.jspecify.annotations.NullMarked;
