/**
 * What the places where conductors meet usually resist: contacts, joints, ground screws.
 */
@NullMarked
package org.loomproof.workshop.trade.connector;

import org.jspecify.annotations.NullMarked;
