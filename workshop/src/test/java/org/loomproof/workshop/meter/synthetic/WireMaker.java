package org.loomproof.workshop.meter.synthetic;

import static org.loomproof.workshop.meter.synthetic.MadeWire.POST;
import static org.loomproof.workshop.meter.synthetic.MadeWire.WIRE;

import java.util.Random;
import java.util.function.Predicate;
import org.loomproof.network.part.Node;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.Step.KeyAt;
import org.loomproof.workshop.meter.reading.Step.Worked;
import org.loomproof.workshop.meter.role.WireRole;

/** Draws a wire of a role: how it is built, with what parts. Written apart from the tool's own models. */
final class WireMaker {

    private static final Node BODY = Node.CHASSIS;
    private static final Predicate<Step> CRANK = key(KeyAt.CRANKING);
    private static final Predicate<Step> ON = key(KeyAt.ON, KeyAt.RUNNING);
    private static final Predicate<Step> TURNS = key(KeyAt.CRANKING, KeyAt.RUNNING);

    private final Random random;

    WireMaker(Random random) {
        this.random = random;
    }

    private static boolean isAwake(Step step) {
        return !step.asleep();
    }

    private static Predicate<Step> key(KeyAt... positions) {
        return s -> java.util.List.of(positions).contains(s.key());
    }

    private static Predicate<Step> does(Worked thing) {
        return s -> s.worked() == thing;
    }

