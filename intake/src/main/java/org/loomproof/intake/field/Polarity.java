package org.loomproof.intake.field;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/**
 * Reads how a wire switches: poles, what a wire rests at, resistances and voltages. What is found is a row of terms; a pole
 * next to "at rest" is where the wire rests, any other pole is where it goes.
 */
public final class Polarity {

    private static final Lexicon WORDS = Lexicon.read(Polarity.class, "polarity.words");
    private static final Pattern OHMS = Pattern.compile(
            "(?<![\\w.])(\\d{1,5}(?:[.,]\\d{1,3})?)\\s*(k?)\\s*(?:ohms?|ohmios|\u03c9)|(?<![\\w.])(\\d{1,3}(?:[.,]\\d{1,3})?)(k)\\b");
    private static final Pattern VOLTS = Pattern.compile(
            "[+(]?\\s?(?<![\\w.,])(\\d{1,2}(?:[.,]\\d)?)\\s*(?:v|volts?|voltios)\\b(?:\\s?\\(?\\+\\)?)?|[+]\\s?12\\b(?!\\s*(?:mm|awg))");
    private static final Pattern SIGN_IN_BRACKETS = Pattern.compile("[(\\[]\\s*([+-])\\s*[)\\]]");
    private static final Pattern SIGN_ALONE = Pattern.compile(
            "(?:^|(?<=[\\s,;:|/]))([+]|-(?!>))(?=$|\\s*[,;|/:=>)]|\\.$|\\.\\s|\\s+(?:at|to|when|on|out|output|input|in|pulse|trigger|ausgang|eingang|sortie|entree|salida|entrada|bei|al|en|au|a)\\b)");
    private static final Pattern SIGN_IN_COLUMN = Pattern.compile("([+-])");
    private static final Pattern SIGN_BEHIND =
            Pattern.compile("(?:^|(?<=" + Claims.CLAIMED + ")\\s)\\s*(\\+)(?=\\s|$)");
    private static final double SUPPLY_FROM_VOLTS = 11;

    private Polarity() {}

    private enum Sort {
        NEGATIVE,
        POSITIVE,
        OPEN,
        AT_REST,
        WHEN_ACTIVE,
        REVERSING,
        STEPPED,
        VOLTAGE,
        DATA,
        TOWARD,
        /** Belongs to a pole right before it, and else to what the wire is for. */
        TRIGGER,
        NOISE
    }

    /** One thing said; {@code amount} is ohms or volts. {@code bare} is a word that is also a role: ground, data. */
    private record Term(Sort sort, double amount, int from, int to, boolean bare) {}

    /** How the wire of a column of polarities switches. */
    public static Optional<Found<Behaviour>> inColumn(Claims claims) {
        return read(claims, true);
    }

    /** How a wire switches, said among other words. */
    public static Optional<Found<Behaviour>> among(Claims claims) {
        return read(claims, false);
    }

    /**
     * A plus that stands by itself at the head of a cell or right behind what is claimed: {@code black/red + column}. A minus there may
     * part words as well, or be a bullet.
     */
    public static Optional<Found<Behaviour>> signBehind(Claims claims) {
        Matcher sign = SIGN_BEHIND.matcher(claims.open());
        if (!sign.find()) {
            return Optional.empty();
        }
        Found<Behaviour> found = new Found<>(
                Behaviour.of(Behaviour.Kind.POSITIVE, new Level.Supply()),
                Evidence.AMONG_OTHERS,
                claims.origin(sign.start(1), sign.end(1)),
                "+");
        claims.claim(sign.start(1), sign.end(1));
        return Optional.of(found);
    }

    /** Whether the text says how a wire switches. */
    public static boolean isSaid(Passage text) {
        return among(new Claims(text)).isPresent();
    }

