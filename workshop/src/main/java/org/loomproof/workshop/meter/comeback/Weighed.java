package org.loomproof.workshop.meter.comeback;

import java.util.List;

/**
 * A suspect with its car.
 *
 * @param causes one, or two at once
 * @param car what they make of the finished car
 * @param probability 0 to 1
 */
record Weighed(List<Cause> causes, FinishedCar car, double probability) {

    Suspect suspect(List<Taken> taken) {
        return new Suspect(causes, probability, car.shows(taken));
    }
}
