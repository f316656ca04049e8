package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Marks;
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Validity;
import org.loomproof.intake.role.Roles;

/** Tells lines that stand over others, and which of them are still in force. */
final class Heading {

    private static final int LONGEST_WORDS = 8;
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern MARKS_AROUND = Pattern.compile("^[#=*_\\[<-]+\\s*|\\s*[#=*_\\]>:-]+$");

    /** The number of a section: {@code 3. Driver kick panel}. */
    private static final Pattern NUMBER =
            Pattern.compile("^\\(?(?:\\d{1,2}(?:\\.\\d{1,2})?|[A-Za-z]|[ivxIVX]{2,4})[.)]\\s+(?=\\p{L})");

    private static final Pattern MARKED_UP = Pattern.compile("#+\\s.*|=+\\s.*=+|\\*\\*.*\\*\\*|\\[.*\\]|--+\\s.*--+");

    private Heading() {}

    /** What sort of thing a heading says; a later heading of the same sort ends it. */
    private enum Sort {
        STEERING,
        VALIDITY,
        PLACE,
        GROUP
    }

    /** The heading's text when the line is one: it ends in a colon, is marked up, or is nothing but a place. */
    static Optional<Passage> of(Passage line) {
        String text = line.text().strip();
        String bare = NUMBER.matcher(MARKS_AROUND.matcher(text).replaceAll("")).replaceFirst("");
        if (bare.isEmpty() || BLANKS.splitAsStream(bare).count() > LONGEST_WORDS) {
            return Optional.empty();
        }
        Passage slice = slice(line, bare);
        boolean heads = text.endsWith(":") || MARKED_UP.matcher(text).matches() || isPlace(slice) || isSide(slice);
        return heads && Colours.among(new Claims(slice)).isEmpty() ? Optional.of(slice) : Optional.empty();
    }

    private static boolean isPlace(Passage text) {
        return Places.isPlug(text.folded()) || (Places.whole(text).isPresent() && !Roles.names(text.folded()));
    }

    /** A title that tells the vehicle's side among other things stands over no variant. */
    private static boolean isSide(Passage text) {
        return text.text().indexOf(',') < 0 && !Marks.steering(new Claims(text)).isEmpty();
    }

    private static Passage slice(Passage line, String bare) {
        int from = line.text().indexOf(bare);
        return line.slice(from, from + bare.length());
    }

    /** The headings in force when a new one is met. */
    static List<Passage> under(List<Passage> before, Passage heading) {
        Sort sort = sort(heading);
        List<Passage> inForce = new ArrayList<>();
        for (Passage other : before) {
            if (sort(other) != sort) {
                inForce.add(other);
            }
        }
        inForce.add(heading);
        return inForce;
    }

    private static Sort sort(Passage heading) {
        if (!Marks.steering(new Claims(heading)).isEmpty()) {
            return Sort.STEERING;
        }
        if (Validity.isBound(heading)) {
            return Sort.VALIDITY;
        }
        return Places.isPlug(heading.folded()) || Places.whole(heading).isPresent() ? Sort.PLACE : Sort.GROUP;
    }
}