    private static Optional<Found<Behaviour>> read(Claims claims, boolean column) {
        List<Term> terms = terms(claims, column);
        Optional<Behaviour> behaviour = behaviour(terms, column);
        if (behaviour.isEmpty()) {
            return Optional.empty();
        }
        List<Term> used =
                terms.stream().filter(t -> column || !isIgnored(t, terms)).toList();
        Evidence best = column ? Evidence.IN_ITS_COLUMN : Evidence.AMONG_OTHERS;
        int from = used.stream().mapToInt(Term::from).min().orElse(0);
        int to = used.stream().mapToInt(Term::to).max().orElse(0);
        Found<Behaviour> found =
                new Found<>(behaviour.get(), weakened(best, used), claims.origin(from, to), claims.written(from, to));
        used.forEach(term -> claims.claim(term.from(), term.to()));
        return Optional.of(found);
    }

    /** Two ways of switching in one text may be two circuits' on one wire; a wire of which only the rest is said goes to the other pole as a rule only. */
    private static Evidence weakened(Evidence best, List<Term> used) {
        List<Term> figures = used.stream()
                .filter(t -> t.sort() == Sort.STEPPED && t.amount() > 0)
                .toList();
        boolean otherGround = used.stream()
                .anyMatch(t -> t.sort() == Sort.NEGATIVE && figures.stream().noneMatch(f -> isBeside(f, t)));
        if (!figures.isEmpty() && otherGround) {
            return Evidence.AMONG_SEVERAL;
        }
        List<Term> levels = used.stream().filter(t -> level(t).isPresent()).toList();
        boolean onlyRest = !levels.isEmpty()
                && levels.stream().allMatch(t -> t.sort() != Sort.VOLTAGE || t.amount() >= SUPPLY_FROM_VOLTS)
                && levels.stream().allMatch(t -> isAtRest(used, used.indexOf(t)))
                && !has(used, Sort.REVERSING);
        return onlyRest ? Evidence.HALF_NAMED : best;
    }

    /** Among other words, "ground" and "data" may be what the wire is for: they count with a word of movement or time. */
    private static boolean isIgnored(Term term, List<Term> terms) {
        if (term.sort() == Sort.TRIGGER) {
            return terms.stream().noneMatch(o -> level(o).isPresent() && isRightBehind(term, o));
        }
        if (!term.bare()) {
            return term.sort() == Sort.NOISE && terms.stream().noneMatch(o -> isBeside(o, term));
        }
        return terms.stream()
                .noneMatch(o -> isBeside(o, term)
                        && (o.sort() == Sort.TOWARD || o.sort() == Sort.AT_REST || o.sort() == Sort.WHEN_ACTIVE));
    }

    private static boolean isRightBehind(Term term, Term pole) {
        int gap = term.from() - pole.to();
        return gap >= 0 && gap <= 2;
    }

    private static boolean isBeside(Term one, Term other) {
        int gap = Math.max(one.from() - other.to(), other.from() - one.to());
        return !one.equals(other) && gap >= 0 && gap <= 12;
    }

    private static Optional<Behaviour> behaviour(List<Term> all, boolean column) {
        List<Term> terms = all.stream()
                .filter(t -> t.sort() != Sort.NOISE
                        && t.sort() != Sort.TRIGGER
                        && t.sort() != Sort.TOWARD
                        && (column || !isIgnored(t, all)))
                .toList();
        boolean stepped = terms.stream().anyMatch(t -> t.sort() == Sort.STEPPED && t.amount() > 0);
        if (stepped) {
            // "1k to ground" is one way of switching and not two.
            terms = terms.stream().filter(t -> t.sort() != Sort.NEGATIVE).toList();
        }
        Optional<Level> rest = Optional.empty();
        Optional<Level> active = Optional.empty();
        for (int i = 0; i < terms.size(); i++) {
            Optional<Level> level = level(terms.get(i));
            if (level.isEmpty()) {
                continue;
            }
            boolean atRest = isAtRest(terms, i);
            if (atRest && rest.isEmpty()) {
                rest = level;
            } else if (!atRest && active.isEmpty()) {
                active = level;
            } else if (!atRest && !active.equals(level)) {
                return eitherPole(terms, rest);
            }
        }
        return composed(terms, rest, active);
    }

    /** A wire that is said to show both poles: a motor leg when it says so, otherwise nothing that can be relied on. */
    private static Optional<Behaviour> eitherPole(List<Term> terms, Optional<Level> rest) {
        return has(terms, Sort.REVERSING)
                ? Optional.of(new Behaviour(Behaviour.Kind.REVERSING, rest, Optional.of(new Level.Reversing())))
                : Optional.empty();
    }

