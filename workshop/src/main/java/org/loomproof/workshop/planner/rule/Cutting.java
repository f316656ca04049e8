package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.cut.CoilSource;
import org.loomproof.workshop.planner.cut.CutComposer;
import org.loomproof.workshop.planner.cut.CutWire;
import org.loomproof.workshop.planner.cut.WireEnd;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.planner.survey.Severed.Cut;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * What must be there before wires are cut and relays put in: wires that may be cut by what is known of them, a constant feed,
 * outputs, and a word of the grammar with a relay whose contacts and coil both sides bear.
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

    /** What is made of each way when all of that is there. */
    interface Making {
        List<Option> with(CutWords.Way way, CutComposer composer);
    }

    /**
     * The options, or what stands against them.
     *
     * @param shape what poles decide of each wire
     * @param cuts both sides of each of them
     * @param carries what a contact carries at most
     * @param coils how many of them hang on one output at the least
     * @param byTurns whether contacts draw only while another one behind their fuse does not
     */
    List<Option> options(List<CutWire> shape, List<Cut> cuts, Amps carries, int coils, boolean byTurns, Making making) {
        for (Circuit wire : wires) {
            switch (job.finder().alike(wire, Joint.CUT)) {
                case Found.Waiting waiting -> {
                    return List.of(Option.of(Aside.allHeld(leads, wish, waiting)));
                }
                case Found.Forbidden(var reason, var possibleIf) -> {
                    return List.of(
                            Option.refused(new Refusal(wish, reason, possibleIf), Aside.allRefused(leads, wish)));
                }
                case Found.Usable usable -> {}
            }
        }
        if (!(job.constant() instanceof Found.Usable constant)) {
            return List.of(
                    job.constant() instanceof Found.Waiting waiting
                            ? Option.of(Aside.allHeld(leads, wish, waiting))
                            : misfit());
        }
        if (leads.stream().anyMatch(lead -> Side.of(lead.port()).isEmpty())) {
            return List.of(misfit());
        }
        List<CoilSource> sources = leads.stream().map(CoilSource::of).toList();
        CutWords words =
                new CutWords(job, sources, wires.stream().map(Circuit::id).toList(), carries, carries);
        CutWords.Ways ways = words.ways(shape, job.listRelays());
        if (ways.list().isEmpty()) {
            return List.of(Option.refused(
                            new Refusal(
                                    wish,
                                    Phrase.of(
                                            "refuse.locks.no-relay",
                                            wires.getFirst().id(),
                                            carries,
                                            coils),
                                    Phrase.of("possible.locks.no-relay")),
                            Aside.allRefused(leads, wish))
                    .searched(ways.searched()));
        }
        SquareMillimetres size = job.factorySize(wires.getFirst());
        List<CutComposer.Wire> lines = new ArrayList<>();
        for (Cut each : cuts) {
            lines.add(new CutComposer.Wire(
                    Integer.toString(lines.size() + 1),
                    new WireEnd.Cut(each.load(), size),
                    new WireEnd.Cut(each.feed(), size),
                    carries,
                    AllowedDrop.LOCK_MOTOR));
        }
        Feed coilFeed = job.coilFeed(constant.first(), leads);
        Feed contacts = Feed.from(constant.first(), fuse, job.run(constant.first()));
        List<Option> options = ways.list().stream()
                .flatMap(way -> making
                        .with(
                                way,
                                new CutComposer(
                                        way.word(),
                                        sources,
                                        lines,
                                        new CutComposer.Making(
                                                way.relay(),
                                                job.signalDiode(),
                                                coilFeed,
                                                contacts,
                                                coilFeed.run(),
                                                byTurns)))
                        .stream())
                .map(option -> option.searched(ways.searched()))
                .toList();
        return new Release(job).weighed(options);
    }

    private Option misfit() {
        return Option.of(leads.stream().map(lead -> Aside.misfit(lead, wish)).toList());
    }
}
