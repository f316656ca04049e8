package org.loomproof.workshop.brief.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Messages;

/** The words of problems: none is missing when it is needed, and none is kept that nobody uses. */
class ProblemWordsTest {

    private static final Pattern KEY = Pattern.compile("\"(problem\\.(?:wanted|hint)\\.[a-z0-9-]+)\"");

    /** The sources of every room, and none of their tests. */
    private static final String MAIN = Path.of("src", "main", "java").toString();

    private static Set<String> usedInCode() throws IOException {
        Set<String> used = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of(".."))) {
            for (Path file : files.filter(
                            f -> f.toString().endsWith(".java") && f.toString().contains(MAIN))
                    .toList()) {
                Matcher keys = KEY.matcher(Files.readString(file));
                while (keys.find()) {
                    used.add(keys.group(1));
                }
            }
        }
        return used;
    }

    @Test
    void everyWordThatIsUsedIsThereAndEveryWordThatIsThereIsUsed() throws IOException {
        Set<String> there = new TreeSet<>(Messages.english().keys());
        there.removeIf(key -> !key.matches("problem\\.(wanted|hint)\\..*"));
        assertThat(there).isEqualTo(usedInCode());
    }

    @Test
    void everyKindOfProblemHasItsWords() {
        assertThat(Messages.english().keys())
                .containsAll(Arrays.stream(ProblemKind.values())
                        .map(kind -> "problem.kind." + kind.id())
                        .toList());
    }
}
