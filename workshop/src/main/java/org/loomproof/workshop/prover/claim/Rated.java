package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.inrush.Inrush;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;

/**
 * Something added, or an output, that carries current.
 *
 * @param reach where its current is counted
 * @param terminal the terminal's number where one part has several; else empty
 * @param name its id
 * @param lasting the most it may carry for long
 * @param inrush the most it may carry at the instant something is switched on
 * @param over what it comes to when it carries more
 */
record Rated(Reach reach, String terminal, String name, Amps lasting, Amps inrush, Severity over) {

    PartId part() {
        return reach.part();
    }

    double carriedAmps(Reading reading) {
        return Math.abs(reading.amps(reach));
    }

    String title() {
        return terminal.isEmpty() ? name : name + " " + terminal;
    }

    /** What a lead carries as an output; empty where it is none. */
    static Optional<Rated> output(Fitting fitting, LeadId id) {
        Port port = fitting.brief().kit().lead(id).port();
        Optional<Amps> rating = switch (port) {
            case Port.LowSide out -> Optional.of(out.rating().low());
            case Port.HighSide out -> Optional.of(out.rating().low());
            case Port.Supply supply -> Optional.empty();
            case Port.Ground ground -> Optional.empty();
            case Port.Input input -> Optional.empty();
            case Port.ToExtra plug -> Optional.empty();
        };
        return rating.map(amps -> new Rated(
                fitting.output(id).orElseThrow(),
                "",
                id.toString(),
                amps,
                port.rush().map(Figure::low).orElse(amps),
                Severity.UNPROTECTED));
    }

    /** What of the plan's parts carries current, each contact by itself. */
    static List<Rated> parts(Fitting fitting) {
        List<Rated> all = new ArrayList<>();
        fitting.plan().parts().forEach(part -> all.addAll(of(fitting.fitted().wired(), part)));
        return all;
    }

    private static List<Rated> of(Wired wired, AddedPart part) {
        Reach reach = Objects.requireNonNull(wired.added().parts().get(part.id()));
        String name = part.id().toString();
        return switch (part) {
            case AddedPart.Relay r ->
                List.of(
                        burning(reach.into("87"), "87", name, r.makeRating(), Inrush.CONTACT),
                        burning(reach.into("87a"), "87a", name, r.breakRating(), Inrush.CONTACT));
            case AddedPart.Buffer b -> List.of(burning(reach.into("30"), "out", name, b.rating(), Inrush.OUTPUT));
            case AddedPart.Junction d -> List.of(burning(reach, "", name, d.rating(), Inrush.DIODE));
            case AddedPart.Fuse f ->
                List.of(new Rated(reach, "", name, f.rating(), Inrush.FUSE.most(f.rating()), Severity.NUISANCE));
            case AddedPart.Load l
            when l.forward().isPresent() ->
                List.of(new Rated(reach, "", name, l.draws(), l.draws(), Severity.NUISANCE));
            case AddedPart.Load l -> List.of();
            // A contact that stays closed bears at least what one that makes does.
            case AddedPart.Pole p -> List.of(burning(reach, "", name, p.rating(), Inrush.CONTACT));
            case AddedPart.Resistor r -> List.of();
            case AddedPart.StandbyBattery b -> List.of();
            case AddedPart.Sender s -> List.of();
            case AddedPart.PinSwitch p -> List.of();
        };
    }

    private static Rated burning(Reach reach, String terminal, String name, Amps lasting, Inrush bears) {
        return new Rated(reach, terminal, name, lasting, bears.most(lasting), Severity.FIRE_OR_LOSS_OF_CONTROL);
    }
}
