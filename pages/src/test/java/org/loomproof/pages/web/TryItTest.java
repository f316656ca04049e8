package org.loomproof.pages.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Entries;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;
import org.loomproof.pages.bay.Controls;
import org.loomproof.pages.bay.TriedCar;
import org.loomproof.papers.drawing.Inspection;
import org.loomproof.papers.page.Wording;
import org.loomproof.shop.job.TextRun;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.words.Messages;

/** What the page shows is what the engine gives: random walks over the controls, each answer solved afresh beside the page. */
class TryItTest {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Pattern ROW = Pattern.compile(
            "<tr data-at=\"([^\"]+)\"[^>]*><th[^>]*>.*?</th><td>(.*?)</td><td>(.*?)</td></tr>", Pattern.DOTALL);

    private final Messages english = Messages.english();
    private final Views views = new Views();

    /** The demo's example and one more, another one each turn; all of them in full. */
    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            List<Path> all = files.filter(file -> file.endsWith("sheet.yaml"))
                    .map(file -> Objects.requireNonNull(file.getParent()))
                    .sorted()
                    .toList();
            Path demo = EXAMPLES.resolve("bakery-van");
            List<Path> others = all.stream().filter(e -> !e.equals(demo)).toList();
            return Stream.concat(Stream.of(demo), Sample.of(others, 1).stream()).toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aWalkOverTheControlsShowsWhatTheEngineGives(Path example) {
        Brief given = brief(example);
        Plan plan = new Weigher().weigh(given).plan();
        Brief brief = given.set(plan.settings());
        TriedCar car = new TriedCar(given, plan);
        Vehicle stock = Vehicle.stock(brief, Corner.TYPICAL);
        Vehicle fitted = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        Random random = new Random(Sample.seed());
        Map<String, String> fields = new HashMap<>();
        int compared = 0;
        for (int step = 0; step < Sample.count(12, 40); step++) {
            if (step > 0) {
                turn(random, car, fields);
            }
            Controls controls = Controls.in(brief.sheet(), name -> fields.getOrDefault(name, ""));
            Map<String, List<String>> page = rows(page(car, controls));
            Vehicle shown = car.mishaps().stream()
                    .filter(mishap -> mishap.id().equals(fields.get("wrong")))
                    .findFirst()
                    .map(mishap -> Damage.of(mishap, plan, fitted.wired()).vehicle(brief))
                    .orElse(fitted);
            compared += compare(stock, controls, page, 0, fields);
            compared += compare(shown, controls, page, 1, fields);
            if (step % 6 == 0) {
                inspect(car, controls);
            }
        }
        assertThat(compared).as("figures compared").isGreaterThan(200);
    }

    /** One control turned, as a hand does it. */
    private static void turn(Random random, TriedCar car, Map<String, String> fields) {
        List<Operable> operables = car.brief().sheet().operables();
        switch (random.nextInt(7)) {
            case 0 -> fields.put("state", any(random, Controls.STATES).word());
            case 1 ->
                fields.put("supply", any(random, List.of(SupplyPoint.values())).word());
            case 2 -> fields.put("moment", Controls.word(any(random, List.of(Moment.values()))));
            case 3 -> fields.put("feed", any(random, car.feeds()).word());
            case 4 ->
                fields.put(
                        "wrong",
                        random.nextBoolean() ? "" : any(random, car.mishaps()).id());
            default -> {
                Operable operable = any(random, operables);
                fields.put(Controls.field(operable.id()), any(random, operable.positions()));
            }
        }
    }

