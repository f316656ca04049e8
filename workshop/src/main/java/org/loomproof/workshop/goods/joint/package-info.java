/**
 * Every joint that a plan asks for, with how it is made. It reads the plan as it stands and decides nothing about the car.
 */
@NullMarked
package org.loomproof.workshop.goods.joint;

import org.jspecify.annotations.NullMarked;
