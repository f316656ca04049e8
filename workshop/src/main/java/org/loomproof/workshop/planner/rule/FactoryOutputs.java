package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.explain.Terms;
import org.loomproof.workshop.planner.survey.Duties;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.sizing.FuseChoice;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.ContactDuty;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * The ways to work factory wires with one output, fewest parts first: straight when the pole is right and the current leaves
 * a reserve, through a diode each when wires must not feed each other or a dead controller, otherwise through relays.
 */
final class FactoryOutputs {

    /** An output carries a factory wire straight up to this share of its rating. Common practice, no published source. */
    private static final double SHARE_OF_RATING = 0.8;

    private FactoryOutputs() {}

    static List<Option> options(Job job, Lead lead, Wish wish, Found found, AllowedDrop drop) {
        if (!(found instanceof Found.Usable usable)) {
            return List.of(AddedLoads.without(lead, wish, found));
        }
        Optional<Side> side = Side.of(lead.port());
        if (side.isEmpty()) {
            return List.of(Option.of(List.of(Aside.misfit(lead, wish))));
        }
        if (usable.circuits().size() == 1 && Family.of(usable.first().switching()) == Family.STEPPED) {
            return SteppedOutput.options(job, lead, wish, usable.first(), usable.passedOver());
        }
        Optional<Circuit> strange =
                usable.circuits().stream().filter(c -> activePole(c).isEmpty()).findFirst();
        if (strange.isPresent()) {
            return List.of(Option.refused(refusalOf(wish, strange.get()), List.of(Aside.refused(lead, wish))));
        }
        List<Line> lines =
                usable.circuits().stream().map(c -> line(job, c, drop)).toList();
        if (lines.stream().map(Line::active).distinct().count() > 1) {
            Circuit first = usable.first();
            return List.of(Option.of(List.of(Aside.hold(
                    lead, wish, Measurements.levelsOf(first), Phrase.of("hold.mixed-polarity", ids(lines))))));
        }
        return new Ways(job, lead, wish, side.get(), lines, usable.passedOver()).list();
    }

    /** The pole that makes a circuit active; empty for families that one pole does not work. */
    private static Optional<Side> activePole(Circuit circuit) {
        return switch (Family.of(circuit.switching())) {
            case NEGATIVE -> Optional.of(Side.LOW);
            case POSITIVE -> Optional.of(Side.HIGH);
            case LOGIC ->
                circuit.switching().active() instanceof org.loomproof.workshop.brief.sheet.Level.Ground
                        ? Optional.of(Side.LOW)
                        : Optional.empty();
            case OPENS_WHEN_ACTIVE, STEPPED, REVERSING, DATA, CONTRADICTORY -> Optional.empty();
        };
    }

    static Refusal refusalOf(Wish wish, Circuit circuit) {
        Family family = Family.of(circuit.switching());
        return new Refusal(
                wish,
                Phrase.of("refuse.family", circuit.id(), family.phrase()),
                Phrase.of("possible.family." + family.word()));
    }

    private record Line(Driving.Line of, Side active, Amps carries) {}

    private static Line line(Job job, Circuit circuit, AllowedDrop drop) {
        Side active = activePole(circuit).orElseThrow();
        Amps carries =
                active == Side.LOW ? job.draw().intoBody(circuit) : job.draw().fromSupply(circuit);
        boolean lamps = circuit.paths().stream().flatMap(List::stream).anyMatch(PathStep.Lamp.class::isInstance);
        Metres run = job.run(circuit);
        return new Line(
                new Driving.Line(circuit, active, carries, lamps ? FuseChoice.forLamps(carries) : carries, run, drop),
                active,
                carries);
    }

    private static List<CircuitId> ids(List<Line> lines) {
        return lines.stream().map(l -> l.of().circuit().id()).toList();
    }

    /** The ways for wires that all become active by one pole. */
    private record Ways(Job job, Lead lead, Wish wish, Side side, List<Line> lines, List<Phrase> passedOver) {

        List<Option> list() {
            List<Option> options = new ArrayList<>();
            List<Phrase> lost = new ArrayList<>(passedOver);
            Amps all = new Amps(
                    lines.stream().mapToDouble(l -> l.carries().value()).sum());
            Amps rating = Job.ratingOf(lead.port());
            if (lines.getFirst().active() != side) {
                lost.add(Phrase.of("lost.wrong-pole", Terms.port(lead.port()), ids(lines)));
            } else if (all.value() > SHARE_OF_RATING * rating.value()) {
                lost.add(Phrase.of("lost.over-share", all, rating));
            } else {
                unrelayed(all, rating, lost, options);
            }
            byRelay(lost, options);
            if (lead.port() instanceof Port.LowSide out && out.clamp()) {
                options.add(wakesTheDead());
            }
            return options;
        }

