package org.loomproof.pages.call;

import java.util.EnumSet;
import java.util.Set;
import org.loomproof.workshop.brief.order.Wish;

/**
 * What was asked and answered on the telephone.
 *
 * @param year of the vehicle; 0 when not known
 * @param doors how many
 * @param manual true for a gearbox worked by hand
 * @param button true when the engine is started by a button, false by a key
 * @param locks true when the doors lock by electricity
 * @param earlierAlarm true when a system was fitted before
 * @param batteryYears the battery's age
 * @param unusedDays the longest time the vehicle stands
 * @param wishes what the customer wants
 */
public record Call(
        int year,
        int doors,
        boolean manual,
        boolean button,
        boolean locks,
        boolean earlierAlarm,
        int batteryYears,
        int unusedDays,
        Set<Wish> wishes) {

    public Call {
        wishes = wishes.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(wishes));
    }
}
