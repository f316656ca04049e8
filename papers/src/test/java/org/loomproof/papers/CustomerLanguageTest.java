package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.folder.Paper;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.words.Messages;

/** What the customer reads, in another language than the shop's. */
class CustomerLanguageTest {

    /** What the customer's papers are made of. */
    private static final Pattern THEIRS = Pattern.compile(
            "(page|article|amount|work|customer|letter|quote|hand-over|override-slip|refuse|possible|term\\.wish|term\\.family)\\..*"
                    + "|(info|caution)\\.drain|caution\\.maker-law-licence|term\\.state\\.(armed|disarmed|override)");

    /** Patterns that are the same in both. */
    private static final Set<String> SAME =
            Set.of("page.title", "amount.pieces", "amount.metres", "article.extra", "quote.so-many", "quote.work-line");

    private static final Pattern HOLE = Pattern.compile("\\{\\d");

    private final Messages english = Messages.english();
    private final Messages spanish = Messages.in(Locale.of("es"));

    @Test
    void everyWordOfTheirsIsSaidInSpanish() {
        List<String> keys = english.keys().stream()
                .filter(key -> THEIRS.matcher(key).matches())
                .toList();
        assertThat(keys).hasSizeGreaterThan(200);
        assertThat(keys)
                .filteredOn(key -> english.findPattern(key).equals(spanish.findPattern(key)))
                .allMatch(SAME::contains);
    }

    @Test
    void nothingIsLeftOutOfASentence() {
        assertThat(english.keys())
                .allSatisfy(key -> assertThat(holes(spanish, key)).as(key).isEqualTo(holes(english, key)));
    }

    private static Set<String> holes(Messages messages, String key) {
        return HOLE.matcher(messages.findPattern(key).orElseThrow())
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void theLanguagesOfferedHaveWords() {
        assertThat(Messages.languages())
                .allSatisfy(
                        language -> assertThat(Messages.in(language).locale()).isEqualTo(language));
    }

    @Test
    void theCustomersPapersAloneAreInTheirLanguage() {
        ShopFacts shop = new ShopFacts(
                Optional.empty(), History.NONE, Optional.empty(), Optional.empty(), List.of(), Locale.of("es"));
        List<Paper> papers = Papers.of(SampleJob.material(), shop, Optional.empty(), english);
        assertThat(text(papers, "hand-over.txt")).contains("Qué se montó", "No se hace: el arranque a distancia");
        assertThat(text(papers, "hand-over.html")).contains("lang=\"es\"", "Cada día");
        assertThat(text(papers, "bench-card.html")).contains("lang=\"en\"").doesNotContain("Vehículo");
    }

    private static String text(List<Paper> papers, String name) {
        return papers.stream()
                .filter(paper -> paper.name().equals(name))
                .findFirst()
                .orElseThrow()
                .text();
    }
}
