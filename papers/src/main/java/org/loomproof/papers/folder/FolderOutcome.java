package org.loomproof.papers.folder;

import java.nio.file.Path;
import org.loomproof.workshop.words.Phrase;

/** What became of an attempt to write the papers. */
public sealed interface FolderOutcome {

    /** All of them are in place. */
    record Written(Path folder) implements FolderOutcome {}

    /**
     * Nothing was written, and what was there is untouched.
     *
     * @param folder where they should have gone
     * @param because why not
     */
    record Refused(Path folder, Phrase because) implements FolderOutcome {}
}