        private void unrelayed(Amps all, Amps rating, List<Phrase> lost, List<Option> options) {
            if (lines.size() == 1) {
                Phrase because = Phrase.of("rule.straight-output", ids(lines), all, rating);
                options.add(join(Driving.straight(lead, drivingLines()), because, lost));
            } else {
                lost.add(Phrase.of("lost.joins-circuits", ids(lines)));
            }
            clamped(lost, options);
            if (lines.size() > 1 || hasBodyDiode()) {
                Amps most = lines.stream()
                        .map(Line::carries)
                        .reduce((a, b) -> a.value() >= b.value() ? a : b)
                        .orElseThrow();
                Optional<DiodeType> diode = job.findDiode(new Amps(Math.max(1, most.value())));
                diode.ifPresent(d -> options.add(join(
                        Driving.withDiodes(lead, drivingLines(), d),
                        Phrase.of("rule.diode-output", ids(lines), most, d.name()),
                        lost)));
                if (diode.isEmpty()) {
                    lost.add(Phrase.of("lost.no-diode", most));
                }
            }
        }

        /** A coil straight on a low-side output, with a way for its current when the output lets go. */
        private void clamped(List<Phrase> lost, List<Option> options) {
            Circuit circuit = lines.getFirst().of().circuit();
            if (lines.size() == 1
                    && side == Side.LOW
                    && Duties.of(circuit) == ContactDuty.SOLENOID
                    && job.constant() instanceof Found.Usable usable) {
                Phrase because = Phrase.of(
                        "rule.clamped-output", circuit.id(), usable.first().id());
                options.add(join(
                        Driving.clamped(lead, lines.getFirst().of(), job.signalDiode(), job.coilFeed(usable.first())),
                        because,
                        lost));
            }
        }

        /** Whatever is joined to such an output feeds a controller that has lost its supply; better without than half alive. */
        private Option wakesTheDead() {
            return Option.refused(
                    new Refusal(
                            wish,
                            Phrase.of("refuse.clamping-output", lead.id()),
                            Phrase.of("possible.clamping-output")),
                    List.of(Aside.refused(lead, wish)));
        }

        private void byRelay(List<Phrase> lost, List<Option> options) {
            Found constant = job.constant();
            boolean needsFeed = side == Side.LOW || lines.getFirst().active() == Side.HIGH;
            if (needsFeed && !(constant instanceof Found.Usable)) {
                if (options.isEmpty()) {
                    options.add(AddedLoads.without(lead, wish, constant));
                }
                return;
            }
            Amps most = lines.stream()
                    .map(Line::carries)
                    .reduce((a, b) -> a.value() >= b.value() ? a : b)
                    .orElseThrow();
            Amps contact = lines.stream()
                    .map(l -> Duties.of(l.of().circuit()).rating(l.carries()))
                    .reduce((a, b) -> a.value() >= b.value() ? a : b)
                    .orElseThrow();
            Optional<RelayType> relay = job.relayFor(contact, lead.port(), lines.size());
            if (relay.isEmpty()) {
                if (options.isEmpty()) {
                    options.add(AddedLoads.tooWeak(job, lead, wish));
                }
                return;
            }
            // Where no feed is needed any circuit will do as its stand-in: nothing is run from it.
            Circuit supply = constant instanceof Found.Usable usable
                    ? usable.first()
                    : lines.getFirst().of().circuit();
            Driving.Relaying relaying = new Driving.Relaying(
                    relay.get(), job.signalDiode(), job.coilFeed(supply), job.loadFeed(supply, lead), false);
            options.add(join(
                    Driving.byRelay(lead, side, drivingLines(), relaying),
                    Phrase.of("rule.relay-output", ids(lines), most, relay.get().name()),
                    lost));
            if (hasBodyDiode()) {
                options.add(join(
                        Driving.byRelay(lead, side, drivingLines(), relaying.withIsolation()),
                        Phrase.of(
                                "rule.relay-isolated",
                                ids(lines),
                                most,
                                relay.get().name()),
                        lost));
            }
        }

        private boolean hasBodyDiode() {
            return switch (lead.port()) {
                case Port.LowSide out -> out.bodyDiode() || out.clamp();
                case Port.HighSide out -> out.bodyDiode();
                case Port.Supply s -> false;
                case Port.Ground g -> false;
                case Port.Input in -> false;
                case Port.ToExtra x -> false;
            };
        }

        private List<Driving.Line> drivingLines() {
            return lines.stream().map(Line::of).toList();
        }

        private Option join(Draft draft, Phrase because, List<Phrase> lost) {
            return Option.of(List.of(new Decision.Join(lead, wish, ids(lines), draft, because, lost)));
        }
    }
}
