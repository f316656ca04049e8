package org.loomproof.workshop.brief.text;

/** What stands between the cells of a table written by hand or by a spreadsheet. */
public final class Separator {

    private Separator() {}

    /** Comma, semicolon or tab: the one that the first line uses most; lines that are empty or begin with {@code #} are none. */
    public static char of(String text) {
        String head = text.lines().filter(line -> !isRemark(line)).findFirst().orElse("");
        char best = ',';
        for (char each : new char[] {'\t', ';'}) {
            best = count(head, each) > count(head, best) ? each : best;
        }
        return best;
    }

    private static boolean isRemark(String line) {
        return line.isBlank() || line.strip().startsWith("#");
    }

    private static long count(String text, char wanted) {
        return text.chars().filter(c -> c == wanted).count();
    }
}