    private static Optional<Behaviour> composed(List<Term> terms, Optional<Level> rest, Optional<Level> active) {
        if (has(terms, Sort.REVERSING)) {
            return Optional.of(
                    new Behaviour(Behaviour.Kind.REVERSING, rest.or(() -> active), Optional.of(new Level.Reversing())));
        }
        Optional<Level> ohms = active.filter(Level.Resistance.class::isInstance);
        if (has(terms, Sort.STEPPED) || ohms.isPresent()) {
            return Optional.of(new Behaviour(Behaviour.Kind.STEPPED, rest, ohms));
        }
        if (has(terms, Sort.DATA)) {
            return Optional.of(
                    new Behaviour(Behaviour.Kind.DATA, Optional.of(new Level.Data()), Optional.of(new Level.Data())));
        }
        if (active.isPresent()) {
            return switch (active.get()) {
                case Level.Ground ground -> Optional.of(new Behaviour(Behaviour.Kind.NEGATIVE, rest, active));
                case Level.Supply supply -> Optional.of(new Behaviour(Behaviour.Kind.POSITIVE, rest, active));
                case Level.Voltage volts ->
                    // A module's own voltage is what the wire rests at; it goes to the body when something happens.
                    Optional.of(new Behaviour(Behaviour.Kind.MODULE_VOLTAGE, active, Optional.of(new Level.Ground())));
                case Level.Open open -> Optional.empty();
                case Level.Resistance r -> Optional.empty();
                case Level.Reversing r -> Optional.empty();
                case Level.Data d -> Optional.empty();
            };
        }
        return rest.map(Polarity::fromRest);
    }

    /** Only the rest is said: the wire goes to the other pole. */
    private static Behaviour fromRest(Level rest) {
        return switch (rest) {
            case Level.Ground ground ->
                Behaviour.of(Behaviour.Kind.POSITIVE, new Level.Supply()).restingAt(rest);
            case Level.Voltage volts ->
                Behaviour.of(Behaviour.Kind.MODULE_VOLTAGE, new Level.Ground()).restingAt(rest);
            default -> Behaviour.of(Behaviour.Kind.NEGATIVE, new Level.Ground()).restingAt(rest);
        };
    }

    private static boolean has(List<Term> terms, Sort sort) {
        return terms.stream().anyMatch(t -> t.sort() == sort);
    }

    /** "+ at rest, - to lock" or "rests at 12 V, ground to lock": the word of time beside the pole decides. */
    private static boolean isAtRest(List<Term> terms, int at) {
        boolean restBehind = at + 1 < terms.size() && terms.get(at + 1).sort() == Sort.AT_REST;
        boolean activeBehind = at + 1 < terms.size() && terms.get(at + 1).sort() == Sort.WHEN_ACTIVE;
        boolean restBefore = at > 0
                && terms.get(at - 1).sort() == Sort.AT_REST
                && (at == 1 || level(terms.get(at - 2)).isEmpty());
        return (restBehind && !restBefore) || (restBefore && !activeBehind);
    }

    private static Optional<Level> level(Term term) {
        return switch (term.sort()) {
            case NEGATIVE -> Optional.of(new Level.Ground());
            case POSITIVE -> Optional.of(new Level.Supply());
            case OPEN -> Optional.of(new Level.Open());
            case VOLTAGE ->
                term.amount() >= SUPPLY_FROM_VOLTS
                        ? Optional.of(new Level.Supply())
                        : Optional.of(
                                term.amount() < 0.5 ? new Level.Ground() : new Level.Voltage(new Volts(term.amount())));
            case STEPPED ->
                term.amount() > 0 ? Optional.of(new Level.Resistance(new Ohms(term.amount()))) : Optional.empty();
            case AT_REST, WHEN_ACTIVE, REVERSING, DATA, TOWARD, TRIGGER, NOISE -> Optional.empty();
        };
    }

