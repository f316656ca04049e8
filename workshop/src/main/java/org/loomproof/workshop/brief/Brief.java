package org.loomproof.workshop.brief;

import java.util.List;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.sheet.Sheet;

/**
 * The given part of a job.
 *
 * @param sheet the vehicle; complete, so that every circuit the work needs has a path
 * @param kit the security system
 * @param order what is wanted
 */
public record Brief(Sheet sheet, Kit kit, Order order) {

    /** The same job with options of the kit set. */
    public Brief set(List<Choice> choices) {
        return new Brief(sheet, kit.set(choices), order);
    }
}
