package org.loomproof.intake.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** Which circuits an order needs that are not there yet. */
public final class Needs {

    private static final List<Need> ALL = Table.read(Needs.class, "needs.csv").listRows().stream()
            .map(Needs::need)
            .toList();

    private Needs() {}

    /**
     * One circuit that is needed.
     *
     * @param role what it is for; of several that would do, the first
     * @param wishes what asks for it
     */
    public record Missing(CircuitRole role, List<Wish> wishes) {}

    private record Need(Wish wish, List<CircuitRole> anyOf) {}

    /** The circuits that the order's wishes need and that are not among the given roles, in the order of the wishes. */
    public static List<Missing> listMissing(Order order, Collection<CircuitRole> there) {
        Set<Wish> wishes =
                Stream.concat(Stream.of(Wish.BASICS), order.wishes().stream()).collect(Collectors.toSet());
        Map<CircuitRole, List<Wish>> missing = new LinkedHashMap<>();
        for (Need need : ALL) {
            if (wishes.contains(need.wish()) && need.anyOf().stream().noneMatch(there::contains)) {
                missing.computeIfAbsent(need.anyOf().getFirst(), r -> new ArrayList<>())
                        .add(need.wish());
            }
        }
        return missing.entrySet().stream()
                .map(e -> new Missing(e.getKey(), List.copyOf(e.getValue())))
                .toList();
    }

    private static Need need(Row row) {
        List<CircuitRole> roles = Stream.of(row.text("roles").split(" ", -1))
                .map(r -> CircuitRole.valueOf(r.toUpperCase(Locale.ROOT).replace('-', '_')))
                .toList();
        return new Need(Wish.valueOf(row.text("wish").toUpperCase(Locale.ROOT).replace('-', '_')), roles);
    }
}
