package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.claim.Triggers.Trigger;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/**
 * With everything closed that opens and no sensor struck, no connected trigger input leaves its resting level while armed, wherever the
 * key is; nor while the controller warns or sounds, whatever flashes then: else one blow would be taken for an opening, and the alarm
 * would keep itself going.
 */
public final class QuietWhenClosed implements Claim {

    /** What its results' ids begin with. */
    public static final String NAME = "quiet-when-closed";

    private static final Set<ControllerState> WATCHING =
            EnumSet.of(ControllerState.ARMED, ControllerState.WARNING, ControllerState.SOUNDING);

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<LeadId> connected =
                fitting.connected().stream().map(Hookup.Connect::lead).toList();
        List<OperableId> openings = fitting.brief().sheet().operables().stream()
                .filter(Operable::isOpening)
                .map(Operable::id)
                .toList();
        List<OperableId> told = fitting.brief().kit().extras().stream()
                .flatMap(extra -> extra.operable().stream())
                .map(Operable::id)
                .toList();
        List<Claimed> all = new ArrayList<>();
        for (Trigger trigger : Triggers.list(fitting)) {
            if (connected.contains(trigger.lead())) {
                all.add(new Claimed.ToShow(new QuietCase(name(), trigger, openings, told, fitting)));
            }
        }
        return all;
    }

    private record QuietCase(
            String id,
            Phrase statement,
            Trigger trigger,
            List<OperableId> openings,
            List<OperableId> told,
            PartId about)
            implements Case {

        QuietCase(String claim, Trigger trigger, List<OperableId> openings, List<OperableId> told, Fitting fitting) {
            this(
                    claim + " " + trigger.lead(),
                    Phrase.of("claim.quiet-when-closed", trigger.lead()),
                    trigger,
                    openings,
                    told,
                    trigger.part(fitting.fitted().wired()));
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return WATCHING.contains(state) && feed == ControllerFeed.WHOLE;
        }

        @Override
        public boolean concerns(Map<OperableId, String> positions) {
            return openings.stream()
                            .noneMatch(o -> Operable.OPENING_POSITIONS.getLast().equals(positions.get(o)))
                    && told.stream().allMatch(t -> Extra.isAtRest(positions.get(t)));
        }

        @Override
        public double slack(Pair pair) {
            return pair.fitted().aliveByVolts() < 0 ? Double.NaN : trigger.restingBy(pair.fitted());
        }

        @Override
        public Margin margin(Pair pair) {
            return new Margin(
                    slack(pair),
                    "V",
                    Phrase.of("margin.input-reads", trigger.lead(), Shown.volts(trigger.volts(pair.fitted()))),
                    TriggerWords.resting(trigger, pair.fitted()));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            return LoadCase.withControllerSupply(pair, TriggerWords.observation(trigger, pair.fitted()));
        }
    }
}
