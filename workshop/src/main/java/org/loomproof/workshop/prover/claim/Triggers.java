package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.wiring.Wired;

/** The inputs that raise the alarm, and how far each is from a level. */
public final class Triggers {

    /** One of them. */
    public record Trigger(LeadId lead, Port.Active active, boolean isHeld) {

        InputReach reach(Reading reading) {
            return reach(reading.wired());
        }

        PartId part(Wired wired) {
            return reach(wired).part();
        }

        private InputReach reach(Wired wired) {
            return Objects.requireNonNull(
                    wired.controller().orElseThrow().inputs().get(lead));
        }

        /** Volts that it reads against the controller's ground. */
        public double volts(Reading reading) {
            return reading.volts(reach(reading));
        }

        /** Volts by which it is surely read as active; negative when it is not. What floats is not read. */
        public double activeBy(Reading reading) {
            InputReach reach = reach(reading);
            if (!isHeld && reading.isFloating(reach)) {
                return Double.NEGATIVE_INFINITY;
            }
            double volts = reading.volts(reach);
            return switch (active) {
                case LOW -> reach.lowBelow() - volts;
                case HIGH -> volts - reach.highAbove();
            };
        }

        /** Volts by which it is surely read as resting; negative when it is not. */
        public double restingBy(Reading reading) {
            InputReach reach = reach(reading);
            if (!isHeld && reading.isFloating(reach)) {
                return Double.NEGATIVE_INFINITY;
            }
            double volts = reading.volts(reach);
            return switch (active) {
                case LOW -> volts - reach.highAbove();
                case HIGH -> reach.lowBelow() - volts;
            };
        }
    }

    private Triggers() {}

    /** All of a kit, in its order. */
    static List<Trigger> list(Fitting fitting) {
        return list(fitting.brief().kit());
    }

    /** All of a kit, in its order. */
    public static List<Trigger> list(Kit kit) {
        List<Trigger> triggers = new ArrayList<>();
        for (Lead lead : kit.leads()) {
            find(kit, lead).ifPresent(triggers::add);
        }
        return triggers;
    }

    private static Optional<Trigger> find(Kit kit, Lead lead) {
        return kit.behaviour().triggers().contains(lead.id()) ? read(lead) : Optional.empty();
    }

    /** What an input reads by, whether or not it raises the alarm; empty for any other lead. */
    static Optional<Trigger> read(Lead lead) {
        if (lead.port() instanceof Port.Input input) {
            boolean held = input.pullUp().isPresent() || input.pullDown().isPresent();
            return Optional.of(new Trigger(lead.id(), input.active(), held));
        }
        return Optional.empty();
    }
}
