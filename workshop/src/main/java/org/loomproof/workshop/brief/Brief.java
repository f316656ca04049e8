package org.loomproof.workshop.brief;

import java.util.List;
import java.util.function.Predicate;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Sheet;

/**
 * The given part of a job.
 *
 * @param sheet the vehicle; complete, so that every circuit the work needs has a path. What a person will work besides, such as a
 *     button out of the kit's box, stands last among its operables
 * @param kit the security system
 * @param order what is wanted
 */
public record Brief(Sheet sheet, Kit kit, Order order) {

    public Brief {
        List<Operable> further = kit.extras().stream()
                .flatMap(extra -> extra.operable().stream())
                .filter(Predicate.not(sheet.operables()::contains))
                .toList();
        sheet = sheet.withFurther(further);
    }

    /** The same job with options of the kit set. */
    public Brief set(List<Choice> choices) {
        return new Brief(sheet, kit.set(choices), order);
    }
}
