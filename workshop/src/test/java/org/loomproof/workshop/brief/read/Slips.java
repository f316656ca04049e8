package org.loomproof.workshop.brief.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Slips of the pen, drawn from a seed. */
public final class Slips {

    private Slips() {}

    /** The text with one to three slips of the pen. */
    public static String mangled(String text, Random random) {
        String result = text;
        for (int slips = random.nextInt(1, 4); slips > 0 && result.length() > 2; slips--) {
            result = slipped(result, random);
        }
        return result;
    }

    private static String slipped(String text, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int line = random.nextInt(lines.size());
        int at = random.nextInt(text.length() - 1);
        switch (random.nextInt(10)) {
            case 0 -> lines.remove(line);
            case 1 -> lines.add(random.nextInt(lines.size()), lines.get(line));
            case 2 -> lines.set(line, lines.get(line).replaceFirst("[a-z]+", "wrong"));
            case 3 -> lines.set(line, " " + lines.get(line));
            case 4 -> lines.set(line, lines.get(line).replaceFirst("\\d+", "-1e400"));
            case 8 -> lines.set(line, lines.get(line).replaceFirst("(\\d) (?:mA|A|V|ohm|kohm|mohm|mm2|m|W)\\b", "$1"));
            case 5 -> lines.set(line, lines.get(line).replaceFirst(": .*", ":"));
            case 6 -> {
                return text.substring(0, at) + text.charAt(at + 1) + text.charAt(at) + text.substring(at + 2);
            }
            case 7 -> {
                return text.substring(0, at);
            }
            default -> {
                String anything = "[]{}:,#&*!|>'\"%@`\t\u0000 ?-\uFFFD~";
                return text.substring(0, at) + anything.charAt(random.nextInt(anything.length())) + text.substring(at);
            }
        }
        return String.join("\n", lines) + "\n";
    }
}
