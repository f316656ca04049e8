package org.loomproof.pages.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.fact.HoldsFor;
import org.loomproof.intake.field.Lexicon;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.door.Role;
import org.loomproof.workshop.words.Messages;

class PageWordsTest {

    private static final Pattern KEY = Pattern.compile("\"((?:pages|event)\\.[a-z0-9.-]*[a-z0-9])\"");

    private final Messages english = Messages.english();
    private final Messages spanish = Messages.in(Locale.of("es"));

    @Test
    void everyKeyOfATemplateOrAPageHasAMessage() throws IOException {
        Set<String> used = new TreeSet<>();
        for (Path folder : List.of(Path.of("src/main/jte"), Path.of("src/main/java"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Matcher matcher = KEY.matcher(Files.readString(file));
                    while (matcher.find()) {
                        used.add(matcher.group(1));
                    }
                }
            }
        }
        used.removeAll(Set.of("pages.css", "pages.js", "bay.css", "bay.js", "finished.css")); // files, not words
        assertThat(used).as("the pattern still fits the templates").hasSizeGreaterThan(80);
        assertThat(used.stream().filter(key -> !english.knows(key))).isEmpty();
    }

    @Test
    void everyWordOfThePagesIsSaidInSpanishToo() {
        assertThat(english.keys().stream()
                        .filter(key -> key.startsWith("pages.") || key.startsWith("event."))
                        .filter(key -> !isSaidOtherwise(key)))
                .as("said in Spanish as in English")
                .isEmpty();
    }

    /** Words that are the same in both languages. */
    private static final Set<String> SAME = Set.of(
            "pages.answer.no",
            "pages.bay.at.thing",
            "pages.choice.manual",
            "pages.choice.no",
            "pages.thing.radio",
            "pages.notes.fact-is.manual",
            "pages.notes.fact-is.gas",
            "pages.notes.fact-is.hatchback",
            "pages.notes.fact-is.pickup");

    private boolean isSaidOtherwise(String key) {
        return SAME.contains(key) || !english.findPattern(key).equals(spanish.findPattern(key));
    }

    @Test
    void everyStepAndRoleHasItsWords() {
        List<String> keys = Stream.concat(
                        Arrays.stream(JobStep.values())
                                .flatMap(step -> Stream.of("pages.step.", "pages.next.", "pages.waits.")
                                        .map(p -> p + step.word())),
                        Arrays.stream(Role.values()).map(role -> "pages.role." + role.word()))
                .collect(Collectors.toList());
        CallPages.WISHES.forEach(wish -> keys.add("pages.wish." + wish.word()));
        CheckInPages.TRIED.forEach(thing -> keys.add("pages.thing." + thing));
        assertThat(keys.stream().filter(key -> !english.knows(key))).isEmpty();
    }

    @Test
    void everyFactThatNotesMayAskForHasItsWords() {
        List<String> keys = Lexicon.read(HoldsFor.class, "facts.words").listIdeas().stream()
                .filter(idea -> idea.indexOf('=') > 0)
                .map(idea -> idea.substring(idea.lastIndexOf(' ') + 1))
                .flatMap(fact -> Stream.of(
                        "pages.notes.fact." + fact.substring(0, fact.indexOf('=')),
                        "pages.notes.fact-is." + fact.substring(fact.indexOf('=') + 1)))
                .distinct()
                .toList();
        assertThat(keys).hasSizeGreaterThan(20);
        assertThat(keys.stream().filter(key -> !english.knows(key))).isEmpty();
    }
}
