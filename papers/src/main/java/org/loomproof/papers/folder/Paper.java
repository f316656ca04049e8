package org.loomproof.papers.folder;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.regex.Pattern;

/** One file of the folder: its name, without any folder, and what it holds. */
public final class Paper {

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9.-]*");

    private final String name;
    private final byte[] bytes;

    /** A paper of any kind. */
    public Paper(String name, byte[] bytes) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("not a plain file name: " + name);
        }
        this.name = name;
        this.bytes = bytes.clone();
    }

    /** A paper of text, written as UTF-8. */
    public Paper(String name, String text) {
        this(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The file's name. */
    public String name() {
        return name;
    }

    /** What it holds. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** What it holds, where that is text. */
    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Paper paper && name.equals(paper.name) && Arrays.equals(bytes, paper.bytes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, Arrays.hashCode(bytes));
    }

    @Override
    public String toString() {
        return name + " of " + bytes.length + " bytes";
    }
}
