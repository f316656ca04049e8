package org.loomproof.workshop.goods;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.goods.bay.BayOrder;
import org.loomproof.workshop.goods.bay.Station;
import org.loomproof.workshop.goods.bay.Visit;
import org.loomproof.workshop.plan.End;

class BayOrderTest {

    private static final List<Station> STATIONS =
            BayOrder.of(Jobs.vanJob().brief(), Jobs.vanJob().plan()).stations();

    @Test
    void groundComesFirstTheCutLastAndTheFuseLastOfAll() {
        assertThat(STATIONS.getFirst().kind()).isEqualTo(Station.Kind.GROUND);
        assertThat(STATIONS.get(STATIONS.size() - 2).kind()).isEqualTo(Station.Kind.CUT);
        assertThat(STATIONS.getLast().visits())
                .singleElement()
                .isInstanceOfSatisfying(
                        Visit.SupplyFuse.class,
                        fuse -> assertThat(fuse.part().value()).isEqualTo("F1"));
    }

    @Test
    void everyWireEndInTheCarIsVisited() {
        Jobs.Job job = Jobs.vanJob();
        List<String> visited = STATIONS.stream()
                .flatMap(s -> s.visits().stream())
                .flatMap(v -> v.wires().stream())
                .map(w -> w.value())
                .toList();
        assertThat(job.plan().wires().stream()
                        .filter(w -> inTheCar(w.from()) || inTheCar(w.to()))
                        .map(w -> w.id().value()))
                .isNotEmpty()
                .allMatch(visited::contains);
    }

    private static boolean inTheCar(End end) {
        return !(end instanceof End.OfLead) && !(end instanceof End.OfPart);
    }
}
