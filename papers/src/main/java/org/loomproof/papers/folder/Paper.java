package org.loomproof.papers.folder;

import java.util.regex.Pattern;

/**
 * One file of the folder.
 *
 * @param name the file's name, without any folder
 * @param text what it holds, written as UTF-8
 */
public record Paper(String name, String text) {

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9.-]*");

    public Paper {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("not a plain file name: " + name);
        }
    }
}
