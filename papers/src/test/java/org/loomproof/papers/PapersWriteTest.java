package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.folder.FolderOutcome;
import org.loomproof.papers.folder.PaperFolder;
import org.loomproof.workshop.words.Messages;

class PapersWriteTest {

    /** Left in target/ so that a person can look at the pages of the hand-written job. */
    @Test
    void thePapersOfTheHandWrittenJobAreWritten() {
        Path folder = Path.of("target", "sample-papers");
        var papers = Papers.of(
                SampleJob.brief(),
                SampleJob.plan(),
                SampleProof.proof(),
                "format: loomproof plan 1\n",
                Messages.english());
        assertThat(PaperFolder.write(folder, papers)).isEqualTo(new FolderOutcome.Written(folder));
        assertThat(folder).isDirectoryContaining(p -> p.endsWith("bench-card.html"));
    }
}
