package org.loomproof.pages.bay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.goods.bay.Station;
import org.loomproof.workshop.goods.bay.Visit;
import org.loomproof.workshop.goods.price.Labour;
import org.loomproof.workshop.goods.price.Work;

/**
 * What the minutes of a job are noted for.
 *
 * @param id its name in a work log
 * @param kind of work as quotes count it; nothing for what they do not count
 * @param times how often that kind of work is done in it, one at least
 * @param step the step in the bay, where it is one
 * @param panel that comes off and goes back on, where it is that; otherwise empty
 */
public record TimedStep(String id, Optional<Work> kind, int times, Optional<BayStep> step, String panel) {

    /** What no step is: fetching the car, a call. */
    private static final TimedStep OTHER = new TimedStep("other", Optional.empty(), 1, Optional.empty(), "");

    /** All of a job, in the order of the work; without a plan those before and after. */
    public static List<TimedStep> of(Optional<BayJob> planned) {
        List<TimedStep> all = new ArrayList<>();
        all.add(whole(Work.CHECK_IN));
        planned.ifPresent(bay -> {
            int leads = bay.plan().hookups().size();
            if (leads > 0) {
                all.add(new TimedStep("bench", Optional.of(Work.BENCH_LEAD), leads, Optional.empty(), ""));
            }
            Set<String> panels = new LinkedHashSet<>();
            for (BayStep step : bay.steps()) {
                Station station = step.station();
                if (!station.panel().isBlank() && panels.add(station.panel())) {
                    all.add(new TimedStep(
                            "panel/" + station.panel(), Optional.of(Work.PANEL), 1, Optional.empty(), station.panel()));
                }
                all.add(new TimedStep(step.id(), kind(bay, step.visit()), 1, Optional.of(step), ""));
            }
        });
        all.add(whole(Work.FINAL_TEST));
        all.add(whole(Work.HAND_OVER));
        all.add(OTHER);
        return List.copyOf(all);
    }

    private static TimedStep whole(Work kind) {
        return new TimedStep(kind.word(), Optional.of(kind), 1, Optional.empty(), "");
    }

    private static Optional<Work> kind(BayJob bay, Visit visit) {
        return switch (visit) {
            case Visit.Ground ground -> Optional.empty();
            case Visit.Tapped tapped -> Optional.of(Work.TAP);
            case Visit.Cut cut -> Optional.of(Work.CUT);
            case Visit.Mounted(var part, var wires) ->
                bay.plan().findPart(part).map(added -> Labour.work(bay.brief(), added));
            case Visit.SupplyFuse fuse -> Optional.of(Work.ADDED_PART);
        };
    }
}
