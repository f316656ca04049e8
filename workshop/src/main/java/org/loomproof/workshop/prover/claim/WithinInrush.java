package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Wakefulness;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.inrush.Inrush;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/**
 * At the instant something is switched on, nothing added and no output carries more than it bears for so short a time. In each
 * situation the vehicle is solved once more with contacts as they stand, every filament cold and every motor standing still:
 * as if all that works there had been switched on at once, by whatever was switched last. It is asked at the highest supply,
 * which drives most through contacts that stand alike.
 *
 * <p>A solenoid draws no more at first than for long. What a module's capacitors draw nobody states; it is not looked at. Nor are
 * wires: no rush lasts long enough to warm one.
 */
final class WithinInrush implements Claim {

    /** What carries less than this for long has no filament and no motor behind it. */
    private static final double LEAST_AMPS = 0.01;

    /** What grows by less than this at first is no rush: what flows for long is judged elsewhere. */
    private static final double LEAST_RUSH = 1.2;

    /** It is over in milliseconds, in which no controller falls asleep. */
    private static final Wakefulness MEANWHILE = new Wakefulness(0.2, 0.1);

    @Override
    public String name() {
        return "within-inrush";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        Rushing rushing = Rushing.of(fitting);
        List<Claimed> all = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected()) {
            LeadId lead = connect.lead();
            if (Coils.reaches(fitting, lead, rushing.parts())) {
                Rated.output(fitting, lead)
                        .ifPresent(rated -> all.add(show(
                                lead.toString(),
                                Phrase.of("claim.within-inrush", lead, rated.inrush()),
                                List.of(rated),
                                rushing,
                                askMaker(connect, rated))));
            }
        }
        partsByArea(fitting, rushing)
                .values()
                .forEach(parts -> all.add(show(
                        "from " + parts.getFirst().title(),
                        Phrase.of("claim.parts-within-inrush"),
                        parts,
                        rushing,
                        List.of())));
        return all;
    }

    private Claimed show(
            String about, Phrase statement, List<Rated> rated, Rushing rushing, List<Hookup.Hold> mayBeSettledBy) {
        return new Claimed.ToShow(new InrushCase(name() + " " + about, statement, rated, rushing, mayBeSettledBy));
    }

    /** An output of which nobody says what it bears for an instant may bear more. */
    private static List<Hookup.Hold> askMaker(Hookup.Connect connect, Rated rated) {
        if (rated.inrush().value() > rated.lasting().value()) {
            return List.of();
        }
        Phrase what = Phrase.of("measure.inrush", connect.lead());
        Measurement ask = ByFigures.askFor("inrush-of " + connect.lead(), what);
        return List.of(
                new Hookup.Hold(connect.lead(), connect.serves(), ask, Phrase.of("open.inrush-not-said"), List.of()));
    }

    /** What was added and carries current, where a filament or a motor may matter to it. */
    private static Map<Area, List<Rated>> partsByArea(Fitting fitting, Rushing rushing) {
        List<Area> areas = Area.list(fitting.stock().wired(), fitting.fitted().wired());
        Map<Area, List<Rated>> byArea = new LinkedHashMap<>();
        for (Rated rated : Rated.parts(fitting)) {
            areas.stream()
                    .filter(area -> area.parts().contains(rated.part()))
                    .filter(area -> rushing.parts().stream().anyMatch(area.parts()::contains))
                    .forEach(area ->
                            byArea.computeIfAbsent(area, a -> new ArrayList<>()).add(rated));
        }
        return byArea;
    }

    /** What draws more at first than for long: filaments, and these motors. */
    private record Rushing(Set<PartId> parts, Set<PartId> motors) {

        static Rushing of(Fitting fitting) {
            Set<PartId> motors = Coils.motors(fitting);
            Set<PartId> parts = fitting.fitted().wired().network().parts().stream()
                    .filter(part -> part instanceof Lamp || motors.contains(part.id()))
                    .map(Part::id)
                    .collect(Collectors.toUnmodifiableSet());
            return new Rushing(parts, motors);
        }

        /** What flows at first; empty when no operating point is found. */
        Optional<Reading> at(Pair pair) {
            Vehicle vehicle = pair.fitted().vehicle();
            Vehicle cold =
                    pair.bench().variant(vehicle, new PartId("inrush"), whole -> whole.with(cold(whole.wired())));
            Setting setting = pair.settingOf(cold);
            OperatingPoint before = pair.fitted().point();
            for (Part part : vehicle.wired().network().parts()) {
                if (part instanceof Relay) {
                    setting = setting.contactHeld(part.id(), before.relayPosition(part.id()));
                } else if (isOutput(part) && !before.isAwake(part.id())) {
                    setting = setting.off(part.id());
                }
            }
            return pair.bench().settled(cold.wired(), setting).map(point -> new Reading(cold, point));
        }

        private Wired cold(Wired wired) {
            return wired.withNetwork(Network.builder()
                    .addAll(wired.network().parts().stream().map(this::cold).toList())
                    .build());
        }

        private static boolean isOutput(Part part) {
            return part instanceof LowSideOutput || part instanceof HighSideOutput;
        }

        private Part cold(Part part) {
            if (part instanceof Lamp lamp) {
                return new Resistor(lamp.id(), lamp.a(), lamp.b(), lamp.hotOhms() * lamp.coldToHotOhms());
            }
            if (part instanceof LowSideOutput out) {
                return out.with(MEANWHILE);
            }
            if (part instanceof HighSideOutput out) {
                return out.with(MEANWHILE);
            }
            return part instanceof Resistor winding && motors.contains(part.id())
                    ? new Resistor(winding.id(), winding.a(), winding.b(), winding.ohms() / Inrush.motorStart())
                    : part;
        }
    }

    private record InrushCase(
            String id, Phrase statement, List<Rated> rated, Rushing rushing, List<Hookup.Hold> mayBeSettledBy)
            implements Case {

        /** What carries the largest share of what it bears, and how much; without amps where nobody can say. */
        private record Busiest(Rated rated, Optional<Amps> amps) {

            double slackPercent() {
                return amps.map(carried ->
                                100 - 100 * carried.value() / rated.inrush().value())
                        .orElse(-100.0);
            }
        }

        @Override
        public PartId about() {
            return rated.getFirst().part();
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return true;
        }

        @Override
        public boolean looksBeyondRest() {
            return true;
        }

        @Override
        public boolean fallsAwayUnasked() {
            return true;
        }

        private Optional<Busiest> busiest(Pair pair) {
            if (pair.supplyVolts() < SupplyPoint.HIGH.volts().value()) {
                return Optional.empty();
            }
            List<Rated> carrying = rated.stream()
                    .filter(each -> each.carriedAmps(pair.fitted()) > LEAST_AMPS)
                    .toList();
            if (carrying.isEmpty()) {
                return Optional.empty();
            }
            Optional<Reading> rush = rushing.at(pair);
            return carrying.stream()
                    .filter(each -> rush.isEmpty()
                            || each.carriedAmps(rush.get()) > LEAST_RUSH * each.carriedAmps(pair.fitted()))
                    .map(each -> new Busiest(each, rush.map(reading -> new Amps(each.carriedAmps(reading)))))
                    .min(Comparator.comparingDouble(Busiest::slackPercent));
        }

        @Override
        public double slack(Pair pair) {
            return busiest(pair).map(Busiest::slackPercent).orElse(Double.NaN);
        }

        @Override
        public Severity severity(Pair pair) {
            return busiest(pair).map(busiest -> busiest.rated().over()).orElse(Severity.NUISANCE);
        }

        @Override
        public Margin margin(Pair pair) {
            Busiest busiest = busiest(pair).orElseThrow();
            String title = busiest.rated().title();
            return new Margin(
                    busiest.slackPercent(),
                    "%",
                    busiest.amps()
                            .map(amps -> Phrase.of("margin.rushes", title, Shown.amps(amps.value())))
                            .orElseGet(() -> Phrase.of("margin.amps-not-known", title)),
                    Phrase.of("margin.at-most-amps-at-first", busiest.rated().inrush()));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            Busiest busiest = busiest(pair).orElseThrow();
            return LoadCase.withControllerSupply(
                    pair,
                    new Observation(
                            Phrase.of("meter.peak-amps-in", busiest.rated().title()),
                            Shown.amps(busiest.amps().map(Amps::value).orElse(0.0))
                                    .toString()));
        }
    }
}
