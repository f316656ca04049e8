package org.loomproof.intake.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Spot;

/** "Same plug" and "mismo lugar" are where the circuit before it is found. */
final class SamePlace {

    private static final Pattern SAME = Pattern.compile(
            "^\\W*(?:there(?: too| as well| also)?|also there|ebenda|dort auch|ebenfalls dort|auch dort|(?:ahi|alli)(?: tambien)?|tambien (?:ahi|alli)|la aussi|aussi la)\\W*$|"
                    + "^\\W*(?:in |at |at the |the |im |am |en |en el |en la |el |la |au |a la |le |dans le |dans la )?"
                    + "(?:same|gleiche[nrsm]?|selbe[nrsm]?|derselben?|demselben|mism[oa]s?|meme)"
                    + "\\s+(?:\\w+\\s+)?(?:place|spot|plug|connector|loom|harness|panel|location|bundle|side|area|stelle|ort|stecker|platz|lugar|sitio|conector|mazo|panel|endroit|connecteur|faisceau|fiche|prise)?\\W*$");

    private SamePlace() {}

    /** The entries with such places put out in full; where none was said before, nothing is taken. */
    static List<Entry> followed(List<Entry> entries) {
        List<Entry> followed = new ArrayList<>();
        Optional<Spot> before = Optional.empty();
        for (Entry entry : entries) {
            Optional<Passage> pointer =
                    entry.leftOver().stream().filter(SamePlace::isSame).findFirst();
            boolean panel = entry.spot().filter(a -> isSame(a.value().panel())).isPresent();
            Entry now = entry;
            // A heading's place is that of many; who says "same plug" means the one before.
            boolean own = entry.spot()
                    .filter(a -> a.evidence() != Evidence.TAKEN_OVER)
                    .isPresent();
            if (before.isPresent() && (panel || (!own && pointer.isPresent()))) {
                Spot spot = entry.spot().filter(a -> panel).map(Answer::value).orElse(Spot.NOT_SAID);
                String written = panel ? spot.panel() : pointer.orElseThrow().text();
                Spot meant = new Spot("", spot.connector(), spot.cavity()).or(before.get());
                now = entry.withSpot(new Answer<>(
                        meant,
                        Evidence.TAKEN_OVER,
                        Sureness.of(Field.PLACE, Evidence.TAKEN_OVER, entry.doubted()),
                        panel
                                ? entry.spot().orElseThrow().origin()
                                : pointer.orElseThrow().origin(),
                        written));
                now = panel ? now : now.understood(pointer.orElseThrow());
            }
            followed.add(now);
            before = now.spot().isPresent() ? now.spot().map(Answer::value) : before;
        }
        return followed;
    }

    /** True when the text only points to the place before. */
    static boolean isSame(Passage text) {
        return isSame(text.text());
    }

    private static boolean isSame(String text) {
        return SAME.matcher(Passage.fold(text)).matches();
    }
}
