/**
 * What the rules for vehicle alarms allow.
 */
@NullMarked
package org.loomproof.workshop.trade.alarm;

import org.jspecify.annotations.NullMarked;
