package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.words.Phrase;

/**
 * A factory alarm that the key in the door arms and disarms: a car unlocked by remote would set it off, so the lock pulse arms it
 * and the unlock pulse disarms it. Where the locks are worked so that it is left out, that is said.
 */
final class FactoryAlarm {

    private FactoryAlarm() {}

    /**
     * The lock wire together with the wire of the alarm that goes the same way, when the sheet has one.
     *
     * @param role lock or unlock
     * @param lock what was found for it
     */
    static Found beside(Job job, CircuitRole role, Found lock) {
        CircuitRole alarm = role == CircuitRole.LOCK ? CircuitRole.ALARM_ARM : CircuitRole.ALARM_DISARM;
        if (job.finder().list(alarm).isEmpty() || !(lock instanceof Found.Usable locks)) {
            return lock;
        }
        Found found = job.finder().one(alarm, Joint.SIGNAL_TAP);
        return found instanceof Found.Usable alarms
                ? new Found.Usable(
                        both(locks.circuits(), alarms.circuits()), both(locks.passedOver(), alarms.passedOver()))
                : found;
    }

    private static <T> List<T> both(List<T> some, List<T> more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    /** The way of working the locks, with a caution where it leaves a wire of the alarm alone. */
    static Option leftAlone(Job job, Option way) {
        List<Decision.Join> joins = way.decisions().stream()
                .flatMap(decision -> decision instanceof Decision.Join join ? Stream.of(join) : Stream.empty())
                .toList();
        List<CircuitId> alone = Stream.of(CircuitRole.ALARM_ARM, CircuitRole.ALARM_DISARM)
                .flatMap(role -> job.finder().list(role).stream())
                .map(Circuit::id)
                .filter(wire -> joins.stream().noneMatch(join -> join.circuits().contains(wire)))
                .toList();
        return joins.isEmpty() || alone.isEmpty()
                ? way
                : way.beware(List.of(Phrase.of("caution.alarm-not-worked", alone)));
    }
}
