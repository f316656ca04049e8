package org.loomproof.workshop.brief.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.text.Entry.Listing;
import org.loomproof.workshop.brief.text.Entry.Mapping;
import org.loomproof.workshop.brief.text.Entry.Pair;
import org.loomproof.workshop.brief.text.Entry.Scalar;
import org.loomproof.workshop.brief.text.Entry.Spot;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * From YAML events to entries, in one pass and within stated bounds of depth and size. The library's own composer is not used:
 * it descends as deep as the text wants and expands aliases only later, when the harm is done.
 */
final class YamlTree {

    /** The deepest entry of our formats is at 7. */
    static final int DEPTH_LIMIT = 24;

    /** Entries of one file, each alias counted as what it stands for. A sheet of a whole car has about 2000. */
    static final int SIZE_LIMIT = 200_000;

    /** The YAML reader copies a line again and again while it looks ahead: its time grows with the square of the length. */
    static final int LINE_LIMIT = 200_000;

    private static final Phrase NO_HINT = Phrase.of("problem.hint.none");

    private final Problems problems;
    private final Iterator<Event> events;
    private final Map<Anchor, Entry> anchors = new HashMap<>();

    private YamlTree(Problems problems, Iterator<Event> events) {
        this.problems = problems;
        this.events = events;
    }

    /** Thrown and caught in here only: what was found makes going on pointless, and the problem is already noted. */
    private static final class Stop extends Exception {
        private static final long serialVersionUID = 1;

        Stop() {
            super(null, null, false, false);
        }
    }

