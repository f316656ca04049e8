package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Polarity;
import org.loomproof.intake.field.Sizes;
import org.loomproof.intake.role.Roles;

/** Tells what columns without a name hold, by what their cells read as. */
final class ColumnVote {

    private static final int MOST_ROWS = 200;
    private static final int MOST_WORDS_OF_A_PLACE = 5;
    private static final double UNEXPLAINED_SHARE = 0.6;

    private ColumnVote() {}

    /** One test a kind, in the order in which kinds are given away, with the share of cells that must pass. */
    private record Ballot(ColumnKind kind, double share, Predicate<Passage> fits) {}

    private static final List<Ballot> BALLOTS = List.of(
            new Ballot(ColumnKind.COLOUR, 0.4, ColumnVote::isColour),
            new Ballot(
                    ColumnKind.CAVITY,
                    0.7,
                    c -> c.folded().matches("(?!\\d{1,2}v$)[a-z]?\\d{1,3}[a-z]?|pin\\s*\\d{1,3}")),
            new Ballot(
                    ColumnKind.CONNECTOR,
                    0.7,
                    c -> c.folded().matches("[cxjt]\\d{1,4}[a-z]?|(connector|plug|stecker)\\s*\\w{1,4}")),
            new Ballot(ColumnKind.SIZE, 0.7, c -> Sizes.read(new Claims(c)).isPresent()),
            new Ballot(ColumnKind.POLARITY, 0.4, ColumnVote::isPolarity),
            new Ballot(ColumnKind.ROLE, 0.4, c -> Roles.names(c.folded()) && !Places.isPlace(c.folded())),
            new Ballot(ColumnKind.ROLE, 0.25, c -> Roles.inColumn(new Claims(c)).isPresent()),
            new Ballot(ColumnKind.PLACE, 0.3, ColumnVote::holdsPlace));

