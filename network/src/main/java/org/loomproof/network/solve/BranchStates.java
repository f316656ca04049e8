package org.loomproof.network.solve;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.law.Term;
import org.loomproof.network.law.When;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;

/** Carries a setting and the positions of all contacts into the factorisation, touching only what differs from before. */
final class BranchStates {
    private final Layout layout;
    private final Factorisation factorisation;
    private final Curves curves;
    private final Recollection recollection;

    /** Per branch, what its term says, at hand: most are conductances that are as built whenever they count. */
    private final When[] when;

    private final boolean[] isAsBuilt;
    private final double[] builtSiemens;
    private final double[] builtAmps;
    private ContactPattern pattern;
    private @Nullable Setting applied;

    BranchStates(Layout layout, Factorisation factorisation, Curves curves, Recollection recollection) {
        this.layout = layout;
        this.factorisation = factorisation;
        this.curves = curves;
        this.recollection = recollection;
        this.pattern = ContactPattern.of(layout.thresholds.length, t -> false);
        when = new When[layout.branchCount];
        isAsBuilt = new boolean[layout.branchCount];
        builtSiemens = new double[layout.branchCount];
        builtAmps = new double[layout.branchCount];
        for (int b = 0; b < layout.branchCount; b++) {
            when[b] = layout.terms[b].when();
            if (layout.terms[b] instanceof Term.Conductance term) {
                isAsBuilt[b] = true;
                builtSiemens[b] = term.siemens();
                builtAmps[b] = -term.siemens() * term.emfVolts();
            }
        }
    }

    @SuppressWarnings("ReferenceEquality") // the very setting applied before need not be looked through
    void apply(Setting setting) {
        Setting before = applied;
        if (setting == before) {
            return;
        }
        applied = setting;
        if (before == null) {
            for (int part = 0; part < layout.thresholdOfPart.length; part++) {
                refresh(part, setting);
            }
            return;
        }
        for (int part = setting.findDifference(before, 0); part >= 0; part = nextDifference(setting, before, part)) {
            refresh(part, setting);
        }
    }

    private int nextDifference(Setting setting, Setting before, int part) {
        return part + 1 < layout.thresholdOfPart.length ? setting.findDifference(before, part + 1) : -1;
    }

    /** Moves contacts; the setting must have been applied. */
    void move(ContactPattern wanted) {
        Setting setting = Objects.requireNonNull(applied);
        ContactPattern before = pattern;
        pattern = wanted;
        int count = wanted.count();
        for (int t = wanted.findDifference(before, 0);
                t >= 0;
                t = t + 1 < count ? wanted.findDifference(before, t + 1) : -1) {
            refresh(layout.thresholdPart[t], setting);
        }
    }

    private void refresh(int part, Setting setting) {
        PartFault fault = setting.fault(part);
        boolean set = setting.isOn(part);
        int threshold = layout.thresholdOfPart[part];
        boolean isPassed = threshold >= 0 && pattern.isPassed(threshold);
        int first = layout.firstBranch[part];
        for (int b = first; b < layout.firstBranch[part + 1]; b++) {
            switch (fault) {
                case BROKEN -> straight(b, 0, 0);
                case SHORTED -> straight(b, b == first ? 1 / Setting.SHORT_OHMS : 0, 0);
                case NONE -> {
                    if (!when[b].counts(set, isPassed)) {
                        straight(b, 0, 0);
                    } else if (isAsBuilt[b] && Double.isNaN(setting.stated(part))) {
                        straight(b, builtSiemens[b], builtAmps[b]);
                    } else {
                        count(b, setting.stated(part), setting.selected(part));
                    }
                }
            }
        }
    }

    private void count(int branch, double stated, int selected) {
        switch (layout.terms[branch]) {
            case Term.Conductance term -> {
                boolean other = !Double.isNaN(stated);
                double siemens = other && term.stated() == Term.Stated.OHMS ? 1 / stated : term.siemens();
                double emf = other && term.stated() == Term.Stated.EMF ? stated : term.emfVolts();
                straight(branch, siemens, -siemens * emf);
            }
            case Term.Coil coil -> straight(branch, 1 / (Double.isNaN(stated) ? coil.ohms() : stated), 0);
            case Term.Capacitance open -> straight(branch, 0, 0);
            case Term.Throw contact -> straight(branch, contact.position() == selected ? contact.siemens() : 0, 0);
            case Term.Junction j -> curved(branch);
            case Term.Filament f -> curved(branch);
            case Term.Channel c -> curved(branch);
        }
    }

    private void curved(int branch) {
        int k = curves.curveOf(branch);
        if (!curves.tangents.active[k]) {
            recollection.switched(branch);
            recollection.leave(k);
            curves.enter(k);
        }
    }

    private void straight(int branch, double siemens, double amps) {
        int k = curves.curveOf(branch);
        if (k >= 0 && curves.tangents.active[k]) {
            recollection.leave(k);
            curves.tangents.leave(k);
        }
        double before = factorisation.conductance(branch);
        if (before != siemens || factorisation.amps(branch) != amps) {
            factorisation.set(branch, siemens, amps);
            if (before == 0 != (siemens == 0)) {
                recollection.switched(branch);
            }
        }
    }
}
