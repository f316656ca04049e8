package org.loomproof.papers.folder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.workshop.words.Phrase;

/**
 * Writes a folder of papers, all of them or none.
 *
 * <p>They are written into a new folder beside the wanted one, and moved into place when the last byte is on the disk.
 * Each folder of ours carries a small file that lists what we put there. A folder without that file, or with anything in
 * it that the file does not list, belongs to somebody else and is left alone. Two at once do not mix: each has a folder of
 * its own to write in, and the later one replaces the earlier one as a whole.
 */
public final class PaperFolder {

    /** The file by which a folder of ours is known: one line of title, then one file name a line. */
    public static final String MARK = ".loomproof-papers";

    /** How often another run may get in between before we say so. */
    private static final int MOST_TRIES = 50;

    private static final String MARK_TITLE = "papers of loomproof";

    private PaperFolder() {}

    /**
     * Puts the papers into the folder, which is made when it is not there, its parents included.
     *
     * @throws IllegalArgumentException when two papers share a name
     */
    public static FolderOutcome write(Path folder, List<Paper> papers) {
        Path target = folder.toAbsolutePath().normalize();
        checkNames(papers);
        Path parent = target.getParent();
        if (parent == null) {
            return new FolderOutcome.Refused(folder, Phrase.of("folder.is-root", folder.toString()));
        }
        try {
            Files.createDirectories(parent);
            Path fresh = Files.createDirectory(parent.resolve(
                    "." + target.getFileName() + "-" + ProcessHandle.current().pid() + "-" + System.nanoTime()));
            try {
                if (isSomebodyElses(target)) {
                    return new FolderOutcome.Refused(folder, Phrase.of("folder.not-ours", folder.toString()));
                }
                fill(fresh, papers);
                return moveIntoPlace(fresh, target)
                        ? new FolderOutcome.Written(folder)
                        : new FolderOutcome.Refused(folder, Phrase.of("folder.not-ours", folder.toString()));
            } finally {
                removeOurs(fresh);
            }
        } catch (AccessDeniedException e) {
            return new FolderOutcome.Refused(folder, Phrase.of("folder.not-allowed", folder.toString()));
        } catch (FileSystemException e) {
            String reason = e.getReason() == null ? e.getClass().getSimpleName() : e.getReason();
            return new FolderOutcome.Refused(folder, Phrase.of("folder.cannot-write", folder.toString(), reason));
        } catch (IOException e) {
            return new FolderOutcome.Refused(
                    folder, Phrase.of("folder.cannot-write", folder.toString(), String.valueOf(e.getMessage())));
        }
    }

    private static void checkNames(List<Paper> papers) {
        Set<String> names = new HashSet<>();
        for (Paper paper : papers) {
            if (!names.add(paper.name())) {
                throw new IllegalArgumentException("two papers are called " + paper.name());
            }
        }
    }

    /**
     * True when something is there that we did not make, or that has been added to. Another run may swap the folder while we
     * look, so that the list of one and the mark of another are compared: only what was the same folder throughout counts.
     */
    private static boolean isSomebodyElses(Path target) throws IOException {
        for (int i = 0; i < MOST_TRIES; i++) {
            Optional<Object> before = identity(target);
            boolean foreign = looksForeign(target);
            if (!foreign || before.equals(identity(target))) {
                return foreign;
            }
        }
        return true;
    }

    private static Optional<Object> identity(Path target) throws IOException {
        try {
            return Optional.ofNullable(
                    Files.readAttributes(target, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                            .fileKey());
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    private static boolean looksForeign(Path target) throws IOException {
        if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        if (!Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        try {
            List<Path> entries = list(target);
            return !entries.isEmpty() && !listOurs(target).containsAll(entries);
        } catch (NoSuchFileException e) {
            return false; // another run took it away a moment ago
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.toList();
        }
    }

    /** What the folder's mark says is ours, the mark included; nothing when there is no mark of ours. */
    private static Set<Path> listOurs(Path folder) throws IOException {
        Path mark = folder.resolve(MARK);
        if (!Files.isRegularFile(mark, LinkOption.NOFOLLOW_LINKS)) {
            return Set.of();
        }
        List<String> lines = new String(Files.readAllBytes(mark), StandardCharsets.UTF_8)
                .lines()
                .toList();
        if (lines.isEmpty() || !lines.getFirst().equals(MARK_TITLE)) {
            return Set.of();
        }
        Set<Path> ours = new HashSet<>();
        ours.add(mark);
        for (String name : lines.subList(1, lines.size())) {
            Path file = folder.resolve(name).normalize();
            if (folder.equals(file.getParent())) {
                ours.add(file);
            }
        }
        return ours;
    }

    private static void fill(Path fresh, List<Paper> papers) throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add(MARK_TITLE);
        for (Paper paper : papers) {
            lines.add(paper.name());
        }
        Files.writeString(fresh.resolve(MARK), String.join("\n", lines) + "\n");
        for (Paper paper : papers) {
            Files.write(fresh.resolve(paper.name()), paper.bytes());
        }
    }

    /** False when somebody else's files turned up there meanwhile. */
    private static boolean moveIntoPlace(Path fresh, Path target) throws IOException {
        for (int i = 0; i < MOST_TRIES; i++) {
            if (isSomebodyElses(target)) {
                return false;
            }
            Path old = fresh.resolveSibling(fresh.getFileName() + "-old");
            moveAway(target, old);
            try {
                Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
                removeOurs(old);
                return true;
            } catch (FileSystemException e) {
                if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                    removeOurs(old);
                } else {
                    moveAway(old, target);
                    throw e;
                }
            }
        }
        throw new FileSystemException(target.toString(), null, "others keep writing there");
    }

    private static void moveAway(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (NoSuchFileException e) {
            // Nothing there, or another run took it away a moment ago: either way the place is free.
        }
    }

    /** Takes away a folder of ours; whatever is in it that is not ours keeps it there. */
    private static void removeOurs(Path folder) throws IOException {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        for (Path file : listOurs(folder)) {
            Files.deleteIfExists(file);
        }
        if (list(folder).isEmpty()) {
            Files.delete(folder);
        }
    }
}
