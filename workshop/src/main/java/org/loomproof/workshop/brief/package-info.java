/**
 * What is given for one job: the sheet of the vehicle, the kit and the order. Values only; reading text is the business of {@code brief.read}.
 */
@NullMarked
package org.loomproof.workshop.brief;

import org.jspecify.annotations.NullMarked;
