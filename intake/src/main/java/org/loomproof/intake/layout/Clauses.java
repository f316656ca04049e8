package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.role.Roles;

/** Parts prose into sentences, and a sentence that speaks of several circuits into one part each. */
final class Clauses {

    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[a-z0-9)\u00df-\u024f][.!?])\\s+(?=[\\p{Lu}+])");
    private static final Pattern JOINT =
            Pattern.compile("[,;]|\\b(?:and|und|y|et|while|but|aber|pero|mais|wahrend|mientras)\\b");
    private static final Pattern SEVERAL =
            Pattern.compile("\\b(?:are|legs|wires|lines|sind|leitungen|kabel|son|cables|sont|fils)\\b");
    private static final Pattern AND = Pattern.compile("\\s*\\b(?:and|und|y|et)\\b\\s*");

    /** What is said behind it holds for every circuit of the sentence. */
    private static final Pattern OF_ALL = Pattern.compile(
            "\\b(?:both|all|each|beide[rns]?|alle|jeweils|ambos|ambas|todos|todas|tous|toutes|les deux|chacun)\\b");

    private Clauses() {}

    /** What a clause says of all circuits of its sentence: "…, both negative, in the left kick panel". */
    static Optional<Passage> ofAll(Passage clause) {
        Matcher all = OF_ALL.matcher(clause.folded());
        return all.find() && all.end() < clause.length()
                ? Optional.of(clause.slice(all.end(), clause.length()))
                : Optional.empty();
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

    /** "The legs are blue and green" speaks of two wires, not of one with a stripe. */
    private static List<Passage> several(Passage part) {
        if (!SEVERAL.matcher(part.folded()).find() || !Roles.names(part.folded())) {
            return List.of(part);
        }
        Claims claims = new Claims(part);
        if (Colours.among(claims).isEmpty()) {
            return List.of(part);
        }
        int from = claims.open().indexOf('\u0001');
        int to = claims.open().lastIndexOf('\u0001') + 1;
        // Within one reading of two hues, or between two readings.
        Matcher and = AND.matcher(part.folded()).region(from, to);
        if (!and.find()) {
            and = AND.matcher(part.folded()).region(to, part.length());
            if (!and.lookingAt()
                    || Colours.among(claims).isEmpty()
                    || claims.open().charAt(and.end()) != '\u0001') {
                return List.of(part);
            }
            to = claims.open().lastIndexOf('\u0001') + 1;
        }
        Passage first = Passage.join(List.of(part.slice(0, and.start()), part.slice(to, part.length())));
        Passage second = Passage.join(List.of(part.slice(0, from), part.slice(and.end(), part.length())));
        return List.of(first, second);
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