    /** The one document of the text; empty when a problem was noted that leaves nothing to read. */
    static Optional<Entry> read(SourceText source, Problems problems) {
        if (hasLongLine(source, problems)) {
            return Optional.empty();
        }
        LoadSettings settings = LoadSettings.builder()
                .setLabel(source.name())
                .setCodePointLimit(Integer.MAX_VALUE)
                .build();
        try {
            return new YamlTree(
                            problems,
                            new Parse(settings).parseString(source.text()).iterator())
                    .document();
        } catch (Stop e) {
            return Optional.empty();
        } catch (MarkedYamlEngineException e) {
            Optional<Mark> mark = e.getProblemMark().or(e::getContextMark);
            notYaml(problems, mark.map(YamlTree::spot), source.text(), e.getProblem());
            return Optional.empty();
        } catch (ReaderException e) {
            Spot spot = spotAt(source.text(), e.getPosition());
            problems.add(
                    new Place(problems.file(), spot.line(), spot.column(), ""),
                    ProblemKind.NOT_YAML,
                    String.format(Locale.ROOT, "U+%04X", e.getCodePoint()),
                    Phrase.of("problem.wanted.printable"));
            return Optional.empty();
        } catch (YamlEngineException e) {
            notYaml(problems, Optional.empty(), source.text(), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private static boolean hasLongLine(SourceText source, Problems problems) {
        int line = 0;
        for (String text : (Iterable<String>) source.text().lines()::iterator) {
            line++;
            if (text.length() > LINE_LIMIT) {
                problems.add(
                        new Place(problems.file(), line, 1, ""),
                        ProblemKind.FILE_TOO_LARGE,
                        text.substring(0, 100),
                        Phrase.of("problem.wanted.shorter-line", Integer.toString(LINE_LIMIT)));
                return true;
            }
        }
        return false;
    }

    private static void notYaml(Problems problems, Optional<Spot> spot, String text, String said) {
        String line = spot.map(s -> lineOf(text, s.line())).orElse("");
        Phrase hint = line.stripTrailing().contains("\t")
                ? Phrase.of("problem.hint.tab")
                : Phrase.of("problem.hint.yaml", said.lines().findFirst().orElse(""));
        Place place = spot.map(s -> new Place(problems.file(), s.line(), s.column(), ""))
                .orElse(Place.file(problems.file()));
        problems.add(place, ProblemKind.NOT_YAML, line, Phrase.of("problem.wanted.yaml"), hint);
    }

    private static Spot spotAt(String text, int index) {
        String before = text.substring(0, Math.min(index, text.length()));
        int lineStart = before.lastIndexOf('\n') + 1;
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        return new Spot(line, before.codePointCount(lineStart, before.length()) + 1);
    }

    private static String lineOf(String text, int line) {
        return text.lines().skip(line - 1L).findFirst().orElse("");
    }

    private Optional<Entry> document() throws Stop {
        Optional<Entry> first = Optional.empty();
        while (events.hasNext()) {
            Event event = events.next();
            switch (event.getEventId()) {
                case StreamStart, StreamEnd, DocumentEnd, Comment -> {}
                case DocumentStart -> {
                    if (first.isPresent()) {
                        throw stop(
                                spot(event),
                                ProblemKind.NOT_YAML,
                                "---",
                                Phrase.of("problem.wanted.one-document"),
                                Phrase.of("problem.hint.one-document"));
                    }
                }
                case Alias, Scalar, SequenceStart, MappingStart -> first = Optional.of(entry(event, 1));
                case SequenceEnd, MappingEnd -> throw new IllegalStateException("an end without a start: " + event);
            }
        }
        if (first.isEmpty() || (first.get() instanceof Scalar only && only.isNotSaid())) {
            problems.add(
                    Place.file(problems.file()),
                    ProblemKind.WRONG_FORMAT,
                    "",
                    Phrase.of("problem.wanted.content"),
                    Phrase.of("problem.hint.empty-file"));
            return Optional.empty();
        }
        return first;
    }

    private Entry entry(Event event, int depth) throws Stop {
        Spot at = spot(event);
        if (depth > DEPTH_LIMIT) {
            throw stop(
                    at,
                    ProblemKind.TOO_DEEP,
                    "",
                    Phrase.of("problem.wanted.less-deep", Integer.toString(DEPTH_LIMIT)),
                    NO_HINT);
        }
        if (event instanceof AliasEvent alias) {
            return aliased(alias, at);
        }
        Entry entry = switch (event) {
            case ScalarEvent scalar -> new Scalar(at, scalar.getValue(), scalar.getScalarStyle() == ScalarStyle.PLAIN);
            case SequenceStartEvent start -> listing(at, depth);
            case MappingStartEvent start -> mapping(at, depth);
            default -> throw new IllegalStateException("no entry starts with " + event);
        };
        tag(event)
                .ifPresent(
                        tag -> problems.add(place(at), ProblemKind.NOT_YAML, tag, Phrase.of("problem.wanted.no-tag")));
        ((NodeEvent) event).getAnchor().ifPresent(anchor -> anchors.put(anchor, entry));
        return entry;
    }

    private static Optional<String> tag(Event event) {
        return switch (event) {
            case ScalarEvent scalar -> scalar.getTag();
            case SequenceStartEvent start -> start.getTag();
            case MappingStartEvent start -> start.getTag();
            default -> Optional.empty();
        };
    }

    /** The entry an alias stands for; an anchor around the alias itself is not finished yet and so is unknown. */
    private Entry aliased(AliasEvent alias, Spot at) throws Stop {
        Entry target = alias.getAnchor().map(anchors::get).orElse(null);
        if (target == null) {
            throw stop(
                    at,
                    ProblemKind.TOO_MANY_ALIASES,
                    "*" + alias.getAlias(),
                    Phrase.of("problem.wanted.known-anchor"),
                    NO_HINT);
        }
        return target;
    }

    private Listing listing(Spot at, int depth) throws Stop {
        List<Entry> items = new ArrayList<>();
        int size = 1;
        for (Event event = events.next(); event.getEventId() != Event.ID.SequenceEnd; event = events.next()) {
            Entry item = entry(event, depth + 1);
            size = grown(size, item, at);
            items.add(item);
        }
        return new Listing(at, items, size);
    }

    private Mapping mapping(Spot at, int depth) throws Stop {
        List<Pair> pairs = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        int size = 1;
        for (Event event = events.next(); event.getEventId() != Event.ID.MappingEnd; event = events.next()) {
            Entry key = entry(event, depth + 1);
            Entry value = entry(events.next(), depth + 1);
            size = grown(size, value, at);
            if (!(key instanceof Scalar name)) {
                problems.add(place(key.at()), ProblemKind.WRONG_SHAPE, "", Phrase.of("problem.wanted.key"));
            } else if (keys.add(name.text())) {
                pairs.add(new Pair(name, value));
            } else {
                problems.add(
                        place(name.at()),
                        ProblemKind.DUPLICATE_KEY,
                        name.text(),
                        Phrase.of("problem.wanted.key-once"),
                        Phrase.of("problem.hint.duplicate-key"));
            }
        }
        return new Mapping(at, pairs, size);
    }

    private int grown(int size, Entry by, Spot at) throws Stop {
        int grown = size + by.size();
        if (grown > SIZE_LIMIT) {
            ProblemKind kind = anchors.isEmpty() ? ProblemKind.FILE_TOO_LARGE : ProblemKind.TOO_MANY_ALIASES;
            throw stop(at, kind, "", Phrase.of("problem.wanted.fewer-entries", Integer.toString(SIZE_LIMIT)), NO_HINT);
        }
        return grown;
    }

    private Stop stop(Spot at, ProblemKind kind, String found, Phrase wanted, Phrase hint) {
        problems.add(place(at), kind, found, wanted, hint);
        return new Stop();
    }

    private Place place(Spot at) {
        return new Place(problems.file(), at.line(), at.column(), "");
    }

    private static Spot spot(Event event) {
        return event.getStartMark().map(YamlTree::spot).orElse(new Spot(1, 1));
    }

    private static Spot spot(Mark mark) {
        return new Spot(mark.getLine() + 1, mark.getColumn() + 1);
    }
}
