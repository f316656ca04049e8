package org.loomproof.workshop.meter.shock;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.QuantityText;
import org.loomproof.workshop.quantity.QuantityText.Outcome;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads a file of blows: lines {@code setting,mass,height,noticed}, such as {@code 3,200 g,12 cm,yes}. Two lines
 * without a setting say what is asked for: the strongest harmless knock ({@code must-not}) and the weakest blow that matters
 * ({@code must}).
 */
public final class BlowsReader {

    private static final List<String> HEADER = List.of("setting", "mass", "height", "noticed");
    private static final Pattern MASS = Pattern.compile("(\\d{1,6}(?:[.,]\\d{1,6})?)\\s*(kg|g)");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,9}(?:\\.\\d{1,6})?");
    private static final double MOST_SETTING = 1e6;
    private static final double MOST_KILOGRAMS = 20;
    private static final double MOST_METRES = 3;

    /** What is said of a blow. */
    private enum Said {
        YES,
        NO,
        MUST,
        MUST_NOT
    }

    /** A line whose cells could be read. */
    private record Given(long line, Said said, OptionalDouble setting, Knock knock) {

        Blow blow() {
            return new Blow(setting.orElseThrow(), knock, said == Said.YES);
        }
    }

    private final CsvLines lines;
    private final List<Given> given = new ArrayList<>();

    /** Settings with a blow that could not be read: what follows it cannot be judged. */
    private final Set<Double> spoilt = new HashSet<>();

    private BlowsReader(String file) {
        this.lines = new CsvLines(file, HEADER);
    }

    /** The series in the file, or every problem in it. */
    public static Checked<Series> read(Path file) {
        return CsvLines.read(file, BlowsReader::read);
    }

    /** The series in the text, or every problem in it. */
    public static Checked<Series> read(SourceText text) {
        return new BlowsReader(text.name()).series(text.text());
    }

    private Checked<Series> series(String text) {
        lines.of(text).forEach(this::take);
        Optional<Given> harmless = asked(Said.MUST_NOT);
        Optional<Given> matters = asked(Said.MUST);
        if (harmless.isPresent() && matters.isPresent()) {
            checkOrder(harmless.get(), matters.get());
        }
        List<Given> blows = given.stream().filter(g -> g.setting().isPresent()).toList();
        checkSteps(blows.stream()
                .filter(blow -> !spoilt.contains(blow.setting().orElseThrow()))
                .toList());
        return lines.problems().isEmpty()
                ? new Checked.Good<>(new Series(
                        blows.stream().map(Given::blow).toList(),
                        harmless.orElseThrow().knock(),
                        matters.orElseThrow().knock()))
                : new Checked.Bad<>(lines.problems().inOrder());
    }

    private void take(CsvLines.Line line) {
        List<String> cells = line.cells();
        Optional<Said> said = lines.word(Said.class, cells.get(3), line.number());
        Optional<Double> mass = mass(cells.get(1), line.number());
        Optional<Metres> height = height(cells.get(2), line.number());
        OptionalDouble setting = said.isEmpty() ? OptionalDouble.empty() : setting(cells.getFirst(), said.get(), line);
        if (said.isPresent() && mass.isPresent() && height.isPresent()) {
            given.add(new Given(line.number(), said.get(), setting, new Knock(mass.get(), height.get())));
        } else if (NUMBER.matcher(point(cells.getFirst())).matches()) {
            spoilt.add(Double.parseDouble(point(cells.getFirst())));
        }
    }

    private OptionalDouble setting(String text, Said said, CsvLines.Line line) {
        boolean isBlow = said == Said.YES || said == Said.NO;
        if (!isBlow) {
            if (!text.isEmpty()) {
                note(line.number(), ProblemKind.CONTRADICTION, text, Phrase.of("problem.wanted.no-setting"));
            }
            return OptionalDouble.empty();
        }
        if (text.isEmpty()) {
            note(line.number(), ProblemKind.MISSING, text, Phrase.of("problem.wanted.setting"));
            return OptionalDouble.empty();
        }
        return lines.decimal(point(text), "setting", line.number())
                .map(value -> OptionalDouble.of(within(value.doubleValue(), MOST_SETTING, text, line.number())))
                .orElse(OptionalDouble.empty());
    }

    private Optional<Double> mass(String text, long line) {
        Matcher mass = MASS.matcher(text);
        if (!mass.matches()) {
            note(line, ProblemKind.WRONG_UNIT, text, Phrase.of("problem.wanted.mass"));
            return Optional.empty();
        }
        double kilograms =
                Double.parseDouble(point(mass.group(1))) / (mass.group(2).equals("g") ? 1000 : 1);
        return Optional.of(within(kilograms, MOST_KILOGRAMS, text, line)).filter(value -> value > 0);
    }

    private Optional<Metres> height(String text, long line) {
        if (QuantityText.read(point(text), Unit.METRES) instanceof Outcome.Read<Metres>(var range)
                && range.low().equals(range.high())) {
            within(range.low().value(), MOST_METRES, text, line);
            return Optional.of(range.low());
        }
        note(line, ProblemKind.WRONG_UNIT, text, Phrase.of("problem.wanted.height"));
        return Optional.empty();
    }

    /** A cell has one figure: a comma in it is a decimal comma. */
    private static String point(String text) {
        return text.replace(',', '.');
    }

    /** The value; it is noted when it is nothing or more than anyone means. */
    private double within(double value, double most, String text, long line) {
        boolean isNothing = value <= 0 && most != MOST_SETTING;
        if (isNothing || value > most) {
            note(line, ProblemKind.OUT_OF_RANGE, text, Phrase.of("problem.wanted.sensible-blow"));
        }
        return value;
    }

    private Optional<Given> asked(Said said) {
        List<Given> all = given.stream().filter(g -> g.said() == said).toList();
        if (all.isEmpty()) {
            lines.problems()
                    .add(
                            Place.file(lines.problems().file()),
                            ProblemKind.MISSING,
                            "",
                            Phrase.of("problem.wanted.blow-line", Words.of(said)));
        }
        all.stream()
                .skip(1)
                .forEach(again -> note(
                        again.line(),
                        ProblemKind.DUPLICATE_KEY,
                        Words.of(said),
                        Phrase.of("problem.wanted.named-once")));
        return all.stream().findFirst();
    }

    private void checkOrder(Given harmless, Given matters) {
        if (matters.knock().joules() <= harmless.knock().joules()) {
            note(
                    matters.line(),
                    ProblemKind.CONTRADICTION,
                    joules(matters.knock().joules()),
                    Phrase.of(
                            "problem.wanted.stronger-blow",
                            joules(harmless.knock().joules())));
        }
    }

    private void checkSteps(List<Given> blows) {
        ShockSetting.offTheMethod(blows.stream().map(Given::blow).toList())
                .forEach((index, wanted) -> note(
                        blows.get(index).line(),
                        ProblemKind.CONTRADICTION,
                        joules(blows.get(index).knock().joules()),
                        Phrase.of("problem.wanted.blow-of", joules(wanted))));
    }

    private static String joules(double joules) {
        return String.format(Locale.ROOT, "%.3g J", joules);
    }

    private void note(long line, ProblemKind kind, String found, Phrase wanted) {
        lines.problems().add(lines.place(line, ""), kind, found, wanted);
    }
}
