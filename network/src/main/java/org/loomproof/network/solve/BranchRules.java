package org.loomproof.network.solve;

import java.util.List;
import org.loomproof.network.law.Term;
import org.loomproof.network.law.When;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;

/** What a setting and the positions of contacts make of each branch: a curve, or i = siemens (v - emf). Immutable. */
final class BranchRules {
    private final List<Term> terms;
    private final int[] partOf;
    private final int[] firstBranch;

    /** Per branch, what its term says, at hand: most are conductances that are as built whenever they count. */
    private final When[] when;

    private final boolean[] isCurved;
    private final boolean[] isPlain;
    private final double[] builtSiemens;
    private final double[] builtEmf;

    BranchRules(List<Term> terms, int[] partOf, int[] firstBranch) {
        this.terms = terms;
        this.partOf = partOf;
        this.firstBranch = firstBranch;
        int count = terms.size();
        when = new When[count];
        isCurved = new boolean[count];
        isPlain = new boolean[count];
        builtSiemens = new double[count];
        builtEmf = new double[count];
        for (int b = 0; b < count; b++) {
            when[b] = terms.get(b).when();
            isCurved[b] = terms.get(b).isCurved();
            if (terms.get(b) instanceof Term.Conductance term) {
                isPlain[b] = true;
                builtSiemens[b] = term.siemens();
                builtEmf[b] = term.emfVolts();
            }
        }
    }

    /** Whether the branch's own term counts: its part is whole and its condition met. */
    boolean counts(int branch, Setting setting, boolean isPassed) {
        int part = partOf[branch];
        return setting.fault(part) == PartFault.NONE && when[branch].counts(setting.isOn(part), isPassed);
    }

    /** Whether the branch is a curve, if its term counts. */
    boolean isCurved(int branch) {
        return isCurved[branch];
    }

    /** Conductance of a branch that is no curve now. */
    double siemens(int branch, Setting setting, boolean isPassed) {
        return siemensIf(counts(branch, setting, isPassed), branch, setting);
    }

    /** Conductance of a branch that is no curve now, when it is known whether its own term counts. */
    double siemensIf(boolean counts, int branch, Setting setting) {
        int part = partOf[branch];
        if (counts) {
            return isPlain[branch] && Double.isNaN(setting.stated(part))
                    ? builtSiemens[branch]
                    : siemens(terms.get(branch), setting.stated(part), setting.selected(part));
        }
        return setting.fault(part) == PartFault.SHORTED && branch == firstBranch[part] ? 1 / Setting.SHORT_OHMS : 0;
    }

    private static double siemens(Term term, double stated, int selected) {
        boolean other = !Double.isNaN(stated);
        return switch (term) {
            case Term.Conductance c -> other && c.stated() == Term.Stated.OHMS ? 1 / stated : c.siemens();
            case Term.Coil coil -> 1 / (other ? stated : coil.ohms());
            case Term.Capacitance open -> 0;
            case Term.Throw contact -> contact.position() == selected ? contact.siemens() : 0;
            case Term.Junction curve -> throw notStraight(curve);
            case Term.Filament curve -> throw notStraight(curve);
            case Term.Channel curve -> throw notStraight(curve);
        };
    }

    /** Source voltage of a branch that is no curve now. */
    double emf(int branch, Setting setting, boolean isPassed) {
        return counts(branch, setting, isPassed) ? emf(branch, setting) : 0;
    }

    /** Source voltage of a branch that is no curve now and whose own term counts. */
    double emf(int branch, Setting setting) {
        if (!isPlain[branch]) {
            return 0;
        }
        double stated = setting.stated(partOf[branch]);
        return !Double.isNaN(stated)
                        && terms.get(branch) instanceof Term.Conductance term
                        && term.stated() == Term.Stated.EMF
                ? stated
                : builtEmf[branch];
    }

    private static IllegalStateException notStraight(Term curve) {
        return new IllegalStateException("a curved branch taken for a straight one: " + curve);
    }
}
