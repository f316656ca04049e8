package org.loomproof.intake.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.EntryReader;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Spot;
import org.loomproof.intake.field.Word;
import org.loomproof.intake.kit.LeadReading.PortKind;
import org.loomproof.intake.kit.LeadReading.RelayContact;
import org.loomproof.intake.layout.Cell;
import org.loomproof.intake.layout.RawEntry;
import org.loomproof.intake.role.Roles;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.words.Phrase;

/** Reads one lead. */
final class LeadReader {

    /** A row's number without a sign behind it: the place in the plug. */
    private static final Pattern POSITION = Pattern.compile("\\d{1,2}");

    /** A pole right before a current: {@code +2A}. */
    private static final Pattern SIGNED_AMPS =
            Pattern.compile("(?:^|(?<=[\\s(]))([+-])(?=\\d{1,4}(?:[.,]\\d{1,2})?\\s*m?a)");

    /** A pole as the last word of an input or output: {@code siren output plus}. */
    private static final Pattern LAST_POLE = Pattern.compile(
            "\\b(?:(plus|pos|positi[fv]\\w*)|minus|moins|neg|negati[fv]\\w*|ground|gnd|earth|masse|masa|tierra)\\W*$");

    private final Entry entry;

    /** What stands on the lead's own line. */
    private final String own;

    /** The same with what was added to it below. */
    private final String folded;

    private final Spot spot;
    private final List<Passage> leftOver;

    LeadReader(RawEntry raw) {
        this.entry = EntryReader.read(raw);
        this.own = Passage.join(raw.cells().stream().map(Cell::text).toList()).folded();
        this.folded = Passage.join(Stream.concat(raw.cells().stream().map(Cell::text), raw.notes().stream())
                        .toList())
                .folded();
        Spot said = entry.spot().map(Answer::value).orElse(Spot.NOT_SAID);
        for (Passage heading : raw.headings()) {
            said = said.or(Places.plug(new Claims(heading)));
        }
        List<Passage> left = new ArrayList<>(entry.leftOver());
        Optional<Passage> number = left.stream()
                .filter(p -> p.origin().column() == entry.origin().column()
                        && POSITION.matcher(p.text().strip()).matches())
                .findFirst();
        if (said.cavity().isEmpty() && number.isPresent()) {
            said = said.or(new Spot("", "", number.get().text().strip()));
            left.remove(number.get());
        }
        this.spot = said;
        this.leftOver = List.copyOf(left);
    }

    /** The lead, as the given one in its list, which speaks of relays in the box or does not; its id is none of those taken and is taken from then on. */
    LeadReading read(int number, Set<String> ids, boolean relays) {
        Optional<RelayContact> contact = relays ? LeadWords.contact(own) : Optional.empty();
        Optional<LeadWords.Use> use = LeadWords.use(own, entry.role()).or(this::byVolts);
        Optional<Amps> rating = Ratings.amps(folded);
        Optional<PortKind> port = use.flatMap(this::port)
                .or(() -> LeadWords.direction(own).flatMap(way -> port(way, false)))
                .or(() -> use.isEmpty() && rating.isPresent() ? sinks() : Optional.empty());
        String plug = spot.connector().isEmpty() ? spot.panel() : spot.connector();
        return new LeadReading(
                id(plug, number, ids),
                entry.name(),
                plug,
                spot.cavity(),
                use.map(LeadWords.Use::role),
                entry.colour(),
                entry.size(),
                port,
                contact,
                rating,
                Ratings.pulse(folded),
                asks(use.map(LeadWords.Use::role), port, contact, rating),
                leftOver.stream().filter(p -> !isUnderstood(p)).toList(),
                entry.origin());
    }

    /** Words that name no circuit may still be figures, or words that only a kit has. */
    private static boolean isUnderstood(Passage passage) {
        String rest = LeadWords.without(Ratings.without(passage.folded()));
        return Word.of(rest).stream().allMatch(w -> Roles.isNoise(w.text()));
    }

