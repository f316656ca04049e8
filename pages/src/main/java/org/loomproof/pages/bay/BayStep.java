package org.loomproof.pages.bay;

import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.workshop.goods.bay.Station;
import org.loomproof.workshop.goods.bay.Visit;

/**
 * One thing to do at one place in the car.
 *
 * @param number in working order, from 1
 * @param place the circuit's name; for what is no circuit a name of ours behind an {@code @}, which no circuit has
 * @param station without moving on from where it is done
 * @param visit what is done
 * @param sum of all that is to be done there: a tick for another sum does not count
 */
public record BayStep(int number, String place, Station station, Visit visit, String sum) {

    /** Its name in a work log. */
    public String id() {
        return "bay/" + place;
    }

    /** Where it is under its job's address. */
    public String address() {
        return ShopAddress.stepId(place);
    }

    /** True for a step that parts a wire. */
    public boolean isCut() {
        return visit instanceof Visit.Cut;
    }
}
