package org.loomproof.workshop.prover.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.wiring.WorkedSwitch;

class SpaceTest {

    private static final WorkedSwitch IGNITION =
            new WorkedSwitch(new PartId("ignition"), Operable.KEY, Set.of("on", "start"));
    private static final WorkedSwitch PIN =
            new WorkedSwitch(new PartId("pin"), new OperableId("driver-door"), Set.of("open"));

    private static Space space(AVehicle vehicle, List<WorkedSwitch> switches, OperableId... askedAbout) {
        Set<PartId> parts = switches.stream().map(WorkedSwitch::part).collect(Collectors.toSet());
        return Space.of(vehicle.sheet(), List.of(), parts, switches, List.of(askedAbout));
    }

    @Test
    void positionsThatSetTheContactsAlikeAreOne() {
        Space space = space(AVehicle.named("cart").door("driver-door"), List.of(IGNITION, PIN));
        assertThat(space.positions())
                .extracting(p -> p.get(Operable.KEY) + " " + p.get(new OperableId("driver-door")))
                .containsExactly("off closed", "on closed", "off open", "on open");
    }

    @Test
    void whatACaseAsksAboutIsMovedEvenWhenNoContactFollowsIt() {
        OperableId door = new OperableId("driver-door");
        Space space = space(AVehicle.named("cart").door("driver-door"), List.of(IGNITION), door);
        assertThat(space.positions()).hasSize(4).allSatisfy(p -> assertThat(p).containsKey(door));
    }

    @Test
    void tooManyCombinationsLeaveTheLastOperablesAtRestAndNameThem() {
        AVehicle bus = AVehicle.named("bus");
        List<WorkedSwitch> pins = new ArrayList<>();
        for (int k = 0; k < 20; k++) {
            bus.door("door-" + k);
            pins.add(new WorkedSwitch(new PartId("pin-" + k), new OperableId("door-" + k), Set.of("open")));
        }
        Space space = space(bus, pins);
        assertThat(space.positions()).hasSize(Space.MOST_COMBINATIONS);
        assertThat(space.leftAtRest())
                .extracting(OperableId::value)
                .containsExactly("door-14", "door-15", "door-16", "door-17", "door-18", "door-19");
    }
}
