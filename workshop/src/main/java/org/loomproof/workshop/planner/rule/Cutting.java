package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.CutIn;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.RelayChoice;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.words.Phrase;

/**
 * What must be there before wires are cut and relays put in: wires that may be cut by what is known of them, a constant feed,
 * outputs, and a relay whose contacts and coil both sides bear.
 *
 * @param job the job
 * @param leads the leads that work the relays
 * @param wish the wish they serve
 * @param wires the wires to be cut, the one whose size counts first
 * @param fuse the fuse before the contacts
 */
record Cutting(Job job, List<Lead> leads, Wish wish, List<Circuit> wires, AddedPartId fuse) {

    Cutting {
        leads = List.copyOf(leads);
        wires = List.copyOf(wires);
    }

    /** What is made of it when all of that is there. */
    interface Making {
        Option with(CutIn.Making making);
    }

    /**
     * The option, or what stands against it.
     *
     * @param carries what a contact carries at most
     * @param coils how many of them hang on one output
     */
    Option option(Amps carries, int coils, Making making) {
        for (Circuit wire : wires) {
            switch (job.finder().alike(wire, Joint.CUT)) {
                case Found.Waiting waiting -> {
                    return Option.of(Aside.allHeld(leads, wish, waiting));
                }
                case Found.Forbidden(var reason, var possibleIf) -> {
                    return Option.refused(new Refusal(wish, reason, possibleIf), Aside.allRefused(leads, wish));
                }
                case Found.Usable usable -> {}
            }
        }
        if (!(job.constant() instanceof Found.Usable constant)) {
            return job.constant() instanceof Found.Waiting waiting
                    ? Option.of(Aside.allHeld(leads, wish, waiting))
                    : misfit();
        }
        if (leads.stream().anyMatch(lead -> Side.of(lead.port()).isEmpty())) {
            return misfit();
        }
        Optional<RelayType> relay = job.listRelays().stream()
                .filter(type -> leads.stream()
                        .allMatch(lead -> RelayChoice.meets(type, job.need(carries, carries, lead.port(), coils))))
                .findFirst();
        if (relay.isEmpty()) {
            return Option.refused(
                    new Refusal(
                            wish,
                            Phrase.of("refuse.locks.no-relay", wires.getFirst().id(), carries, coils),
                            Phrase.of("possible.locks.no-relay")),
                    Aside.allRefused(leads, wish));
        }
        return making.with(new CutIn.Making(
                carries,
                job.factorySize(wires.getFirst()),
                job.run(wires.getFirst()),
                relay.get(),
                job.signalDiode(),
                job.coilFeed(constant.first()),
                Feed.from(constant.first(), fuse, job.run(constant.first()))));
    }

    private Option misfit() {
        return Option.of(leads.stream().map(lead -> Aside.misfit(lead, wish)).toList());
    }
}
