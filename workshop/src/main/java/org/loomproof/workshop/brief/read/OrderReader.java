package org.loomproof.workshop.brief.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.trade.diode.Diodes;
import org.loomproof.workshop.trade.relay.Relays;
import org.loomproof.workshop.words.Phrase;

/** Reads an order: what is wanted and what the shop has decided. Names of the sheet are checked where there is a sheet. */
final class OrderReader {

    static final String FORMAT = "loomproof order 1";

    private static final Map<String, Wish> WISHES = wishes();
    private static final Map<String, String> STOCK = stockNames();
    private static final Pattern DAYS = Pattern.compile("(\\d{1,4}) days?");
    private static final int LONGEST_DAYS = 3650;

    private final MappingCursor in;
    private final FigureReader figures;
    private final Optional<Sheet> sheet;

    private OrderReader(MappingCursor in, FigureReader figures, Optional<Sheet> sheet) {
        this.in = in;
        this.figures = figures;
        this.sheet = sheet;
    }

    static Order read(MappingCursor in, FigureReader figures, Optional<Sheet> sheet) {
        return new OrderReader(in, figures, sheet).order();
    }

    private Order order() {
        String job = in.text("job");
        Set<Wish> wishes = wishesOf();
        Optional<Cursor> watch = in.find("watch");
        List<OperableId> watched = watch.map(this::watched).orElse(List.of());
        if (watch.isPresent()) {
            wishes.add(Wish.WATCH_OPENINGS);
        } else if (wishes.contains(Wish.WATCH_OPENINGS)) {
            in.missing("watch", Phrase.of("problem.wanted.watch"));
        }
        Order order = new Order(
                job,
                wishes,
                watched,
                in.find("override-place").map(Cursor::text),
                in.word("rule-set", Order.RuleSet.class),
                in.need("longest-unused").map(OrderReader::days).orElse(0),
                new ShopReader(figures, sheet).read(in.mappingOrEmpty("shop")),
                stock(),
                new ChangeReader(sheet).read(in.items("changes")));
        if (wishes.isEmpty() && in.find("wants").isEmpty()) {
            in.missing("wants", Phrase.of("problem.wanted.item"));
        }
        in.close();
        return order;
    }

    private Set<Wish> wishesOf() {
        Set<Wish> wishes = EnumSet.noneOf(Wish.class);
        References named = new References();
        for (Cursor item : in.items("wants")) {
            item.word(WISHES).ifPresent(wish -> {
                named.give(wish.word(), item);
                wishes.add(wish);
            });
        }
        return wishes;
    }

    private List<OperableId> watched(Cursor watch) {
        Map<String, OperableId> openings = new LinkedHashMap<>();
        sheet.ifPresent(known -> known.operables().stream()
                .filter(Operable::isOpening)
                .forEach(opening -> openings.put(opening.id().value(), opening.id())));
        if (watch.isText() && watch.text().equals("all")) {
            if (sheet.isPresent() && openings.isEmpty()) {
                watch.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.openings-on-sheet"));
            }
            return List.copyOf(openings.values());
        }
        List<OperableId> watched = new ArrayList<>();
        References named = new References();
        for (Cursor item : watch.items()) {
            Optional<OperableId> opening = sheet.isPresent()
                    ? item.reference(openings)
                    : Optional.of(item.id()).map(OperableId::new);
            opening.ifPresent(id -> {
                named.give(id.value(), item);
                watched.add(id);
            });
        }
        if (watched.isEmpty() && watch.items().isEmpty()) {
            watch.problem(ProblemKind.MISSING, Phrase.of("problem.wanted.watch"));
        }
        return watched;
    }

    private static int days(Cursor at) {
        Matcher days = DAYS.matcher(at.text());
        int number = days.matches() ? Integer.parseInt(days.group(1)) : -1;
        if (number < 0 || number > LONGEST_DAYS) {
            at.problem(
                    number < 0 ? ProblemKind.NOT_A_NUMBER : ProblemKind.OUT_OF_RANGE,
                    Phrase.of("problem.wanted.days", Integer.toString(LONGEST_DAYS)));
        }
        return number;
    }

    private Set<String> stock() {
        Set<String> stock = new LinkedHashSet<>();
        for (Cursor item : in.items("stock")) {
            item.reference(STOCK).ifPresent(stock::add);
        }
        return stock;
    }

    /** The parts that the trade knows by name. */
    private static Map<String, String> stockNames() {
        Map<String, String> names = new LinkedHashMap<>();
        Relays.listRelays().forEach(relay -> names.put(relay.name(), relay.name()));
        Diodes.listDiodes().forEach(diode -> names.put(diode.name(), diode.name()));
        return names;
    }

    private static Map<String, Wish> wishes() {
        Map<String, Wish> wishes = new LinkedHashMap<>(Words.all(Wish.class));
        // Nobody asks for the kit's own feed and ground.
        wishes.remove(Wish.BASICS.word());
        return wishes;
    }
}