    private static List<Term> terms(Claims claims, boolean column) {
        String text = claims.open();
        List<Term> terms = new ArrayList<>();
        StringBuilder left = new StringBuilder(text);
        if (claims.hasNumber()) {
            figures(OHMS.matcher(text), Sort.STEPPED, left, terms);
            figures(VOLTS.matcher(left.toString()), Sort.VOLTAGE, left, terms);
        }
        signs(SIGN_IN_BRACKETS, left, terms);
        signs(column ? SIGN_IN_COLUMN : SIGN_ALONE, left, terms);
        for (Hit hit : terms.isEmpty() ? claims.hits(WORDS) : WORDS.find(Word.of(left.toString()))) {
            if (!hit.isOff() || column) {
                terms.add(term(hit, text));
            }
        }
        terms.sort(Comparator.comparingInt(Term::from));
        return terms;
    }

    private static void figures(Matcher matcher, Sort sort, StringBuilder left, List<Term> terms) {
        while (matcher.find()) {
            terms.add(new Term(sort, amount(matcher), matcher.start(), matcher.end(), false));
            blot(left, matcher.start(), matcher.end());
        }
    }

    private static double amount(Matcher matcher) {
        String digits = matcher.group(1);
        boolean thousands = matcher.groupCount() >= 2 && "k".equals(matcher.group(2));
        if (digits == null && matcher.groupCount() >= 3) {
            digits = matcher.group(3);
            thousands = true;
        }
        double amount = digits == null ? 12 : Double.parseDouble(digits.replace(',', '.'));
        return thousands ? amount * 1000 : amount;
    }

    private static void signs(Pattern pattern, StringBuilder left, List<Term> terms) {
        Matcher matcher = pattern.matcher(left.toString());
        while (matcher.find()) {
            Sort sort = matcher.group(1).equals("+") ? Sort.POSITIVE : Sort.NEGATIVE;
            terms.add(new Term(sort, 0, matcher.start(), matcher.end(), false));
            blot(left, matcher.start(), matcher.end());
        }
    }

    private static void blot(StringBuilder text, int from, int to) {
        for (int i = from; i < to; i++) {
            text.setCharAt(i, Claims.CLAIMED);
        }
    }

    /** "…, plus, …" is a pole; "red plus white" and "Batterie plus" are not. */
    private static boolean isBetweenMarks(Hit hit, String text) {
        String before = text.substring(0, hit.from()).stripTrailing();
        String behind = text.substring(hit.to()).stripLeading();
        return !before.isEmpty() && ",;|-(".indexOf(before.charAt(before.length() - 1)) >= 0 && isEnd(behind);
    }

    /** "plus, blower" in a cell of remarks. */
    private static boolean isFirst(Hit hit, String text) {
        return text.substring(0, hit.from()).isBlank()
                && isEnd(text.substring(hit.to()).stripLeading());
    }

    /** True when nothing stands there, or a mark. */
    private static boolean isEnd(String behind) {
        return behind.isEmpty() || ",;|.)".indexOf(behind.charAt(0)) >= 0;
    }

    private static Term term(Hit hit, String text) {
        String idea = hit.ideas().getFirst();
        String written = text.substring(hit.from(), hit.to());
        boolean bare = switch (idea) {
            case "negative" ->
                !written.startsWith("neg")
                        && !written.startsWith("minus")
                        && !written.startsWith("moins")
                        && written.indexOf(' ') < 0;
            case "positive" ->
                !written.startsWith("pos")
                        && !written.startsWith("12")
                        && !isBetweenMarks(hit, text)
                        && !isFirst(hit, text);
            case "data" -> !isBetweenMarks(hit, text);
            case "open" -> true;
            default -> false;
        };
        Sort sort = switch (idea) {
            case "negative" -> Sort.NEGATIVE;
            case "positive" -> Sort.POSITIVE;
            case "reversing" -> Sort.REVERSING;
            case "stepped" -> Sort.STEPPED;
            case "data" -> Sort.DATA;
            case "open" -> Sort.OPEN;
            case "at-rest" -> Sort.AT_REST;
            case "when-active" -> Sort.WHEN_ACTIVE;
            case "toward" -> Sort.TOWARD;
            case "trigger" -> Sort.TRIGGER;
            default -> Sort.NOISE;
        };
        return new Term(sort, 0, hit.from(), hit.to(), bare);
    }
}
