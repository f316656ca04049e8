package org.loomproof.workshop.meter.advice;

import java.util.List;
import org.loomproof.workshop.meter.evidence.Likelihood;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.Step.KeyAt;
import org.loomproof.workshop.meter.role.WireRole;

/** What must have been seen of a wire of a role before it is joined, however likely it is. Common practice, no published source. */
public enum Demand {
    /** A constant lives without a key as well: what the key's own switch feeds is dead then. */
    KEY_OUT(MeterTest.KEY_OUT) {
        @Override
        boolean isMetBy(Reading r) {
            return isWithKey(r, KeyAt.NO_KEY);
        }
    },
    /** What is live with the key off is no ignition and no starter wire. */
    KEY_OFF(MeterTest.KEY_OFF) {
        @Override
        boolean isMetBy(Reading r) {
            return isWithKey(r, KeyAt.OFF);
        }
    },
    /** The key's first position. */
    KEY_ACCESSORY(MeterTest.KEY_ACCESSORY) {
        @Override
        boolean isMetBy(Reading r) {
            return isWithKey(r, KeyAt.ACCESSORY);
        }
    },
    /** An ignition is live with the key on, a starter wire is not. */
    KEY_ON(MeterTest.KEY_ON) {
        @Override
        boolean isMetBy(Reading r) {
            return isWithKey(r, KeyAt.ON);
        }
    },
    /** Constants and true ignitions stay while cranking, second ignitions and accessories fall, a starter wire rises; a slow meter does not see it. */
    CRANKED(MeterTest.CRANKING) {
        @Override
        boolean isMetBy(Reading r) {
            return isVolts(r) && r.step().key() == KeyAt.CRANKING && !Likelihood.isTooSlow(r);
        }
    },
    /** A wire that follows something changes when that is worked; one that rests as it should may be any other. */
    WORKED(MeterTest.OPENED) {
        @Override
        boolean isMetBy(Reading r) {
            return isVolts(r) && r.step().worked() != Step.Worked.NOTHING;
        }

        @Override
        public MeterTest test(WireRole role) {
            return MeterTest.working(role).orElseGet(() -> super.test(role));
        }
    },
    /** A module that lets its wire go when it sleeps would sound the alarm. */
    SLEPT(MeterTest.ASLEEP) {
        @Override
        boolean isMetBy(Reading r) {
            return isVolts(r) && r.step().asleep();
        }
    },
    /** A wire that answers to one button may answer to the other too, by resistance, by pole, or as a motor's leg. */
    UNLOCKED(MeterTest.UNLOCKED) {
        @Override
        boolean isMetBy(Reading r) {
            return isVolts(r) && r.step().worked() == Step.Worked.UNLOCK;
        }
    },
    /** The same for the other one. */
    LOCKED(MeterTest.LOCKED) {
        @Override
        boolean isMetBy(Reading r) {
            return isVolts(r) && r.step().worked() == Step.Worked.LOCK;
        }
    },
    /** Nothing on a voltmeter is ground, a dead wire, or a resting motor leg. */
    OHMS_TO_BODY(MeterTest.OHMS) {
        @Override
        boolean isMetBy(Reading r) {
            return r.measured() == Measured.OHMS && r.step().aid() == Step.Aid.BATTERY_OFF;
        }
    };

    @SuppressWarnings("ImmutableEnumChecker") // a record of records
    private final MeterTest test;

    Demand(MeterTest test) {
        this.test = test;
    }

    abstract boolean isMetBy(Reading reading);

    /** The test that meets it for a wire of that role. */
    public MeterTest test(WireRole role) {
        return test;
    }

    /** What a role asks for. */
    public static List<Demand> of(WireRole role) {
        return switch (role) {
            case CONSTANT -> List.of(KEY_OUT, KEY_OFF, KEY_ACCESSORY, KEY_ON, CRANKED);
            case IGNITION, STARTER, SECOND_STARTER -> List.of(KEY_OFF, KEY_ON, CRANKED);
            case SECOND_IGNITION -> List.of(KEY_ON, CRANKED);
            case ACCESSORY -> List.of(KEY_ACCESSORY, CRANKED);
            case DOOR_TRIGGER, HOOD_TRIGGER, TRUNK_TRIGGER -> List.of(WORKED, SLEPT);
            case INTERIOR_LIGHT, PARKING_LAMP, HORN, TRUNK_RELEASE, WINDOW, BRAKE -> List.of(WORKED);
            case GROUND -> List.of(OHMS_TO_BODY);
            case LOCK, UNLOCK, LOCK_STEPS, LOCK_EITHER_POLE, LOCK_MOTOR_LEG -> List.of(UNLOCKED, LOCKED);
            case TACHOMETER, FUEL_PUMP, DATA, RESTRAINT, DEAD, NONE_OF_THESE -> List.of();
        };
    }

    /** What a role asks for that none of the readings meets. */
    public static List<Demand> unmet(WireRole role, List<Reading> readings) {
        return of(role).stream()
                .filter(demand -> readings.stream().noneMatch(r -> r.isTaken() && demand.isMetBy(r)))
                .toList();
    }

    private static boolean isWithKey(Reading reading, KeyAt key) {
        Step step = reading.step();
        return isVolts(reading)
                && step.key() == key
                && step.worked() == Step.Worked.NOTHING
                && step.aid() == Step.Aid.NONE;
    }

    private static boolean isVolts(Reading reading) {
        return reading.measured() == Measured.VOLTS;
    }
}
