package org.loomproof.workshop.brief.text;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Prints entries as YAML, always the same way: a mapping or a list that fits one line stands on it, everything else is
 * indented. Values are strings, lists and maps of them; a text of several lines is kept to the letter.
 */
public final class YamlPrinter {

    private static final int LINE_WIDTH = 110;
    private static final Pattern PLAIN =
            Pattern.compile("-?[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._+/()°²-]*[\\p{L}\\p{N}._+/()°²-])?");
    /** A first line that is neither blank nor indented: YAML takes the indentation of the block from it. */
    private static final Pattern LITERAL_FIRST = Pattern.compile("[^\\s]");

    private final StringBuilder out = new StringBuilder();

    private YamlPrinter() {}

    /** The entries as a document; empty values are left out. */
    public static String print(Map<String, ?> entries) {
        YamlPrinter printer = new YamlPrinter();
        printer.pairs(entries, 0);
        return printer.out.toString();
    }

    /** A line for the eye only, which a reader of YAML passes over. */
    public static String remark(String line) {
        StringBuilder remark = new StringBuilder("# ");
        line.codePoints().map(c -> c != '\n' && isPrintable(c) ? c : ' ').forEach(remark::appendCodePoint);
        return remark.append('\n').toString();
    }

    private void pairs(Map<String, ?> entries, int indent) {
        boolean first = true;
        for (Map.Entry<String, ?> entry : entries.entrySet()) {
            if (isNothing(entry.getValue())) {
                continue;
            }
            if (!first) {
                out.append(" ".repeat(indent));
            }
            first = false;
            out.append(scalar(entry.getKey())).append(':');
            behindKey(entry.getValue(), indent);
        }
    }

    private void behindKey(Object value, int indent) {
        switch (value) {
            case String text when isLiteral(text) -> literal(text, indent + 2);
            case String text -> out.append(' ').append(scalar(text)).append('\n');
            case Object other
            when fits(other) -> out.append(' ').append(flow(other)).append('\n');
            case Map<?, ?> map -> {
                out.append('\n').append(" ".repeat(indent + 2));
                pairs(asEntries(map), indent + 2);
            }
            case List<?> list -> {
                out.append('\n');
                items(list, indent + 2);
            }
            default -> throw new IllegalArgumentException("cannot be printed: " + value);
        }
    }

    private void items(List<?> list, int indent) {
        for (Object item : list) {
            out.append(" ".repeat(indent)).append("- ");
            switch (item) {
                case Map<?, ?> map when !fits(map) -> pairs(asEntries(map), indent + 2);
                case List<?> inner
                when !fits(inner) -> {
                    out.append('\n');
                    items(inner, indent + 2);
                }
                default -> out.append(flow(item)).append('\n');
            }
        }
    }

    private void literal(String text, int indent) {
        out.append(" |\n");
        text.lines().forEach(line -> {
            out.append(line.isEmpty() ? "" : " ".repeat(indent)).append(line).append('\n');
        });
    }

    /** True for a text that a literal block gives back to the letter: lines, one break at the end, no leading blank. */
    private static boolean isLiteral(String text) {
        return text.indexOf('\n') != text.length() - 1
                && text.endsWith("\n")
                && !text.endsWith("\n\n")
                && LITERAL_FIRST.matcher(text).lookingAt()
                && text.codePoints().allMatch(YamlPrinter::isPrintable);
    }

    private static boolean isPrintable(int c) {
        return c == '\n'
                || (c >= 0x20 && c < 0x7F)
                || (c >= 0xA0 && c < 0xD800 && c != 0x2028 && c != 0x2029)
                || (c >= 0xE000 && c <= 0xFFFD && c != 0xFEFF)
                || (c >= 0x10000 && c <= 0x10FFFF);
    }

    private boolean fits(Object value) {
        return !(value instanceof String)
                && !hasLines(value)
                && column() + flow(value).length() < LINE_WIDTH;
    }

    private int column() {
        return out.length() - (out.lastIndexOf("\n") + 1);
    }

    private static boolean hasLines(Object value) {
        return switch (value) {
            case String text -> isLiteral(text);
            case Map<?, ?> map -> map.values().stream().anyMatch(YamlPrinter::hasLines);
            case List<?> list -> list.stream().anyMatch(YamlPrinter::hasLines);
            default -> false;
        };
    }

    private static String flow(Object value) {
        StringBuilder flow = new StringBuilder();
        switch (value) {
            case String text -> flow.append(scalar(text));
            case Map<?, ?> map -> {
                for (Map.Entry<String, ?> entry : asEntries(map).entrySet()) {
                    if (!isNothing(entry.getValue())) {
                        flow.append(flow.isEmpty() ? "{" : ", ")
                                .append(scalar(entry.getKey()))
                                .append(": ")
                                .append(flow(entry.getValue()));
                    }
                }
                flow.append(flow.isEmpty() ? "{}" : "}");
            }
            case List<?> list -> {
                for (Object item : list) {
                    flow.append(flow.isEmpty() ? "[" : ", ").append(flow(item));
                }
                flow.append(flow.isEmpty() ? "[]" : "]");
            }
            default -> throw new IllegalArgumentException("cannot be printed: " + value);
        }
        return flow.toString();
    }

    @SuppressWarnings("unchecked") // Keys that are no strings fail where they are printed.
    private static Map<String, ?> asEntries(Map<?, ?> map) {
        return (Map<String, ?>) map;
    }

    private static boolean isNothing(Object value) {
        return switch (value) {
            case String text -> text.isEmpty();
            case Map<?, ?> map -> map.values().stream().allMatch(YamlPrinter::isNothing);
            case List<?> list -> list.isEmpty();
            default -> false;
        };
    }

    /** The text bare where YAML reads it as the same text, otherwise in double quotes. */
    private static String scalar(String text) {
        if (PLAIN.matcher(text).matches() && !text.equals("null")) {
            return text;
        }
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                default -> {
                    if (isPrintable(c)) {
                        quoted.appendCodePoint(c);
                    } else {
                        quoted.append(String.format(c > 0xFFFF ? "\\U%08X" : "\\u%04X", c));
                    }
                }
            }
        });
        return quoted.append('"').toString();
    }
}
