package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Validity;
import org.loomproof.intake.role.Roles;
import org.loomproof.workshop.trade.colour.WireColour;

/** Parts prose into sentences, and a sentence that speaks of several circuits into one part each. */
final class Clauses {

    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[a-z0-9)\u00df-\u024f][.!?])\\s+(?=[\\p{Lu}+])");
    private static final Pattern JOINT = Pattern.compile(
            "[,;]|\\b(?:and|und|y|et|while|whilst|whereas|but|aber|sowie|pero|mais|puis|wahrend|mientras)\\b");
    private static final Pattern SEVERAL =
            Pattern.compile("\\b(?:are|legs|wires|lines|sind|leitungen|kabel|son|cables|sont|fils)\\b");
    private static final Pattern AND = Pattern.compile("\\s*\\b(?:and|und|y|et)\\b\\s*");

    /** What is said behind it holds for every circuit of the sentence. */
    private static final Pattern OF_ALL = Pattern.compile(
            "\\b(?:both|all|each|beide[rns]?|alle|jeweils|ambos|ambas|todos|todas|tous|toutes|les deux|chacun)\\b");

    private static final Pattern OF_ALL_OF_A_LIST = Pattern.compile(
            "\\b(?:all|everything|every wire|colou?rs|alles?|alle farben|farben|todos?|todas?|colores|tous|toutes?|tout|couleurs)\\b");

    private static final Pattern FOR = Pattern.compile("\\s+(?:for|fur|pour|para)\\s*$");

    private static final Pattern TWO = Pattern.compile("\\b(?:two|zwei|dos|deux)\\b");

    private Clauses() {}

    /** What a clause says of all circuits of its sentence: "…, both negative, in the left kick panel". */
    static Optional<Passage> ofAll(Passage clause) {
        Matcher all = OF_ALL.matcher(clause.folded());
        return all.find() && all.end() < clause.length()
                ? Optional.of(clause.slice(all.end(), clause.length()))
                : Optional.empty();
    }

    /** Where all circuits of a list are, in a line that speaks of them all: "stalk for all but the brake", "colours at column harness". */
    static Optional<Passage> placeOfAll(Passage line) {
        Matcher all = OF_ALL_OF_A_LIST.matcher(line.folded());
        if (!all.find() || Roles.names(line.folded().substring(0, all.start()))) {
            return Optional.empty();
        }
        Passage before = line.slice(0, all.start());
        Matcher lead = FOR.matcher(before.folded());
        if (lead.find() && Places.isPlace(before.folded().substring(0, lead.start()))) {
            return Optional.of(before.slice(0, lead.start()));
        }
        return Places.afterPreposition(new Claims(line))
                .or(() -> Places.wholeSegment(new Claims(line)))
                .map(found -> part(line, found.value()));
    }

    private static Passage part(Passage text, String part) {
        int from = text.text().indexOf(part);
        return text.slice(from, from + part.length());
    }

    /** True when a text names a circuit, by all of its words or by those before its first colour: what follows may say where it is. */
    static boolean names(Passage text) {
        Claims claims = new Claims(text);
        Colours.among(claims);
        int colour = Math.max(0, claims.open().indexOf(Claims.CLAIMED));
        Claims unbound = new Claims(text);
        boolean bound = !Validity.read(unbound).isEmpty();
        return Roles.names(text.folded())
                || Roles.names(text.folded().substring(0, colour))
                || (bound && Roles.names(unbound.open()));
    }

    /** The place with which a sentence begins, before it names a circuit or a colour: it holds for all that follows. */
    static Optional<Passage> leadingPlace(Passage sentence) {
        Claims claims = new Claims(sentence);
        Colours.among(claims);
        int colour = claims.open().indexOf(Claims.CLAIMED);
        Passage head = sentence.slice(0, colour < 0 ? 0 : colour);
        return head.isBlank()
                ? Optional.empty()
                : Places.afterPreposition(new Claims(head)).map(found -> part(head, found.value()));
    }

    static List<Passage> sentences(Passage text) {
        return parted(text, SENTENCE_END);
    }

    /** The parts of a sentence that each name a circuit with a colour of its own; one part when there is no more than one. */
    static List<Passage> of(Passage sentence) {
        List<Passage> parts = new ArrayList<>();
        Matcher joint = JOINT.matcher(sentence.folded());
        int from = 0;
        int start = 0;
        while (joint.find()) {
            Passage before = sentence.slice(start, joint.start());
            Passage behind = sentence.slice(joint.end(), sentence.length());
            if (isWhole(before) && beginsWhole(behind)) {
                parts.add(before);
                start = joint.end();
            }
            from = joint.end();
        }
        parts.add(sentence.slice(start, sentence.length()));
        List<Passage> all = new ArrayList<>();
        parts.forEach(p -> all.addAll(several(p)));
        return from == 0 && all.isEmpty() ? List.of(sentence) : all;
    }

    private static boolean isWhole(Passage part) {
        return Roles.names(part.folded()) && Colours.among(new Claims(part)).isPresent();
    }

    /** True when a circuit is named before the next joint, and a colour somewhere behind it. */
    private static boolean beginsWhole(Passage rest) {
        Matcher joint = JOINT.matcher(rest.folded());
        int end = joint.find() ? joint.start() : rest.length();
        return Roles.names(rest.slice(0, end).folded())
                && Colours.among(new Claims(rest)).isPresent();
    }

    /** "The legs are blue and green" speaks of two wires, not of one with a stripe, and so do two colours of two hues each. */
    private static List<Passage> several(Passage part) {
        boolean plural = SEVERAL.matcher(part.folded()).find();
        Claims claims = new Claims(part);
        Optional<Found<WireColour>> colour = Colours.among(claims);
        if (colour.isEmpty() || !(plural || isTwoHued(colour.get()))) {
            return List.of(part);
        }
        if (!names(part)) {
            return List.of(part);
        }
        int from = claims.open().indexOf(Claims.CLAIMED);
        int to = claims.open().lastIndexOf(Claims.CLAIMED) + 1;
        // Within one reading of two hues, or between two readings.
        Matcher and = AND.matcher(part.folded()).region(from, to);
        boolean within = and.find();
        if (within && !plural) {
            return List.of(part);
        }
        if (!within) {
            and = AND.matcher(part.folded()).region(to, part.length());
            if (!and.lookingAt()) {
                return List.of(part);
            }
            Optional<Found<WireColour>> second = Colours.among(claims);
            if (second.isEmpty()
                    || claims.open().charAt(and.end()) != Claims.CLAIMED
                    || !(plural || isTwoHued(second.get()))) {
                return List.of(part);
            }
            to = claims.open().lastIndexOf(Claims.CLAIMED) + 1;
        }
        // The first of "two starter wires" is the starter's, and only the other one the second.
        Matcher two = TWO.matcher(part.folded()).region(0, from);
        List<Passage> firsts = two.find()
                ? List.of(part.slice(0, two.start()), part.slice(two.end(), and.start()), part.slice(to, part.length()))
                : List.of(part.slice(0, and.start()), part.slice(to, part.length()));
        Passage first = Passage.join(firsts);
        Passage second = Passage.join(List.of(part.slice(0, from), part.slice(and.end(), part.length())));
        return List.of(first, second);
    }

    private static boolean isTwoHued(Found<WireColour> colour) {
        return colour.value().letters().indexOf('/') > 0;
    }

    private static List<Passage> parted(Passage text, Pattern between) {
        List<Passage> parts = new ArrayList<>();
        Matcher matcher = between.matcher(text.text());
        int from = 0;
        while (matcher.find()) {
            parts.add(text.slice(from, matcher.start()));
            from = matcher.end();
        }
        parts.add(text.slice(from, text.length()));
        return parts;
    }
}
