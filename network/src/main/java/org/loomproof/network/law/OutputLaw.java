package org.loomproof.network.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.network.law.Term.Channel;
import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.law.Term.Junction;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Wakefulness;

/**
 * A driven channel that counts when the output is asked for and its controller is awake, and diodes that always count: they
 * conduct into a controller that has lost its ground or its supply.
 */
final class OutputLaw {
    private static final int OUTPUT = 0;
    private static final int SUPPLY = 1;
    private static final int GROUND = 2;
    private static final int INNER = 3;

    private OutputLaw() {}

    static PartEquations equations(LowSideOutput output) {
        return equations(
                output.drive(), output.wakefulness(), OUTPUT, GROUND, output.clampToSupply(), output.bodyDiode());
    }

    static PartEquations equations(HighSideOutput output) {
        return equations(
                output.drive(), output.wakefulness(), SUPPLY, OUTPUT, output.bodyDiode(), output.clampToGround());
    }

    private static PartEquations equations(
            Drive drive, Wakefulness wakefulness, int from, int to, boolean diodeToSupply, boolean diodeFromGround) {
        List<Term> terms = new ArrayList<>();
        boolean bipolar = drive.saturationVolts() > 0;
        terms.add(channel(drive, from, bipolar ? INNER : to));
        if (bipolar) {
            terms.add(new Junction(
                    INNER, to, ShockleyCurve.through(drive.saturationVolts(), drive.limitAmps()), When.SET_AND_PASSED));
        }
        if (diodeToSupply) {
            terms.add(new Junction(OUTPUT, SUPPLY, ShockleyCurve.of(DiodeModel.BODY), When.ALWAYS));
        }
        if (diodeFromGround) {
            terms.add(new Junction(GROUND, OUTPUT, ShockleyCurve.of(DiodeModel.BODY), When.ALWAYS));
        }
        Threshold awake = new Threshold(SUPPLY, GROUND, wakefulness.wakesAtVolts(), wakefulness.sleepsAtVolts(), false);
        return new PartEquations(terms, bipolar ? 1 : 0, Optional.of(awake));
    }

    private static Term channel(Drive drive, int from, int to) {
        return Double.isInfinite(drive.limitAmps())
                ? Conductance.when(When.SET_AND_PASSED, from, to, drive.onOhms())
                : new Channel(from, to, ChannelCurve.of(drive), When.SET_AND_PASSED);
    }
}
