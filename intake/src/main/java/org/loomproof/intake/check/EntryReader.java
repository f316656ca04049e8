package org.loomproof.intake.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Marks;
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Polarity;
import org.loomproof.intake.field.Segments;
import org.loomproof.intake.field.Sizes;
import org.loomproof.intake.field.Spot;
import org.loomproof.intake.field.Validity;
import org.loomproof.intake.field.Word;
import org.loomproof.intake.layout.Cell;
import org.loomproof.intake.layout.ColumnKind;
import org.loomproof.intake.layout.RawEntry;
import org.loomproof.intake.role.RoleReading;
import org.loomproof.intake.role.Roles;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.colour.WireColour;

/** Puts the fields of one record together. A column that is there for a field has the say; other cells fill what it leaves. */
public final class EntryReader {

    /** A row's number in a list, which is no second circuit of its name. */
    private static final Pattern NUMBER = Pattern.compile("^\\s*\\(?\\d{1,3}[.)]\\s+");

    /** A stroke stands for nothing; a plus, or a sign in brackets, is a pole wherever it stands. */
    private static final Pattern NOTHING =
            Pattern.compile("(?!.*(?:\\(\\s*-\\s*\\)|\\+))[\\s\\p{Punct}]*(n/?a|none|unknown)?[\\s\\p{Punct}]*");

    /** A name of nothing but the supply's volts, which say how the wire switches too. */
    private static final Pattern NAMED_BY_VOLTS = Pattern.compile("[\\s+(]*12\\s*v(?:olts?)?[\\s+)]*");

    /** The second colour is not known to whoever wrote it: {@code tan/???}. */
    private static final Pattern HALF_KNOWN = Pattern.compile("\\p{L}\\s*[/-]\\s*\\?|\\?\\s*[/-]\\s*\\p{L}");

    private static final int LONGEST_LITTLE_WORD = 3;

    private final RawEntry raw;
    private final List<Passage> leftOver = new ArrayList<>();
    private final List<Passage> notes = new ArrayList<>();
    private String name = "";
    private String colourAsWritten = "";
    private String steering = "";
    private final Set<String> validity = new LinkedHashSet<>();
    private boolean doubted;
    private boolean absent;
    private @Nullable Found<RoleReading> role;
    private @Nullable Found<WireColour> colour;
    private @Nullable Found<SquareMillimetres> size;
    private @Nullable Found<Behaviour> behaviour;
    private final Whereabouts where = new Whereabouts();

    private EntryReader(RawEntry raw) {
        this.raw = raw;
    }

    /** What the record says, field by field. */
    public static Entry read(RawEntry raw) {
        EntryReader reader = new EntryReader(raw);
        reader.cells();
        reader.headings();
        return reader.entry();
    }

    private void cells() {
        // Columns that are there for one field come before those that may hold any.
        for (ColumnKind kind : ColumnKind.values()) {
            for (Cell cell : raw.cells()) {
                if (cell.kind() == kind) {
                    cell(cell);
                }
            }
        }
        for (Passage note : raw.notes()) {
            note(note);
        }
    }

    private void cell(Cell cell) {
        Claims claims = new Claims(cell.text());
        if (cell.kind() != ColumnKind.POLARITY
                && NOTHING.matcher(cell.text().folded()).matches()) {
            doubted |= Marks.doubt(claims);
            return;
        }
        doubted |= Marks.doubt(claims);
        holdsFor(claims);
        absent |= Marks.absent(claims);
        switch (cell.kind()) {
            case ROLE -> roleCell(cell, claims);
            case COLOUR -> colourCell(cell, claims);
            case POLARITY -> polarityCell(cell, claims);
            case PLACE -> placeCell(cell, claims);
            case CONNECTOR -> where.inItsColumn(new Spot("", cell.text().text(), ""), cell);
            case CAVITY -> where.inItsColumn(new Spot("", "", cavity(cell.text())), cell);
            case SIZE -> sizeCell(claims);
            case PERHAPS_PLACE -> perhapsPlace(cell, claims);
            case NOTE -> noteCell(cell);
            case FREE -> free(cell, claims);
            case PLACE_OF_ALL -> {
                if (!where.hasPanel()) {
                    placeCell(cell, claims);
                }
            }
        }
    }

