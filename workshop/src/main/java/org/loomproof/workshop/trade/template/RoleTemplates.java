package org.loomproof.workshop.trade.template;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The usual paths by role, from {@code role-templates.yaml}. */
public final class RoleTemplates {
    private static final String FILE = "role-templates.yaml";
    private static final List<RoleTemplate> ALL = read(RoleTemplates.class, FILE);

    private RoleTemplates() {}

    /** All of them, in the order of the file. */
    public static List<RoleTemplate> listTemplates() {
        return ALL;
    }

    /** The template for a role that switches so; levels in the words of the sheet, {@code voltage} for a number of volts. */
    public static Optional<RoleTemplate> find(String role, String rest, String active) {
        return ALL.stream()
                .filter(t -> t.role().equals(role)
                        && t.rest().contains(rest)
                        && t.active().equals(active))
                .findFirst();
    }

    /** Templates from another data file of the same format, beside a class. */
    public static List<RoleTemplate> read(Class<?> beside, String file) {
        try (InputStream in = beside.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("data file " + file + " is missing");
            }
            List<RoleTemplate> templates = new ArrayList<>();
            Map<String, String> sections = new LinkedHashMap<>();
            for (String line : new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .toList()) {
                if (line.equals("---")) {
                    addTemplate(sections, templates);
                } else if (!line.startsWith("#")) {
                    addLine(line, sections);
                }
            }
            addTemplate(sections, templates);
            return List.copyOf(templates);
        } catch (IOException e) {
            throw new UncheckedIOException("data file " + file + " cannot be read", e);
        }
    }

    /** A line at the margin opens a section; every other belongs to the last one opened. */
    private static void addLine(String line, Map<String, String> sections) {
        boolean opens = !line.startsWith(" ");
        String key = opens
                ? line.substring(0, line.indexOf(':'))
                : List.copyOf(sections.keySet()).getLast();
        String text = opens ? line.substring(key.length() + 1) : line;
        boolean isBareOpening = opens && text.isEmpty() && !key.equals("path");
        sections.merge(key, isBareOpening ? "" : text + "\n", String::concat);
    }

    private static void addTemplate(Map<String, String> sections, List<RoleTemplate> templates) {
        if (!sections.isEmpty()) {
            templates.add(new RoleTemplate(
                    section(sections, "role").strip(),
                    Set.copyOf(words(section(sections, "rest"))),
                    section(sections, "active").strip(),
                    words(sections.getOrDefault("key-at", "")),
                    section(sections, "path"),
                    sections.getOrDefault("branches", ""),
                    sections.getOrDefault("each-follower", "")));
            sections.clear();
        }
    }

    private static String section(Map<String, String> sections, String key) {
        String text = sections.get(key);
        if (text == null) {
            throw new IllegalStateException(FILE + ": a template without " + key + ": " + sections);
        }
        return text;
    }

    /** The words of a list in brackets, or of a single word. */
    private static List<String> words(String text) {
        String inner = text.strip().replace("[", "").replace("]", "");
        return inner.isEmpty() ? List.of() : List.of(inner.split(", *", -1));
    }
}
