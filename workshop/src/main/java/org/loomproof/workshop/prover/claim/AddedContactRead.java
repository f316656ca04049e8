package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.claim.Triggers.Trigger;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/**
 * What a button or sensor on bare leads tells is read, and nothing else: its input surely rests while nobody touches it and is
 * surely active once it is worked. Of two stages a light blow is read where the controller warns first, and never where it
 * sounds at once. A sensor is fed whatever the controller does.
 */
final class AddedContactRead implements Claim {

    @Override
    public String name() {
        return "added-contact-read";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (Extra extra : fitting.brief().kit().extras()) {
            if (extra.contact().isPresent()) {
                all.addAll(cases(fitting, extra));
            }
        }
        return all;
    }

    /** The inputs that serve what it is there for, joined to it or not. */
    private List<Claimed> cases(Fitting fitting, Extra extra) {
        List<Hookup.Connect> connects = fitting.connected().stream()
                .filter(connect -> Optional.of(connect.serves()).equals(servedBy(extra.kind())))
                .toList();
        List<Trigger> inputs = connects.stream()
                .flatMap(connect -> Triggers.read(fitting.brief().kit().lead(connect.lead())).stream())
                .toList();
        List<Claimed> all = new ArrayList<>();
        inputs.forEach(input -> all.addAll(cases(fitting, extra, input, inputs.size() > 1)));
        fitting.plan().parts().stream()
                .filter(part -> part instanceof AddedPart.Sender sender
                        && sender.extra().equals(extra.name())
                        && sender.draws().isPresent())
                .flatMap(part -> connects.stream().limit(1).map(connect -> fed(fitting, connect, part)))
                .forEach(all::add);
        return all;
    }

    private Claimed fed(Fitting fitting, Hookup.Connect connect, AddedPart sensor) {
        return new Claimed.ToShow(new AddedWork(
                name(), fitting, connect, Acting.ALWAYS, sensor.id(), List.of(), "claim.battery-is-charged"));
    }

    private static Optional<Wish> servedBy(Extra.Kind kind) {
        return switch (kind) {
            case OVERRIDE_BUTTON -> Optional.of(Wish.OVERRIDE_BUTTON);
            case SHOCK_SENSOR -> Optional.of(Wish.SHOCK_SENSOR);
            case INDICATOR, SOUNDER, ACTUATOR, INTERRUPT_RELAY, RELAY_SOCKET, OTHER -> Optional.empty();
        };
    }

    private List<Claimed> cases(Fitting fitting, Extra extra, Trigger input, boolean shared) {
        List<String> positions = extra.operable().map(Operable::positions).orElseThrow();
        boolean atOnce = fitting.brief().kit().behaviour().instantTriggers().contains(input.lead());
        List<Claimed> all = new ArrayList<>();
        for (String position : positions) {
            boolean rests = Extra.isAtRest(position);
            boolean hardest = position.equals(positions.getLast());
            if (rests || hardest || atOnce || shared) {
                boolean active = !rests && (hardest || !atOnce);
                all.add(new Claimed.ToShow(new ReadCase(name(), fitting, extra, new Wanted(input, position, active))));
            }
        }
        return all;
    }

    /**
     * What is wanted.
     *
     * @param input the input and its thresholds
     * @param position where the button or sensor stands
     * @param active whether the input is to be active then
     */
    private record Wanted(Trigger input, String position, boolean active) {

        double by(Pair pair) {
            return active ? input.activeBy(pair.fitted()) : input.restingBy(pair.fitted());
        }
    }

    private record ReadCase(
            String id, Phrase statement, PartId about, OperableId worked, Wanted wanted, Optional<ControllerState> only)
            implements Case {

        ReadCase(String claim, Fitting fitting, Extra extra, Wanted wanted) {
            this(
                    claim + " " + wanted.input().lead() + " " + wanted.position(),
                    Phrase.of(
                            wanted.active() ? "claim.added-contact-read" : "claim.added-contact-rests",
                            extra.name(),
                            wanted.position(),
                            wanted.input().lead()),
                    wanted.input().part(fitting.fitted().wired()),
                    Extra.workedAs(extra.name()),
                    wanted,
                    raises(fitting, wanted.input().lead()));
        }

        /** What raises the alarm matters while armed; a button whenever it is pressed. */
        private static Optional<ControllerState> raises(Fitting fitting, LeadId lead) {
            return fitting.brief().kit().behaviour().triggers().contains(lead)
                    ? Optional.of(ControllerState.ARMED)
                    : Optional.empty();
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return feed == ControllerFeed.WHOLE
                    && only.map(state::equals).orElse(state != ControllerState.WITHOUT_SUPPLY);
        }

        @Override
        public boolean concerns(Map<OperableId, String> positions) {
            return wanted.position().equals(positions.get(worked))
                    || (!positions.containsKey(worked) && Extra.isAtRest(wanted.position()));
        }

        @Override
        public List<OperableId> asksAbout() {
            return List.of(worked);
        }

        @Override
        public double slack(Pair pair) {
            double alive = pair.fitted().aliveByVolts();
            return alive >= 0 ? wanted.by(pair) : wanted.active() ? alive : Double.NaN;
        }

        @Override
        public Severity severity(Pair pair) {
            boolean guards = only.isPresent();
            return wanted.active() && !guards
                    ? Severity.STRANDED
                    : wanted.active() || !guards ? Severity.UNPROTECTED : Severity.NUISANCE;
        }

        @Override
        public Margin margin(Pair pair) {
            return pair.fitted().aliveByVolts() < 0
                    ? TriggerWords.dead(pair.fitted())
                    : new Margin(
                            slack(pair),
                            "V",
                            Phrase.of(
                                    "margin.input-reads",
                                    wanted.input().lead(),
                                    Shown.volts(wanted.input().volts(pair.fitted()))),
                            wanted.active()
                                    ? TriggerWords.active(wanted.input(), pair.fitted())
                                    : TriggerWords.resting(wanted.input(), pair.fitted()));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            return LoadCase.withControllerSupply(pair, TriggerWords.observation(wanted.input(), pair.fitted()));
        }
    }
}