    private static String cavity(Passage text) {
        Spot read = Places.plug(new Claims(text));
        return read.cavity().isEmpty() ? text.text() : read.cavity();
    }

    private void roleCell(Cell cell, Claims claims) {
        name = name.isEmpty() ? cell.text().text() : name;
        var number = NUMBER.matcher(claims.open());
        if (number.find()) {
            claims.claim(number.start(), number.end());
        }
        Spot plug = Places.plug(claims);
        // A column of names keeps its words for the name: a place in it must be led to.
        Optional<Found<String>> place = Places.afterPreposition(claims);
        Optional<Found<Behaviour>> switching = switching(claims);
        if (colour == null && !has(ColumnKind.COLOUR)) {
            colour = Colours.among(claims).orElse(null);
        }
        if (role == null) {
            role = Roles.inColumn(claims).map(f -> takenOver(f, cell)).orElse(null);
        }
        if (role == null && NAMED_BY_VOLTS.matcher(cell.text().folded()).matches()) {
            role = Roles.inColumn(new Claims(cell.text())).orElse(null);
        }
        behaviour = behaviour == null ? switching.orElse(null) : behaviour;
        where.amongOthers(plug, place);
        rest(claims);
    }

    /** How the wire switches; "hot in run" says what it is for, not how. */
    private static Optional<Found<Behaviour>> switching(Claims claims) {
        claims.shield(Roles.phrases(claims));
        Optional<Found<Behaviour>> found = Polarity.among(claims);
        claims.unshield();
        return found;
    }

    /** A resistance says more than the sign beside the colour; what else differs from what is read already is left to be seen. */
    private void saySwitching(Cell cell, Claims claims) {
        Found<Behaviour> before = behaviour;
        if (before != null) {
            Optional<Behaviour> said = switching(claims.copy()).map(Found::value);
            boolean isFuller = said.filter(b -> b.kind() == Behaviour.Kind.STEPPED
                                    && b.active().isPresent())
                            .isPresent()
                    && before.value().kind() == Behaviour.Kind.NEGATIVE;
            boolean isSame = said.filter(b -> b.kind() == before.value().kind()).isPresent();
            if (!isFuller && !isSame) {
                return;
            }
            behaviour = isFuller ? null : before;
        }
        Optional<Found<Behaviour>> found = switching(claims).map(f -> takenOver(f, cell));
        behaviour = behaviour == null ? found.orElse(null) : behaviour;
    }

    private void colourCell(Cell cell, Claims claims) {
        if (colour == null && HALF_KNOWN.matcher(cell.text().text()).find()) {
            colourAsWritten = cell.text().text();
            behaviour = behaviour == null ? Polarity.among(claims).orElse(null) : behaviour;
            return;
        }
        readSize(claims);
        Optional<Found<WireColour>> found = Colours.inColumn(claims);
        if (colour == null && found.isPresent()) {
            colour = takenOver(found.get(), cell);
            otherColour(Colours.among(claims.copy()));
            raw.cells().stream()
                    .filter(c -> c.kind() == ColumnKind.ROLE)
                    .forEach(c -> otherColour(Colours.among(new Claims(c.text()))));
        } else if (colour == null) {
            colourAsWritten = cell.text().text();
            return;
        }
        if (behaviour == null) {
            behaviour = Polarity.among(claims).orElse(null);
        }
        strayPlace(claims);
        if (!where.isSaid() && !has(ColumnKind.PLACE)) {
            // A word right behind a colour in its column is about the wire.
            where.amongOthers(Spot.NOT_SAID, inOwnWords(claims, true));
        }
        rest(claims);
    }

    /** A wire of two hues among the names may as well be the one: "lock / unlock: green/blue" beside a column with another. */
    private void otherColour(Optional<Found<WireColour>> other) {
        if (colour != null
                && other.isPresent()
                && other.get().value().tracer().isPresent()
                && !other.get().value().letters().equals(colour.value().letters())) {
            colour = colour.on(Evidence.AMONG_SEVERAL);
        }
    }

    private void polarityCell(Cell cell, Claims claims) {
        readSize(claims);
        Optional<Found<Behaviour>> found = Polarity.inColumn(claims);
        if (found.isPresent()) {
            behaviour = takenOver(found.get(), cell);
        }
        strayPlace(claims);
        rest(claims);
    }

