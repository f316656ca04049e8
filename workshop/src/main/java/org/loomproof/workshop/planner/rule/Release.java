package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Clamp;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.diode.ZenerType;
import org.loomproof.workshop.trade.diode.Zeners;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/**
 * What lies across a coil, by release time against peak volts. A plain diode keeps the peak lowest and is right wherever nothing hangs on
 * how soon the relay lets go. Where an output goes on and off faster than that, every coupling is offered with a zener as well, at added
 * coils beside the wire or in a cut one and at factory coils that the output works straight: the one of the most volts, for the soonest
 * release, that the output is said to bear.
 */
final class Release {

    private final Job job;

    Release(Job job) {
        this.job = job;
    }

    /** The ways, and behind each the same with a sooner release where that may be asked for and can be borne. */
    List<Option> weighed(List<Option> ways) {
        List<Option> all = new ArrayList<>();
        for (Option way : ways) {
            all.add(way);
            Option sooner = way.deciding(this::sooner);
            if (!sooner.equals(way)) {
                all.add(sooner);
            }
        }
        return all;
    }

    private Decision sooner(Decision decision) {
        if (!(decision instanceof Decision.Join join)) {
            return decision;
        }
        Optional<Seconds> pause = join.of().port().pause().map(Figure::low);
        Optional<ZenerType> zener = zener(join.of().port(), join.draft());
        if (pause.isEmpty() || zener.isEmpty()) {
            return decision;
        }
        Phrase because = Phrase.of(
                "rule.sooner",
                join.because(),
                zener.get().volts(),
                pause.get(),
                bears(join.of().port()).orElseThrow());
        boolean byRelay = join.draft().pieces().stream().anyMatch(Piece.Relay.class::isInstance);
        Draft draft =
                Clamp.sooner(join.draft(), zener.get(), byRelay ? "coupling.relay-sooner" : "coupling.straight-sooner");
        return new Decision.Join(join.of(), join.serves(), join.circuits(), draft, because, join.insteadOf());
    }

    /** Of the coils with a clamp diode that the output itself lets go of; what a buffer bears nobody says. */
    private Optional<ZenerType> zener(Port port, Draft draft) {
        List<Piece.Diode> clamps = Clamp.list(draft);
        if (clamps.isEmpty() || draft.pieces().stream().anyMatch(Piece.Buffer.class::isInstance)) {
            return Optional.empty();
        }
        double added = draft.pieces().stream()
                .mapToDouble(piece -> piece instanceof Piece.Relay relay
                        ? CoilCurrent.most(relay.type().coil()).value()
                        : 0)
                .sum();
        double factory =
                clamps.stream().mapToDouble(clamp -> carriedPast(draft, clamp)).sum();
        Amps coils = new Amps(added + factory);
        return bears(port)
                .flatMap(bears -> Zeners.listZeners().reversed().stream()
                        .filter(type -> peak(type, coils) <= bears.value())
                        .findFirst());
    }

    /** What the output draws through a factory coil; the wires of an added coil's diode carry nothing for long. */
    private static double carriedPast(Draft draft, Piece.Diode clamp) {
        End anode = Draft.at(clamp.name(), "A");
        return draft.runs().stream()
                .filter(run -> run.from().equals(anode) || run.to().equals(anode))
                .mapToDouble(run -> run.carries().value())
                .max()
                .orElse(0);
    }

    /** The most that the output sees at the instant it lets go. */
    private double peak(ZenerType type, Amps coil) {
        DiodeType diode = job.signalDiode();
        return SupplyPoint.HIGH.volts().value()
                + type.most(coil).value()
                + diode.forward().value();
    }

    private static Optional<Volts> bears(Port port) {
        return port instanceof Port.LowSide out ? out.bears().map(Figure::low) : Optional.empty();
    }
}