    private static Predicate<Step> opens(Worked thing) {
        return s -> s.worked() == thing || s.worked() == Worked.OPENING;
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    MadeWire make(WireRole role) {
        MadeWire w = new MadeWire(role, random);
        Node a = w.node("a");
        Node b = w.node("b");
        double pick = random.nextDouble();
        return switch (role) {
            case CONSTANT -> {
                w.fuse(POST, a).ohms(a, WIRE, 0.005, 0.05);
                yield pick < 0.6 ? w.ohms(WIRE, BODY, 20, 1000) : w;
            }
            case GROUND -> w.ohms(WIRE, BODY, 0.005, 0.4);
            case IGNITION -> fed(w, ON.or(CRANK), 1, 20);
            case SECOND_IGNITION -> fed(w, ON, 1, 20);
            case ACCESSORY -> fed(w, key(KeyAt.ACCESSORY).or(ON), 2, 60);
            case STARTER -> {
                w.fuse(POST, a).contact(a, WIRE, CRANK);
                yield pick < 0.4
                        ? w.ohms(WIRE, BODY, 0.3, 1.5)
                        : pick < 0.8 ? w.ohms(WIRE, BODY, 50, 120) : w.ohms(WIRE, BODY, 1000, 22000);
            }
            case SECOND_STARTER -> w.fuse(POST, a).contact(a, WIRE, CRANK).ohms(WIRE, BODY, 50, 120);
            case DOOR_TRIGGER -> pin(w, opens(Worked.DOOR), pick, 0.37, 0.46, 0.65, 0.84, 0.91);
            case HOOD_TRIGGER -> pin(w, opens(Worked.HOOD), pick, 0.2, 0.6, 1, 1, 1);
            case TRUNK_TRIGGER -> pin(w, opens(Worked.TRUNK), pick, 0.43, 0.57, 0.86, 0.86, 0.86);
            case INTERIOR_LIGHT -> {
                Predicate<Step> lit = opens(Worked.DOOR).or(does(Worked.DOME));
                if (pick < 0.4) {
                    yield w.fuse(POST, a).lamp(a, WIRE, 5, 20).contact(WIRE, BODY, lit);
                }
                w.fuse(POST, a).lamp(WIRE, BODY, 5, 20);
                yield pick < 0.8 ? w.contact(a, WIRE, lit) : dimmed(w, a, lit);
            }
            case PARKING_LAMP -> {
                Predicate<Step> lit = does(Worked.LAMPS);
                w.fuse(POST, a);
                if (pick < 0.17) {
                    yield w.ohms(a, WIRE, 60, 120).contact(WIRE, BODY, lit);
                }
                w.lamp(WIRE, BODY, 25, 60);
                yield pick < 0.83 ? w.contact(a, WIRE, lit) : dimmed(w, a, lit);
            }
            case HORN -> button(w, does(Worked.HORN), pick, 0.67, 0.84, 60, 100, 1, 3);
            case LOCK -> button(w, does(Worked.LOCK), pick, 0.5, 0.75, 75, 150, 75, 150);
            case UNLOCK -> button(w, does(Worked.UNLOCK), pick, 0.5, 0.75, 75, 150, 75, 150);
            case TRUNK_RELEASE -> button(w, does(Worked.RELEASE), pick, 0.33, 0.67, 60, 120, 1, 4);
            case LOCK_STEPS -> {
                if (pick < 0.67) {
                    w.module(WIRE, 3.3, 9, 470, 10000);
                } else {
                    w.ohms(POST, WIRE, 470, 10000);
                }
                boolean swapped = w.happens(0.5);
                Worked first = swapped ? Worked.UNLOCK : Worked.LOCK;
                Worked second = swapped ? Worked.LOCK : Worked.UNLOCK;
                w.contact(WIRE, a, does(first)).ohms(a, BODY, 1, 1000);
                yield w.contact(WIRE, b, does(second)).ohms(b, BODY, 330, 4700);
            }
            case LOCK_EITHER_POLE -> {
                boolean swapped = w.happens(0.5);
                if (pick < 0.5) {
                    w.ohms(POST, WIRE, 2200, 47000).ohms(WIRE, BODY, 2200, 47000);
                }
                w.contact(WIRE, BODY, does(swapped ? Worked.UNLOCK : Worked.LOCK));
                yield w.fuse(POST, a).contact(a, WIRE, does(swapped ? Worked.LOCK : Worked.UNLOCK));
            }
            case LOCK_MOTOR_LEG -> leg(w, a, b, pick);
            case WINDOW -> {
                if (pick < 0.5) {
                    w.fuse(POST, a).contact(a, WIRE, does(Worked.WINDOW)).ohms(WIRE, b, 0.7, 4);
                    yield w.contact(b, BODY, s -> true)
                            .contact(WIRE, BODY, does(Worked.WINDOW).negate());
                }
                yield w.module(WIRE, 3.3, 12, 1000, 22000).contact(WIRE, BODY, does(Worked.WINDOW));
            }
            case BRAKE -> w.fuse(POST, a).contact(a, WIRE, does(Worked.BRAKE)).lamp(WIRE, BODY, 30, 65);
            case TACHOMETER -> {
                // Its average is what a divider leaves over.
                double top = pick < 0.75 ? between(10, 13.5) : between(4, 5.5);
                w.ohms(WIRE, BODY, 1500, 3000);
                if (pick < 0.75) {
                    w.ohms(POST, a, 1500, 3000);
                } else {
                    w.module(a, 4.5, 5.5, 1500, 3000);
                }
                yield w.contact(a, WIRE, TURNS).moving(top, TURNS);
            }
            case FUEL_PUMP -> w.fuse(POST, a).contact(a, WIRE, TURNS).ohms(WIRE, BODY, 1.5, 6);
            case DATA -> {
                if (pick < 0.67) {
                    double level = pick < 0.33 ? between(2.55, 3.0) : between(1.9, 2.45);
                    w.module(WIRE, level / 1.02, level * 1.02, 20, 70);
                    yield w.moving(between(0.3, 1.4), WireMaker::isAwake);
                }
                w.ohms(POST, WIRE, 500, 1000)
                        .contact(WIRE, a, WireMaker::isAwake)
                        .ohms(a, BODY, 2500, 20000);
                yield w.moving(between(9, 12), WireMaker::isAwake);
            }
            case RESTRAINT -> {
                w.module(a, 3, 9, 1000, 22000).contact(a, WIRE, ON.or(CRANK));
                yield w.ohms(WIRE, BODY, 1000, 22000);
            }
            case DEAD -> w;
            case NONE_OF_THESE -> odd(w, a, b, pick);
        };
    }

    private static MadeWire fed(MadeWire w, Predicate<Step> key, double low, double high) {
        Node a = w.node("a");
        return w.fuse(POST, a).contact(a, WIRE, key).ohms(WIRE, BODY, low, high);
    }

    /** Shares of: lamp, open, module, module at the battery, reversed; the rest is switched to the supply. */
    private MadeWire pin(MadeWire w, Predicate<Step> open, double pick, double... upTo) {
        Node a = w.node("a");
        if (pick < upTo[0]) {
            w.fuse(POST, a).lamp(a, WIRE, 4, 20);
        } else if (pick < upTo[1]) {
            return w.contact(WIRE, BODY, open);
        } else if (pick < upTo[2]) {
            w.module(WIRE, 3.3, 9, 1000, 47000);
        } else if (pick < upTo[3]) {
            w.ohms(POST, WIRE, 1000, 47000);
        } else if (pick < upTo[4]) {
            return w.module(WIRE, 3.3, 9, 1000, 47000).contact(WIRE, BODY, open.negate());
        } else {
            return w.fuse(POST, a).contact(a, WIRE, open).lamp(WIRE, BODY, 4, 20);
        }
        return w.contact(WIRE, BODY, open);
    }

    private static MadeWire button(
            MadeWire w, Predicate<Step> pressed, double pick, double negative, double positive, double... ohms) {
        Node a = w.node("a");
        if (pick < negative) {
            return w.fuse(POST, a).ohms(a, WIRE, ohms[0], ohms[1]).contact(WIRE, BODY, pressed);
        }
        if (pick < positive) {
            return w.fuse(POST, a).contact(a, WIRE, pressed).ohms(WIRE, BODY, ohms[2], ohms[3]);
        }
        return w.module(WIRE, 3.3, 12, 1000, 47000).contact(WIRE, BODY, pressed);
    }

    private MadeWire dimmed(MadeWire w, Node feed, Predicate<Step> lit) {
        // Its average is what a resistor before the lamp leaves over.
        w.contact(feed, w.node("d"), lit).ohms(w.node("d"), WIRE, 0.5, 5);
        return w.moving(between(11, 13.5), lit);
    }

    private static MadeWire leg(MadeWire w, Node a, Node b, double pick) {
        boolean swapped = w.happens(0.5);
        Predicate<Step> mine = does(swapped ? Worked.UNLOCK : Worked.LOCK);
        Predicate<Step> other = does(swapped ? Worked.LOCK : Worked.UNLOCK);
        w.fuse(POST, a).ohms(WIRE, b, 0.7, 6);
        if (pick < 0.67) {
            w.contact(a, WIRE, mine).contact(WIRE, BODY, mine.negate());
            return w.contact(a, b, other).contact(b, BODY, other.negate());
        }
        if (pick < 0.89) {
            w.contact(a, WIRE, mine).contact(WIRE, BODY, other);
            return w.contact(a, b, other).contact(b, BODY, mine);
        }
        w.contact(a, WIRE, other.negate()).contact(WIRE, BODY, other);
        return w.contact(a, b, mine.negate()).contact(b, BODY, mine);
    }

    /** Wires of which the tool has no model: a sensor's reference, a charge lamp, a heater's thermostat, a seat switch. */
    private MadeWire odd(MadeWire w, Node a, Node b, double pick) {
        if (pick < 0.3) {
            return w.module(a, 4.8, 5.2, 1, 50).contact(a, WIRE, ON.or(CRANK)).ohms(WIRE, BODY, 2000, 20000);
        }
        if (pick < 0.5) {
            w.fuse(POST, a).contact(a, b, ON.or(CRANK)).ohms(b, WIRE, 40, 120);
            return w.contact(WIRE, BODY, key(KeyAt.ON)).ohms(WIRE, BODY, 200, 2000);
        }
        if (pick < 0.75) {
            double level = between(1.5, 9);
            return w.module(WIRE, level, level * 1.01, 100, 5000).ohms(WIRE, BODY, 1000, 50000);
        }
        w.fuse(POST, a).contact(a, b, does(Worked.BRAKE).or(does(Worked.HORN)).or(CRANK));
        return w.ohms(b, WIRE, 100, 1000).ohms(WIRE, BODY, 300, 3000);
    }
}