    /** Where the wire is, said in a column that is there for something else. */
    private void strayPlace(Claims claims) {
        if (!where.isSaid() && !has(ColumnKind.PLACE)) {
            Spot plug = Places.plug(claims);
            where.amongOthers(plug, Places.afterPreposition(claims).or(() -> Places.wholeSegment(claims)));
        }
    }

    private void placeCell(Cell cell, Claims claims) {
        if (isSize(claims)) {
            readSize(claims);
            return;
        }
        if (colour == null && !has(ColumnKind.COLOUR) && !isColourElsewhere()) {
            colour = Colours.among(claims).orElse(null);
        }
        Spot plug = Places.plug(claims);
        List<Passage> left = claims.leftOver();
        String panel = left.isEmpty() ? "" : PlaceInOwnWords.ofCell(cell.text().text(), claims);
        if (!where.isSaid() && !panel.isEmpty() && !Places.isPlace(Passage.fold(panel))) {
            where.on(Evidence.OWN_WORDS);
        }
        where.inItsColumn(new Spot(panel, plug.connector(), plug.cavity()), cell);
    }

    /** True when a cell that may hold anything names a colour: then one in a column of places is the plug's. */
    private boolean isColourElsewhere() {
        return raw.cells().stream()
                .anyMatch(cell -> cell.kind() == ColumnKind.FREE
                        && Colours.among(new Claims(cell.text())).isPresent());
    }

    /** True for a cell that holds a size and nothing else: it is no place, whatever its column. */
    private static boolean isSize(Claims claims) {
        Claims copy = claims.copy();
        return Sizes.read(copy).isPresent() && copy.leftOver().isEmpty();
    }

    /** Where the wire is, if nothing of the cell reads as anything else. */
    private void perhapsPlace(Cell cell, Claims claims) {
        boolean known = Places.isPlace(cell.text().folded());
        boolean other = Polarity.among(claims.copy()).isPresent()
                || Places.afterPreposition(claims.copy()).isPresent();
        if (other && !known) {
            free(cell, claims);
            return;
        }
        placeCell(cell, claims);
        if (!known) {
            where.on(Evidence.BESIDE_UNKNOWN);
        }
    }

    private Optional<Found<String>> inOwnWords(Claims claims, boolean inColumn) {
        return colour == null || role == null
                ? Optional.empty()
                : PlaceInOwnWords.behindColour(claims, inColumn, has(ColumnKind.ROLE));
    }

    private boolean has(ColumnKind kind) {
        return raw.cells().stream().anyMatch(cell -> cell.kind() == kind);
    }

    private void sizeCell(Claims claims) {
        readSize(claims);
        rest(claims);
    }

    private void readSize(Claims claims) {
        Optional<Found<SquareMillimetres>> found = Sizes.read(claims);
        size = size == null ? found.orElse(null) : size;
    }

    /** A cell that may hold anything. */
    private void free(Cell cell, Claims claims) {
        readSize(claims);
        Spot plug = Places.plug(claims);
        saySwitching(cell, claims);
        if (colour == null && !has(ColumnKind.COLOUR)) {
            colour = Colours.among(claims).orElse(null);
            if (colour != null && Colours.count(claims.passage()) > 1) {
                colour = colour.on(Evidence.AMONG_SEVERAL);
            }
        }
        if (behaviour == null && colour != null) {
            behaviour = Polarity.signBehind(claims).map(f -> takenOver(f, cell)).orElse(null);
        }
        if (plug.connector().isEmpty() && (colour != null || has(ColumnKind.COLOUR))) {
            plug = plug.or(new Spot("", Places.plugByLook(claims).orElse(""), ""));
        }
        Optional<Found<String>> place = Places.afterPreposition(claims);
        if (role == null && !has(ColumnKind.ROLE)) {
            Naming named = Naming.of(claims, name);
            name = named.name();
            role = named.role().orElse(null);
        }
        if (place.isEmpty()) {
            place = Places.wholeSegment(claims);
        }
        if (place.isEmpty() && !where.hasPanel()) {
            place = inOwnWords(claims, false);
        }
        where.amongOthers(plug, place.map(f -> takenOver(f, cell)));
        if (role != null && role.evidence() == Evidence.AMONG_OTHERS && Naming.isIn(claims)) {
            role = role.on(Evidence.AMONG_SEVERAL);
        }
        rest(claims);
    }

