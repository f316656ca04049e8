package org.loomproof.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Files of sheets with the right answer beside each: {@code @@ name}, the text, {@code @ answer}, one line an answer. */
final class CorpusFile {

    private CorpusFile() {}

    /**
     * One sheet.
     *
     * @param answers its lines, cells parted by semicolons
     */
    record Sheet(String name, String text, List<String> answers) {

        /** Role, colour, polarity and place of each circuit; a place in three cells is panel, connector and cavity. */
        List<List<String>> circuits() {
            return answers.stream().map(Sheet::circuit).toList();
        }

        /** The same with the place in one cell, which may hold all three in any order. */
        List<List<String>> circuitsWithWholePlace() {
            return answers.stream()
                    .map(line -> List.of((line + ";;;").split(";", -1)).subList(0, 4))
                    .toList();
        }

        private static List<String> circuit(String line) {
            String[] cells = (line + ";;;;;").split(";", -1);
            String place = cells[3].equals("*") ? "*" : cells[3] + "|" + cells[4] + "|" + cells[5];
            return List.of(cells[0], cells[1], cells[2], place);
        }
    }

    static List<Sheet> sheets(String file) throws IOException {
        try (InputStream in = CorpusFile.class.getResourceAsStream(file)) {
            String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            List<Sheet> sheets = new ArrayList<>();
            for (String part : all.split("(?m)^@@ ", -1)) {
                if (!part.isBlank()) {
                    sheets.add(sheet(part));
                }
            }
            return sheets;
        }
    }

    private static Sheet sheet(String part) {
        String[] halves = part.split("(?m)^@ answer\n", -1);
        int end = halves[0].indexOf('\n');
        Stream<String> answers = halves[1].lines().filter(l -> !l.isBlank());
        return new Sheet(halves[0].substring(0, end), halves[0].substring(end + 1), answers.toList());
    }
}
