package org.loomproof.workshop.meter.role;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;
import org.loomproof.workshop.trade.template.RoleTemplate;
import org.loomproof.workshop.trade.template.RoleTemplates;

/** Every way in which a wire is usually built, from {@code wire-models.csv}, {@code wire-paths.yaml} and {@code pulsed-wires.csv}. */
public final class WireModels {

    /** Drawn cars of each way of building. More do not move a probability by a point on the synthetic set. */
    public static final int CARS = 64;

    private static final List<RoleTemplate> PATHS = RoleTemplates.read(WireModels.class, "wire-paths.yaml");
    private static final List<String> NO_CONTROL = List.of(MiniSheet.REST, "worked");

    private WireModels() {}

    /** New models of all usual ways, each solved when first asked. */
    public static List<WireModel> usual() {
        List<Row> paths = Table.read(WireModels.class, "wire-models.csv").listRows();
        List<Row> pulsed = Table.read(WireModels.class, "pulsed-wires.csv").listRows();
        Map<WireRole, Double> sums = new TreeMap<>();
        for (List<Row> rows : List.of(paths, pulsed)) {
            rows.forEach(row -> sums.merge(WireRole.ofWord(row.text("wire")), row.number("share"), Double::sum));
        }
        List<WireModel> models = new ArrayList<>();
        for (Row row : paths) {
            models.add(model(row, Optional.of(template(row)), Optional.empty(), sums));
        }
        for (Row row : pulsed) {
            models.add(model(row, Optional.empty(), Optional.of(PulsedWire.of(row)), sums));
        }
        return List.copyOf(models);
    }

    private static WireModel model(
            Row row, Optional<RoleTemplate> template, Optional<PulsedWire> pulsed, Map<WireRole, Double> sums) {
        WireRole role = WireRole.ofWord(row.text("wire"));
        String control = row.text("control");
        List<String> positions = control.isEmpty() ? NO_CONTROL : List.of(control.split(" ", -1));
        String rest = pulsed.isPresent() ? "" : row.text("rest-volts");
        Sheet sheet = MiniSheet.of(role, template, rest, row.text("follows"), positions);
        return new WireModel(
                role,
                row.number("share") / sums.getOrDefault(role, 1.0),
                pulsed.isPresent() ? 0 : row.number("sleeps"),
                pulsed.isPresent() ? 0 : row.number("loose"),
                sheet,
                sheet.circuit(MiniSheet.WIRE),
                pulsed,
                CARS);
    }

    private static RoleTemplate template(Row row) {
        String[] words = row.text("path").split(" ", -1);
        Optional<RoleTemplate> found = words.length == 3
                ? RoleTemplates.find(words[0], words[1], words[2])
                : PATHS.stream().filter(t -> t.role().equals(words[0])).findFirst();
        return found.orElseThrow(() -> new IllegalStateException(row.where() + ": no path " + row.text("path")));
    }
}