    /** A column of notes keeps all of its words; where no other column says how the wire switches or where it is, it may. */
    private void noteCell(Cell cell) {
        note(cell.text());
        Claims claims = new Claims(cell.text());
        if (behaviour == null && !has(ColumnKind.POLARITY)) {
            behaviour = switching(claims).map(f -> takenOver(f, cell)).orElse(null);
        }
        strayPlace(claims);
    }

    private void note(Passage note) {
        Claims claims = new Claims(note);
        doubted |= Marks.doubt(claims);
        holdsFor(claims);
        absent |= Marks.absent(claims);
        notes.add(note);
    }

    /** Which side of the wheel, which trim, which years. */
    private void holdsFor(Claims claims) {
        steering = steering.isEmpty() ? Marks.steering(claims) : steering;
        Validity.read(claims).stream().map(Passage::text).forEach(validity::add);
    }

    /** What nobody claimed: words that carry nothing are let go, the others are kept to be shown. */
    private void rest(Claims claims) {
        claims.leftOver().stream()
                .filter(p -> !Roles.isNoise(p.folded()) || SamePlace.isSame(p))
                .forEach(leftOver::add);
    }

    private void headings() {
        for (Passage heading : raw.headings()) {
            Claims claims = new Claims(heading);
            holdsFor(claims);
            doubted |= Marks.doubt(claims);
            Optional<Spot> place = Places.whole(heading);
            if (place.isPresent() && !where.hasPanel()) {
                where.inHeading(place.get(), heading.origin());
            } else if (place.isEmpty()) {
                headingOfSeveral(heading, claims);
            }
        }
    }

    /** A heading that says more than a place: how all below switch, where they are, and what they are for. */
    private void headingOfSeveral(Passage heading, Claims claims) {
        Optional<Found<Behaviour>> switching = switching(claims);
        if (behaviour == null) {
            behaviour = switching.map(EntryReader::takenOver).orElse(null);
        }
        Optional<Found<String>> place = Places.afterPreposition(claims);
        if (place.isEmpty() && Segments.of(heading.folded()).size() > 1) {
            place = Places.wholeSegment(claims);
        }
        if (place.isPresent() && !where.isSaid()) {
            where.inHeading(new Spot(place.get().value(), "", ""), place.get().origin());
        }
        if (role == null) {
            boolean knownName = Word.of(Passage.fold(name)).stream()
                    .filter(word -> word.text().length() > LONGEST_LITTLE_WORD)
                    .allMatch(word -> Roles.isKnown(word.text()) || Places.isWord(word.text()));
            role = Roles.inColumn(claims)
                    .map(f -> f.on(knownName ? Evidence.TAKEN_OVER : Evidence.BESIDE_UNKNOWN))
                    .orElse(null);
        }
    }

    private static <T> Found<T> takenOver(Found<T> found, Cell cell) {
        return cell.takenOver() ? takenOver(found) : found;
    }

    private static <T> Found<T> takenOver(Found<T> found) {
        return found.on(Evidence.TAKEN_OVER);
    }

    private Entry entry() {
        if (behaviour == null && role != null) {
            behaviour = SwitchingByRole.of(role, name).orElse(null);
        }
        Origin origin = raw.cells().stream()
                .filter(c -> !c.takenOver() && !c.text().isBlank())
                .map(c -> c.text().origin())
                .reduce(Origin::through)
                .orElse(new Origin(1, 1, 1, 1));
        return new Entry(
                Naming.readable(name, role),
                answer(Field.ROLE, role),
                answer(Field.COLOUR, colour),
                colour == null ? colourAsWritten : "",
                answer(Field.SIZE, size),
                answer(Field.POLARITY, behaviour),
                where.answer(origin, doubted),
                steering,
                String.join("; ", validity),
                doubted,
                absent && colour == null && behaviour == null,
                notes,
                leftOver,
                origin);
    }

    private <T> Optional<Answer<T>> answer(Field field, @Nullable Found<T> found) {
        return Optional.ofNullable(found).map((Function<Found<T>, Answer<T>>) f -> new Answer<>(
                f.value(), f.evidence(), Sureness.of(field, f.evidence(), doubted), f.origin(), f.written()));
    }
}
