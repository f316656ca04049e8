package org.loomproof.papers.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.damage.Showing;
import org.loomproof.workshop.prover.damage.Sign;
import org.loomproof.workshop.standby.Standby;
import org.loomproof.workshop.wiring.Situation;

/**
 * Says what a car fitted as planned shows in each test of an order.
 *
 * @param brief with a complete sheet
 * @param plan of that brief
 * @param faults tried of that plan
 * @param words in the reader's language
 */
public record Expected(Brief brief, Plan plan, FaultProof faults, Wording words) {

    /** One line for each moment of the test at which something is to be seen, or what the meter shows; one line at least. */
    public List<String> lines(int test) {
        List<String> lines = faults.testOrder()
                .tests()
                .get(test)
                .metered()
                .map(sign -> readings(sign, test))
                .orElseGet(() -> moments(test));
        return lines.isEmpty() ? List.of(words.of("test-order.as-before")) : lines;
    }

    /** Whether it is the current of the sleeping car, which is read against what it drew at check-in. */
    public static boolean isSleep(Sign metered) {
        return metered instanceof Sign.StandingCurrent;
    }

    /** What the meter shows. */
    private List<String> readings(Sign metered, int place) {
        return switch (metered) {
            case Sign.StandingCurrent sleep -> List.of(sleepCurrent());
            case Sign.Cold cold -> cold.expected().stream().map(words::of).toList();
            case Sign.Kick kick -> List.of(words.of(kick.words()));
            case Sign.Works seen -> moments(place);
            case Sign.Turns seen -> moments(place);
            case Sign.Sounds seen -> moments(place);
            case Sign.Ordered seen -> moments(place);
            case Sign.Alarm seen -> moments(place);
            case Sign.Awake seen -> moments(place);
            case Sign.AtPlug atPlug -> moments(place);
            case Sign.AcrossCut across -> moments(place);
            case Sign.FeedDrop drop -> moments(place);
        };
    }

    private String sleepCurrent() {
        return words.of("test-order.standing", words.figure(Standby.added(brief, plan, ControllerState.ARMED)));
    }

    private List<String> moments(int test) {
        List<Showing> showings = faults.expected().get(test);
        Map<String, List<String>> byMoment = new LinkedHashMap<>();
        for (Showing showing : showings) {
            List<String> shown = shown(test, showing);
            if (!shown.isEmpty()) {
                byMoment.merge(moment(showing.when(), showings), shown, Expected::together);
            }
        }
        return byMoment.entrySet().stream()
                .map(each -> each.getKey().isEmpty()
                        ? String.join("; ", each.getValue())
                        : words.of("test-order.then-shows", each.getKey(), String.join("; ", each.getValue())))
                .toList();
    }

    private static List<String> together(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).distinct().toList();
    }

    /** What is there, as far as it is seen at a glance; and all by which the test notices something. */
    private List<String> shown(int test, Showing showing) {
        List<Sign> watched = faults.watch().get(test);
        List<Sign> there = showing.there().stream()
                .filter(sign -> watched.contains(sign) || isSeenAtAGlance(sign))
                .toList();
        List<Sign> absent = showing.absent().stream()
                .filter(sign ->
                        watched.contains(sign) || sign.takesMeter() || isThereElsewhere(sign, test, showing.when()))
                .toList();
        List<String> shown = new ArrayList<>();
        addLoads("test-order.works", there, shown);
        addLoads("test-order.rests", absent, shown);
        there.stream().filter(sign -> !isLoad(sign)).forEach(sign -> shown.add(words.of(sign.words(true))));
        absent.stream().filter(sign -> !isLoad(sign)).forEach(sign -> shown.add(words.of(sign.words(false))));
        return shown;
    }

    private void addLoads(String key, List<Sign> signs, List<String> shown) {
        List<String> names = signs.stream()
                .filter(Expected::isLoad)
                .map(sign -> words.of(sign.words()))
                .toList();
        if (!names.isEmpty()) {
            shown.add(words.of(key, names));
        }
    }

    private static boolean isLoad(Sign sign) {
        return sign instanceof Sign.Works || sign instanceof Sign.Sounds;
    }

    private static boolean isSeenAtAGlance(Sign sign) {
        return !(sign instanceof Sign.Awake || sign instanceof Sign.Ordered);
    }

    /** What another test shows with everything in the same place is missed here, like the starter of an armed car. */
    private boolean isThereElsewhere(Sign sign, int test, Situation when) {
        for (int other = 0; other < faults.expected().size(); other++) {
            if (other != test
                    && faults.expected().get(other).stream()
                            .anyMatch(s -> s.when().positions().equals(when.positions())
                                    && s.there().contains(sign))) {
                return true;
            }
        }
        return false;
    }

    /** What tells this situation from the others of the test; empty when nothing needs to. */
    private String moment(Situation situation, List<Showing> showings) {
        List<String> said = new ArrayList<>();
        if (varies(showings, Situation::positions)) {
            String moved = situation.positions().entrySet().stream()
                    .filter(at -> !at.getValue()
                            .equals(brief.sheet().operable(at.getKey()).rest()))
                    .map(at -> words.of("situation.moved", at.getKey().value(), at.getValue()))
                    .collect(Collectors.joining(", "));
            said.add(moved.isEmpty() ? words.of("situation.at-rest") : moved);
        }
        if (varies(showings, Situation::controller)) {
            said.add(words.of("controller-state." + situation.controller().word()));
        }
        if (showings.stream().map(Showing::when).anyMatch(other -> isMomentsApart(situation, other))) {
            said.add(words.of("test-order.moment." + situation.moment().name().toLowerCase(Locale.ROOT)));
        }
        return String.join(", ", said);
    }

    /** Whether only time lies between the two. */
    private static boolean isMomentsApart(Situation one, Situation other) {
        return one.moment() != other.moment()
                && one.controller() == other.controller()
                && one.positions().equals(other.positions());
    }

    private static boolean varies(List<Showing> showings, Function<Situation, ?> part) {
        return showings.stream().map(Showing::when).map(part).distinct().count() > 1;
    }
}
