package org.loomproof.workshop.prover.product;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.prover.claim.Triggers;
import org.loomproof.workshop.prover.claim.Triggers.Trigger;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.explore.Onlooker;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Walker;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.Space;

/**
 * What the controller is given in every situation of the area it lies in. Most of it is overheard from the walk that decides
 * the claims; what no claim asked about is solved when the table is completed.
 */
public final class Sightings implements Onlooker {

    /** The table of one area: what is given at each condition, supply point and combination of positions. */
    static final class Table {

        private final Space space;
        private final Vehicle fitted;
        private final byte[] given;

        Table(Space space, Vehicle fitted) {
            this.space = space;
            this.fitted = fitted;
            int supplies = space.supplies().size();
            int combinations = space.positions().size();
            this.given = new byte[space.conditions().size() * supplies * combinations];
        }

        Space space() {
            return space;
        }

        /** How many situations there are. */
        int size() {
            return given.length;
        }

        /** Whether what is given is the same at two places, counted by condition, then supply, then positions. */
        boolean isSame(int place, int other) {
            return given[place] == given[other];
        }

        private void put(Key key, Given found) {
            given[place(key.condition(), key.supply(), key.positions())] = (byte) found.bits();
        }

        Given at(int condition, int supply, int positions) {
            return new Given(given[place(condition, supply, positions)]);
        }

        private int place(int condition, int supply, int positions) {
            return (condition * space.supplies().size() + supply)
                            * space.positions().size()
                    + positions;
        }
    }

    private final List<Trigger> triggers;
    private final Set<LeadId> instant;
    private @Nullable Table table;

    /** Watches for what a kit's controller is given. */
    public Sightings(Kit kit) {
        this.triggers = Triggers.list(kit);
        this.instant = kit.behaviour().instantTriggers();
    }

    @Override
    public Watch begins(Space space, Vehicle fitted) {
        boolean hasController = fitted.wired()
                .controller()
                .filter(c -> fitted.wired().network().hasNode(c.supply()))
                .isPresent();
        if (!hasController) {
            return (key, answers) -> {};
        }
        Table begun = new Table(space, fitted);
        table = begun;
        return (key, answers) -> take(begun, key, answers);
    }

    private void take(Table into, Key key, Answers answers) {
        into.put(key, Given.of(into.fitted, answers, triggers, instant));
    }

    /** What was overheard; empty where no claim looked at the area of the controller. */
    Optional<Table> overheard() {
        return Optional.ofNullable(table);
    }

    /** Solves what is missing; the number of operating points asked for. */
    long complete() {
        Table known = table;
        if (known == null) {
            return 0;
        }
        int supplies = known.space().supplies().size();
        return IntStream.range(0, known.space().conditions().size() * supplies)
                .parallel()
                .mapToLong(each -> complete(known, each / supplies, each % supplies))
                .sum();
    }

    private long complete(Table known, int condition, int supply) {
        Space space = known.space();
        Workbench bench = new Workbench();
        Walker settings = new Walker(
                space,
                known.fitted.settings(),
                space.supplies().get(supply),
                space.conditions().get(condition).representative());
        for (int p = 0; p < space.positions().size(); p++) {
            if (!known.at(condition, supply, p).isLookedAt()) {
                take(known, new Key(condition, supply, p), bench.answers(known.fitted, settings.at(p)));
            }
        }
        return bench.solves();
    }
}
