package org.loomproof.network.solve;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.law.Term;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;

/** Carries a setting and the positions of all contacts into the factorisation, touching only what differs from before. */
final class BranchStates {
    private final Layout layout;
    private final Factorisation factorisation;
    private final Curves curves;
    private ContactPattern pattern;
    private @Nullable Setting applied;

    BranchStates(Layout layout, Factorisation factorisation, Curves curves) {
        this.layout = layout;
        this.factorisation = factorisation;
        this.curves = curves;
        this.pattern = ContactPattern.of(layout.thresholds.length, t -> false);
    }

    void apply(Setting setting) {
        Setting before = applied;
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
                    if (layout.terms[b].when().counts(set, isPassed)) {
                        count(b, setting.stated(part), setting.selected(part));
                    } else {
                        straight(b, 0, 0);
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
        CurvedBranches kind = Objects.requireNonNull(curves.kindOf(branch));
        kind.activate(curves.placeOf(branch), factorisation);
    }

    private void straight(int branch, double siemens, double amps) {
        CurvedBranches kind = curves.kindOf(branch);
        if (kind != null) {
            kind.deactivate(curves.placeOf(branch));
        }
        if (factorisation.conductance(branch) != siemens || factorisation.amps(branch) != amps) {
            factorisation.set(branch, siemens, amps);
        }
    }
}