    private String id(String plug, int number, Set<String> ids) {
        String joined = (plug + "-" + spot.cavity()).replaceAll("[^A-Za-z0-9._+-]", "");
        boolean said = !plug.isEmpty() && !spot.cavity().isEmpty() && joined.length() > 2;
        String wanted = said ? joined : "L" + number;
        String id = wanted;
        for (int i = 2; !ids.add(id); i++) {
            id = wanted + "-" + i;
        }
        return id;
    }

    /** A lead of which nothing is said but volts is fed with them, and one with nothing but a minus is the return. */
    private Optional<LeadWords.Use> byVolts() {
        Matcher volts = VOLTS.matcher(own);
        boolean isFeed = volts.find() && LeadWords.direction(own).isEmpty();
        Optional<LeadRole> role = isFeed
                ? Optional.of(LeadRole.SUPPLY)
                : RETURN.matcher(own).matches() ? Optional.of(LeadRole.GROUND) : Optional.empty();
        return role.map(meant -> new LeadWords.Use(
                new Answer<>(meant, Evidence.HALF_NAMED, HALF_SURE, entry.origin(), isFeed ? volts.group() : "-"),
                isFeed ? LeadWords.Way.FEED : LeadWords.Way.GROUND));
    }

    /** How sure volts alone make a supply; common practice, {@code KitCorpusTest} counts it in. */
    private static final double HALF_SURE = 0.75;

    private static final Pattern VOLTS =
            Pattern.compile("[+]?\\s?\\b(?:12|24|9\\s?(?:-|to|bis|a|à)\\s?\\d{2})\\s?v(?:olts?)?\\b|[+]\\s?12\\b");

    /** A colour, a sign that parts, and a minus. */
    private static final Pattern RETURN = Pattern.compile("[^:=]{2,20}[:=]\\s*-\\s*");

    /** Inputs and grounds have no current to their name: a minus with one is an output that sinks it. A plus may be a feed. */
    private Optional<PortKind> sinks() {
        return port(LeadWords.Way.OUTPUT, false).filter(port -> port == PortKind.LOW_SIDE);
    }

    private Optional<PortKind> port(LeadWords.Use use) {
        return port(use.way(), use.role().value() == LeadRole.IGNITION_SENSE);
    }

    /** @param senses whether it senses a switched supply, which can only mean something when it is high */
    private Optional<PortKind> port(LeadWords.Way way, boolean senses) {
        Optional<Behaviour.Kind> pole = entry.behaviour().map(a -> a.value().kind());
        Matcher signed = SIGNED_AMPS.matcher(own);
        Matcher last = LAST_POLE.matcher(own);
        String sign = pole.isPresent()
                ? ""
                : signed.find() ? signed.group(1) : last.find() ? last.group(1) == null ? "-" : "+" : "";
        boolean low = sign.equals("-")
                || pole.filter(k -> k == Behaviour.Kind.NEGATIVE).isPresent();
        boolean high = sign.equals("+")
                || pole.filter(k -> k == Behaviour.Kind.POSITIVE).isPresent();
        return switch (way) {
            case FEED -> Optional.of(PortKind.SUPPLY);
            case GROUND -> Optional.of(PortKind.GROUND);
            case EXTRA -> Optional.of(PortKind.TO_EXTRA);
            case INPUT ->
                high || (senses && !low)
                        ? Optional.of(PortKind.HIGH_INPUT)
                        : low ? Optional.of(PortKind.LOW_INPUT) : Optional.empty();
            case OUTPUT ->
                high ? Optional.of(PortKind.HIGH_SIDE) : low ? Optional.of(PortKind.LOW_SIDE) : Optional.empty();
            case UNSAID -> Optional.empty();
        };
    }

    private static List<Phrase> asks(
            Optional<Answer<LeadRole>> role,
            Optional<PortKind> port,
            Optional<RelayContact> contact,
            Optional<Amps> rating) {
        List<Phrase> asks = new ArrayList<>();
        if (role.isEmpty()) {
            asks.add(Phrase.of("intake.ask.lead-role"));
        }
        if (port.isEmpty()) {
            asks.add(Phrase.of(contact.isPresent() ? "intake.ask.contact" : "intake.ask.port"));
        }
        if (rating.isEmpty() && port.map(PortKind::isOutput).orElse(true)) {
            asks.add(Phrase.of("intake.ask.rating"));
        }
        return asks;
    }
}