    private static <T> T any(Random random, List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private String page(TriedCar car, Controls controls) {
        Card job = new Card(CardId.fresh(), CardKind.JOB, CardId.fresh(), 1, Entries.NONE);
        Map<String, Object> all = new HashMap<>(TryPages.shown(job, car, controls, new Wording(english)));
        all.put("look", new Look(english, Optional.empty(), "", ""));
        return views.render("bay/try", all);
    }

    private static Map<String, List<String>> rows(String page) {
        Map<String, List<String>> rows = new HashMap<>();
        Matcher matcher = ROW.matcher(page);
        while (matcher.find()) {
            rows.put(matcher.group(1), List.of(text(matcher.group(2)), text(matcher.group(3))));
        }
        return rows;
    }

    private static String text(String html) {
        return html.replaceAll("<[^>]*>", "").strip();
    }

    /** How many figures of the page were compared with a point solved by a solver of its own. */
    private static int compare(
            Vehicle vehicle,
            Controls controls,
            Map<String, List<String>> page,
            int column,
            Map<String, String> fields) {
        Setting setting = vehicle.settings().of(controls.situation());
        SolveOutcome outcome = Solver.of(vehicle.wired().network(), SolverOptions.USUAL.withoutOtherStablePoints())
                .solve(setting);
        if (!(outcome instanceof SolveOutcome.Settled settled)) {
            return 0; // told in words; the page then has no figures of it, or those of one of several points
        }
        OperatingPoint point = settled.point();
        List<String> wrong = new ArrayList<>();
        int[] count = {0};
        vehicle.wired().factory().before().forEach((id, node) -> {
            if (vehicle.wired().network().hasNode(node)) {
                expect(page, "circuit " + id + " before", column, volts(point, node), wrong, count);
            }
        });
        vehicle.wired()
                .factory()
                .loads()
                .forEach((id, reach) -> expect(page, "load " + id, column, amps(point, reach), wrong, count));
        vehicle.wired().added().wires().forEach((id, reach) -> {
            expect(page, "wire " + id, column, volts(point, reach.from()), wrong, count);
            expect(page, "wire " + id, column, amps(point, reach), wrong, count);
        });
        vehicle.wired()
                .controller()
                .ifPresent(c -> c.leads().forEach((lead, node) -> {
                    if (vehicle.wired().network().hasNode(node)) {
                        expect(page, "lead " + lead, column, volts(point, node), wrong, count);
                    }
                }));
        assertThat(wrong).as("with %s", fields).isEmpty();
        return count[0];
    }

    private static void expect(
            Map<String, List<String>> page, String row, int column, String figure, List<String> wrong, int[] count) {
        count[0]++;
        List<String> columns = page.get(row);
        String shown = columns == null ? "no such row" : columns.get(column);
        if (!(" " + shown + " ").contains(" " + figure + " ") && !shown.startsWith(figure)) {
            wrong.add(row + ": the engine gives " + figure + ", the page shows " + shown);
        }
    }

    /** As a meter shows it, by the rule of the page but not by its code. */
    private static String volts(OperatingPoint point, Node node) {
        double volts = point.volts(node);
        return point.isFloating(node) ? "not held" : new Volts(Math.abs(volts) < 1e-4 ? 0 : volts).toString();
    }

    private static String amps(OperatingPoint point, Reach reach) {
        double amps = point.ampsInto(reach.part(), reach.pin());
        return new Amps(Math.abs(amps) < 1e-6 ? 0 : amps).toString();
    }

    /** The living drawing is as sound as the one on paper: no text has moved, none lies on another that did not before. */
    private void inspect(TriedCar car, Controls controls) {
        Wording words = new Wording(english);
        car.drawn(car.at(controls), words)
                .forEach(sheet -> assertThat(Inspection.of(sheet).overlaps()).isEmpty());
    }

    private static Brief brief(Path example) {
        TextRun run = new TextRun(Messages.english());
        return switch (run.briefs()
                .read(example.resolve("sheet.yaml"), example.resolve("kit.yaml"), example.resolve("order.yaml"))) {
            case Checked.Good<ReadBrief>(ReadBrief read) -> read.brief();
            case Checked.Bad<ReadBrief>(var problems) -> throw new AssertionError(problems.toString());
        };
    }
}
