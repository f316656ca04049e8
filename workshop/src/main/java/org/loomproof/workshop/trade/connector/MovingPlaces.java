package org.loomproof.workshop.trade.connector;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** Which places in a car move against its body, by the words with which people name them. Common practice, no published source. */
public final class MovingPlaces {

    private static final List<Row> ROWS =
            Table.read(MovingPlaces.class, "moving-places.csv").listRows();
    private static final List<Pattern> DOORS = listWords("door");
    private static final List<Pattern> BODY = listWords("body");

    private MovingPlaces() {}

    /** True when the words name a door, a lid or a hatch, and nothing of the body beside it. */
    public static boolean isOnDoor(String place) {
        String rest = place.toLowerCase(Locale.ROOT);
        boolean onDoor = false;
        for (Pattern door : DOORS) {
            onDoor |= door.matcher(rest).find();
            rest = door.matcher(rest).replaceAll(" ");
        }
        String besides = rest;
        return onDoor && BODY.stream().noneMatch(body -> body.matcher(besides).find());
    }

    private static List<Pattern> listWords(String holds) {
        return ROWS.stream()
                .filter(row -> row.text("holds").equals(holds))
                .map(row -> Pattern.compile(
                        "(?<!\\p{L})" + Pattern.quote(row.text("words")) + "(?!\\p{L})",
                        Pattern.UNICODE_CHARACTER_CLASS))
                .toList();
    }
}
