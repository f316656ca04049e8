package org.loomproof.network.solve;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.netlist.Setting;

/** Carries a setting and the positions of all contacts into the factorisation, touching only what differs from before. */
final class BranchStates {
    private final Layout layout;
    private final BranchSums sums;
    private final Curves curves;
    private final Recollection recollection;
    private final int[] differing;
    private ContactPattern pattern;
    private @Nullable Setting applied;

    BranchStates(Layout layout, BranchSums sums, Curves curves, Recollection recollection) {
        this.layout = layout;
        this.sums = sums;
        this.curves = curves;
        this.recollection = recollection;
        differing = new int[layout.thresholdOfPart.length];
        this.pattern = ContactPattern.of(layout.thresholds.length, t -> false);
    }

    /** Applies the setting that has come into force. */
    @SuppressWarnings("ReferenceEquality") // the very setting applied before need not be looked through
    void apply(Setting setting, SettingChange change) {
        if (setting == applied) {
            return;
        }
        int count = change.since(setting, applied, differing);
        applied = setting;
        for (int c = 0; c < count; c++) {
            refresh(differing[c], setting);
        }
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
        int threshold = layout.thresholdOfPart[part];
        boolean isPassed = threshold >= 0 && pattern.isPassed(threshold);
        BranchRules rules = layout.rules;
        for (int b = layout.firstBranch[part]; b < layout.firstBranch[part + 1]; b++) {
            boolean counts = rules.counts(b, setting, isPassed);
            if (counts && rules.isCurved(b)) {
                curved(b);
            } else {
                double siemens = rules.siemensIf(counts, b, setting);
                double emf = counts ? rules.emf(b, setting) : 0;
                straight(b, siemens, emf == 0 ? 0 : -siemens * emf);
            }
        }
    }

    private void curved(int branch) {
        int k = layout.curveOf(branch);
        if (!curves.tangents.active[k]) {
            recollection.switched(branch);
            recollection.leave(k);
            curves.enter(k);
        }
    }

    private void straight(int branch, double siemens, double amps) {
        int k = layout.curveOf(branch);
        if (k >= 0 && curves.tangents.active[k]) {
            recollection.leave(k);
            curves.tangents.leave(k);
        }
        double before = sums.siemens(branch);
        if (before != siemens || sums.amps(branch, 0) != amps) {
            sums.set(branch, siemens, amps);
            if (before == 0 != (siemens == 0)) {
                recollection.switched(branch);
            }
        }
    }
}