    /** The kinds of all columns: the given ones, and for the others what their cells say. */
    static List<ColumnKind> kinds(List<Optional<ColumnKind>> given, List<List<Passage>> rows) {
        int width =
                Math.max(given.size(), rows.stream().mapToInt(List::size).max().orElse(0));
        List<ColumnKind> kinds = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            kinds.add(i < given.size() ? given.get(i).orElse(ColumnKind.FREE) : ColumnKind.FREE);
        }
        List<List<Passage>> looked = rows.stream().limit(MOST_ROWS).toList();
        for (Ballot ballot : BALLOTS) {
            if (!kinds.contains(ballot.kind())) {
                IntStream.range(0, width)
                        .filter(i -> kinds.get(i) == ColumnKind.FREE
                                && (i >= given.size() || given.get(i).isEmpty()))
                        .boxed()
                        .filter(i -> ballot.kind() != ColumnKind.ROLE || mayName(i, looked))
                        .filter(i -> share(i, looked, ballot.fits()) >= ballot.share())
                        .max(Comparator.comparingDouble((Integer i) -> weight(ballot, i, looked))
                                .thenComparing(Comparator.reverseOrder()))
                        .ifPresent(i -> kinds.set(i, ballot.kind()));
            }
        }
        perhapsPlace(kinds, given, looked);
        return kinds;
    }

    /** Without a column of places, the first one behind the colours whose cells are a few words that nothing else explains. */
    private static void perhapsPlace(
            List<ColumnKind> kinds, List<Optional<ColumnKind>> given, List<List<Passage>> looked) {
        int colour = kinds.indexOf(ColumnKind.COLOUR);
        if (colour < 0 || !given.isEmpty() || kinds.contains(ColumnKind.PLACE)) {
            return;
        }
        IntStream.range(colour + 1, kinds.size())
                .filter(i -> kinds.get(i) == ColumnKind.FREE
                        && share(i, looked, ColumnVote::isUnexplained) >= UNEXPLAINED_SHARE)
                .findFirst()
                .ifPresent(i -> kinds.set(i, ColumnKind.PERHAPS_PLACE));
    }

    /**
     * What a cell of a voted column holds: what the column does, unless the cell is none of that and plainly something else. A hand
     * that types columns leaves some out.
     */
    static ColumnKind kind(ColumnKind voted, int column, List<Passage> row) {
        Passage cell = row.get(column);
        boolean stands = switch (voted) {
            case COLOUR ->
                Colours.inColumn(new Claims(cell)).isPresent()
                        || !(isPolarity(cell) || holdsPlace(cell) || hasColourBeside(column, row));
            case POLARITY -> Polarity.inColumn(new Claims(cell)).isPresent() || !(isColour(cell) || holdsPlace(cell));
            case CAVITY, CONNECTOR, SIZE, PLACE, PERHAPS_PLACE -> !isPolarity(cell);
            case ROLE, NOTE, FREE, PLACE_OF_ALL -> true;
        };
        if (stands) {
            return voted;
        }
        // Of poles only data is never a use: "data only" is read as its column's word, any other among the rest of its
        // cell.
        boolean isData = Polarity.inColumn(new Claims(cell))
                .filter(f -> f.value().kind() == Behaviour.Kind.DATA)
                .isPresent();
        return isData && isPolarity(cell) ? ColumnKind.POLARITY : ColumnKind.FREE;
    }

    private static boolean hasColour(Passage cell) {
        return Colours.among(new Claims(cell)).isPresent();
    }

    private static boolean hasColourBeside(int column, List<Passage> row) {
        return IntStream.range(0, row.size()).anyMatch(i -> i != column && hasColour(row.get(i)));
    }

    private static boolean isUnexplained(Passage cell) {
        return cell.folded().matches("[\\s\\w.'-]*[a-z]{3}[\\s\\w.'-]*")
                && cell.text().strip().split("\\s+", -1).length <= MOST_WORDS_OF_A_PLACE
                && !Roles.names(cell.folded())
                && Polarity.inColumn(new Claims(cell)).isEmpty()
                && Colours.among(new Claims(cell)).isEmpty();
    }

    /** Names stand in the first column, or in most rows: what few rows have further on is said of one of them. */
    private static boolean mayName(int column, List<List<Passage>> rows) {
        return column == 0 || cells(column, rows).size() * 2 >= rows.size();
    }

    /** Names are in every row, so the column with most of them holds them; of any other field a few rows may be all that say it. */
    private static double weight(Ballot ballot, int column, List<List<Passage>> rows) {
        return ballot.kind() == ColumnKind.ROLE
                ? votes(column, rows, ballot.fits())
                : share(column, rows, ballot.fits());
    }

    private static long votes(int column, List<List<Passage>> rows, Predicate<Passage> fits) {
        return cells(column, rows).stream().filter(fits).count();
    }

    private static double share(int column, List<List<Passage>> rows, Predicate<Passage> fits) {
        int cells = cells(column, rows).size();
        return cells == 0 ? 0 : votes(column, rows, fits) / (double) cells;
    }

    private static List<Passage> cells(int column, List<List<Passage>> rows) {
        return rows.stream()
                .filter(r -> r.size() > column && !r.get(column).isBlank())
                .map(r -> r.get(column))
                .toList();
    }

    /** True when the cell is a colour and little else. */
    static boolean isColour(Passage cell) {
        Claims claims = new Claims(cell);
        Sizes.read(claims);
        return Colours.inColumn(claims).isPresent() && rest(claims) <= 8 && !Roles.names(cell.folded());
    }

    private static boolean isPolarity(Passage cell) {
        Claims claims = new Claims(cell);
        return Polarity.inColumn(claims).isPresent()
                && rest(claims) <= 6
                && claims.leftOver().stream()
                        .noneMatch(
                                p -> Roles.names(p.folded()) || p.text().chars().anyMatch(Character::isDigit));
    }

    private static boolean holdsPlace(Passage cell) {
        Claims claims = new Claims(cell);
        return Places.plug(claims).isSaid()
                || Places.wholeSegment(claims).isPresent()
                || Places.afterPreposition(claims).isPresent();
    }

    private static int rest(Claims claims) {
        return claims.leftOver().stream().mapToInt(Passage::length).sum();
    }
}
