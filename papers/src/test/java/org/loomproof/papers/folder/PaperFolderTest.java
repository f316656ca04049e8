package org.loomproof.papers.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.workshop.words.Messages;

class PaperFolderTest {

    private static final List<Paper> PAPERS = List.of(new Paper("plan.yaml", "plan"), new Paper("card.html", "card Ω"));

    @TempDir
    Path temp;

    private Path folder = Path.of("unset");

    @BeforeEach
    void nameAFolder() {
        folder = temp.resolve("made for it").resolve("papers");
    }

    private static List<String> list(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    private static String refusal(FolderOutcome outcome) {
        return switch (outcome) {
            case FolderOutcome.Written w -> throw new AssertionError("was written");
            case FolderOutcome.Refused r -> Messages.english().text(r.because());
        };
    }

    @Test
    void papersAreWrittenIntoANewFolderAndNothingElseIsLeft() throws IOException {
        assertThat(PaperFolder.write(folder, PAPERS)).isEqualTo(new FolderOutcome.Written(folder));
        assertThat(list(folder)).containsExactly(PaperFolder.MARK, "card.html", "plan.yaml");
        assertThat(folder.resolve("card.html")).hasContent("card Ω");
        assertThat(list(folder.resolveSibling(""))).containsExactly("papers");
    }

    @Test
    void ourOwnEarlierFolderIsReplacedAsAWhole() throws IOException {
        PaperFolder.write(folder, PAPERS);
        assertThat(PaperFolder.write(folder, List.of(new Paper("plan.yaml", "new"))))
                .isInstanceOf(FolderOutcome.Written.class);
        assertThat(list(folder)).containsExactly(PaperFolder.MARK, "plan.yaml");
        assertThat(list(folder.resolveSibling(""))).containsExactly("papers");
    }

    @Test
    void anEmptyFolderIsFilled() throws IOException {
        Files.createDirectories(folder);
        assertThat(PaperFolder.write(folder, PAPERS)).isInstanceOf(FolderOutcome.Written.class);
    }

    @Test
    void aFolderWithSomebodysFilesIsLeftAlone() throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("photo.jpg"), "mine");
        assertThat(refusal(PaperFolder.write(folder, PAPERS))).contains("holds files that are not ours");
        assertThat(list(folder)).containsExactly("photo.jpg");
        assertThat(list(folder.resolveSibling(""))).containsExactly("papers");
    }

    @Test
    void aFileAddedToOurFolderKeepsItFromBeingReplaced() throws IOException {
        PaperFolder.write(folder, PAPERS);
        Files.writeString(folder.resolve("notes.txt"), "mine");
        assertThat(refusal(PaperFolder.write(folder, PAPERS))).contains("not ours");
        assertThat(folder.resolve("notes.txt")).hasContent("mine");
        assertThat(folder.resolve("plan.yaml")).hasContent("plan");
    }

    @Test
    void aMarkThatIsNotOursDoesNotCount() throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(PaperFolder.MARK), "something else\nletter.txt\n");
        Files.writeString(folder.resolve("letter.txt"), "mine");
        assertThat(refusal(PaperFolder.write(folder, PAPERS))).contains("not ours");
        assertThat(folder.resolve("letter.txt")).hasContent("mine");
    }

    @Test
    void aMarkCannotNameFilesOutsideItsFolder() throws IOException {
        Path outside = temp.resolve("outside.txt");
        Files.writeString(outside, "mine");
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(PaperFolder.MARK), "papers of loomproof\n../../outside.txt\n");
        assertThat(PaperFolder.write(folder, PAPERS)).isInstanceOf(FolderOutcome.Written.class);
        assertThat(outside).hasContent("mine");
    }

    @Test
    void aFileInThePlaceOfTheFolderIsLeftAlone() throws IOException {
        Files.createDirectories(folder.resolveSibling(""));
        Files.writeString(folder, "mine");
        assertThat(refusal(PaperFolder.write(folder, PAPERS))).contains("not ours");
        assertThat(folder).hasContent("mine");
    }

    @Test
    void aLinkInThePlaceOfTheFolderIsLeftAlone() throws IOException {
        Path elsewhere = Files.createDirectories(temp.resolve("elsewhere"));
        Files.createDirectories(folder.resolveSibling(""));
        Files.createSymbolicLink(folder, elsewhere);
        assertThat(refusal(PaperFolder.write(folder, PAPERS))).contains("not ours");
        assertThat(list(elsewhere)).isEmpty();
    }

    @Test
    void aParentThatIsAFileIsToldAndNothingIsWritten() throws IOException {
        Files.writeString(temp.resolve("made for it"), "mine");
        assertThat(refusal(PaperFolder.write(folder, PAPERS))).contains("cannot be written");
        assertThat(list(temp)).containsExactly("made for it");
    }

    @Test
    void theTopOfTheFileSystemIsRefused() {
        assertThat(refusal(PaperFolder.write(temp.getRoot(), PAPERS))).contains("top of the file system");
    }

    @Test
    void twoPapersOfOneNameAreOurOwnFault() {
        Paper paper = PAPERS.getFirst();
        assertThatThrownBy(() -> PaperFolder.write(folder, List.of(paper, paper)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void manyAtOnceLeaveOneWholeSet() throws Exception {
        int runs = 24;
        List<Future<FolderOutcome>> outcomes = new ArrayList<>();
        try (ExecutorService pool = Executors.newFixedThreadPool(8)) {
            for (int i = 0; i < runs; i++) {
                String text = "run " + i;
                outcomes.add(pool.submit(() -> PaperFolder.write(
                        folder,
                        List.of(new Paper("a.txt", text), new Paper("b.txt", text), new Paper("c.txt", text)))));
            }
        }
        for (Future<FolderOutcome> outcome : outcomes) {
            assertThat(outcome.get()).isInstanceOf(FolderOutcome.Written.class);
        }
        assertThat(list(folder)).containsExactly(PaperFolder.MARK, "a.txt", "b.txt", "c.txt");
        String one = Files.readString(folder.resolve("a.txt"));
        assertThat(folder.resolve("b.txt")).hasContent(one);
        assertThat(folder.resolve("c.txt")).hasContent(one);
        assertThat(list(folder.resolveSibling(""))).containsExactly("papers");
    }
}
