package org.loomproof.papers.guide;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.papers.Examples;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.papers.svg.SvgDrawing;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fault.Slip;
import org.loomproof.workshop.fault.Slips;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;

/**
 * Writes the guide to the couplings out of the worked examples: each coupling that the planner chose there, drawn, with its
 * reason, and with what the prover finds when a part of it is left out, turned round or swapped.
 */
final class CouplingsGuide {

    static final Path GUIDE = Path.of("..", "docs", "guide", "couplings.md");
    static final Path DRAWINGS = Path.of("..", "docs", "guide", "couplings");

    private static final Messages ENGLISH = Messages.english();
    private static final Wording WORDS = new Wording(ENGLISH);
    private static final int MOST_CLAIMS = 3;

    /** One coupling as an example shows it. */
    record Shown(String key, String example, Brief brief, Plan plan, List<Hookup.Connect> hookups) {

        String file() {
            return key + ".svg";
        }

        /** Its leads, parts and wires alone. */
        Plan part() {
            Set<AddedPartId> parts =
                    hookups.stream().flatMap(h -> h.parts().stream()).collect(Collectors.toSet());
            Set<WireId> wires =
                    hookups.stream().flatMap(h -> h.wires().stream()).collect(Collectors.toSet());
            return new Plan(
                    plan.settings(),
                    List.copyOf(hookups),
                    plan.parts().stream().filter(p -> parts.contains(p.id())).toList(),
                    plan.wires().stream().filter(w -> wires.contains(w.id())).toList(),
                    List.of(),
                    List.of());
        }

        String drawing() {
            return MarkupWriter.xml(SvgDrawing.of(
                    Schematic.detail(brief, part(), new Joints(brief, part()), WORDS),
                    ENGLISH.text("coupling." + key)));
        }
    }

    private CouplingsGuide() {}

    /** The folders of all examples, those with the fewest leads to look at first. */
    static List<Path> examples() {
        return Examples.all().stream()
                .sorted(Comparator.comparingInt(Path::getNameCount).reversed())
                .toList();
    }

    /** Every coupling of the plan for one example. */
    static List<Shown> couplingsOf(Path example) {
        Brief brief = Examples.brief(example);
        Plan plan = new Weigher().weigh(brief).plan();
        Map<String, List<Hookup.Connect>> byKey = new LinkedHashMap<>();
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                String key = connect.coupling().substring("coupling.".length());
                byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(connect);
            }
        }
        String name = Examples.FOLDER.relativize(example).toString();
        List<Shown> shown = new ArrayList<>();
        byKey.forEach((key, hookups) -> {
            Hookup.Connect first = hookups.getFirst();
            List<Hookup.Connect> together = hookups.stream()
                    .filter(h -> h.equals(first)
                            || (h.serves() == first.serves()
                                    && h.parts().stream().anyMatch(first.parts()::contains)))
                    .toList();
            shown.add(new Shown(key, name, brief, plan, together));
        });
        return shown;
    }

    /** The section of a coupling. */
    static String section(Shown shown) {
        StringBuilder out = new StringBuilder();
        out.append("## ")
                .append(capital(ENGLISH.text("coupling." + shown.key())))
                .append("\n\n");
        out.append("![")
                .append(ENGLISH.text("coupling." + shown.key()))
                .append("](couplings/")
                .append(shown.file())
                .append(")\n\n");
        out.append(said(shown.key(), "when")).append("\n\n");
        out.append("As in [")
                .append(shown.example())
                .append("](../../examples/")
                .append(shown.example())
                .append("/README.md): ");
        out.append(ENGLISH.text(shown.hookups().getFirst().because())).append("\n\n");
        List<String> wrong = wrongVersions(shown);
        if (!wrong.isEmpty()) {
            out.append("| done wrong | breaks |\n|---|---|\n");
            wrong.forEach(line -> out.append(line).append('\n'));
            out.append('\n');
        }
        return out.toString();
    }

    private static List<String> wrongVersions(Shown shown) {
        Set<AddedPartId> parts = new LinkedHashSet<>();
        shown.hookups().forEach(h -> parts.addAll(h.parts()));
        Set<String> before = Prover.listObjections(shown.brief(), shown.plan()).stream()
                .map(ClaimResult::id)
                .collect(Collectors.toSet());
        Map<String, List<String>> byBroken = new LinkedHashMap<>();
        for (Slip.OfPart slip : Slips.ofParts(shown.plan())) {
            if (parts.contains(slip.part())) {
                List<String> broken = Prover.listObjections(shown.brief(), slip.on(shown.plan())).stream()
                        .filter(r -> !before.contains(r.id()))
                        .map(r -> ENGLISH.text(r.statement()))
                        .toList();
                byBroken.computeIfAbsent(told(broken), b -> new ArrayList<>()).add(ENGLISH.text(slip.words()));
            }
        }
        return byBroken.entrySet().stream()
                .map(each -> "| " + String.join(", ", each.getValue()) + " | " + each.getKey() + " |")
                .toList();
    }

    private static String told(List<String> broken) {
        if (broken.isEmpty()) {
            return "nothing that is claimed";
        }
        String first = broken.stream().limit(MOST_CLAIMS).collect(Collectors.joining("; "));
        return broken.size() > MOST_CLAIMS ? first + "; and " + (broken.size() - MOST_CLAIMS) + " more" : first;
    }

    static String head() {
        return said("guide", "head") + "\n\n";
    }

    private static String said(String key, String what) {
        Properties texts = new Properties();
        try (InputStreamReader in = new InputStreamReader(
                Objects.requireNonNull(CouplingsGuide.class.getResourceAsStream("couplings.properties")),
                StandardCharsets.UTF_8)) {
            texts.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Objects.requireNonNull(
                texts.getProperty(key + "." + what), () -> "couplings.properties says nothing of " + key);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
