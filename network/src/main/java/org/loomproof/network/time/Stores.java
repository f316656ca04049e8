package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.law.Term;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.TimeCurrentBand;
import org.loomproof.network.solve.CompanionSolver;

/** Everything in a network that stores something, kind by kind. */
record Stores(CoilStores coils, CapacitorStores capacitors, FilamentStores filaments, FuseStores fuses) {
    static Stores of(CompanionSolver solver, Method method, TimeCurrentBand.Edge edge) {
        List<Integer> coils = new ArrayList<>();
        List<Integer> capacitors = new ArrayList<>();
        List<Integer> filaments = new ArrayList<>();
        List<Integer> fuses = new ArrayList<>();
        for (int b = 0; b < solver.branchCount(); b++) {
            Part part = solver.network().parts().get(solver.partOf(b));
            switch (solver.term(b)) {
                case Term.Coil c -> coils.add(b);
                case Term.Capacitance c -> capacitors.add(b);
                case Term.Filament f -> filaments.add(b);
                case Term.Conductance c -> {
                    if (part instanceof Fuse fuse && fuse.band().isPresent()) {
                        fuses.add(b);
                    }
                }
                case Term.Throw t -> {}
                case Term.Junction j -> {}
                case Term.Channel c -> {}
            }
        }
        return new Stores(
                new CoilStores(solver, method, coils),
                new CapacitorStores(solver, method, capacitors),
                new FilamentStores(solver, method, filaments),
                new FuseStores(solver, method, fuses, edge));
    }

    StoreKind[] kinds() {
        return new StoreKind[] {coils, capacitors, filaments, fuses};
    }

    /** Energy held, joules, as far as it can be given back to the network. */
    double joules() {
        double sum = 0;
        for (StoreKind kind : kinds()) {
            for (int k = 0; k < kind.count; k++) {
                sum += kind.joules(k);
            }
        }
        return sum;
    }

    /** The same without coils that are no longer there. */
    double joulesLeft() {
        double sum = joules();
        for (int k = 0; k < coils.count; k++) {
            sum -= coils.counts[k] ? 0 : coils.joules(k);
        }
        return sum;
    }
}
