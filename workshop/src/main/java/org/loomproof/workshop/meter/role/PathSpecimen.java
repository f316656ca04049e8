package org.loomproof.workshop.meter.role;

import java.util.List;
import java.util.OptionalDouble;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.wiring.WorkedSwitch;

/** A wire of a sheet, in one car of all that the sheet may describe. */
final class PathSpecimen implements Specimen {

    private final Sheet sheet;
    private final Wired wired;
    private final Bench bench;
    private final List<PartId> moduleSupplies;
    private final boolean sleeps;

    /** @param sleepingShare of cars whose modules let go of their wires when they sleep */
    PathSpecimen(Sheet sheet, CircuitId circuit, double sleepingShare, Chance chance) {
        this.sheet = sheet;
        this.wired = VehicleWiring.stock(DrawnSheet.of(sheet, chance), Corner.TYPICAL);
        Node wire = wired.factory().before().get(circuit);
        if (wire == null) {
            throw new IllegalArgumentException("no circuit " + circuit + " on the sheet");
        }
        this.sleeps = chance.happens(sleepingShare);
        this.bench = new Bench(
                wired.network().parts(),
                wired.post(),
                wire,
                chance.magnitude(Bench.LEAST_LEAK_OHMS, Bench.MOST_LEAK_OHMS));
        this.moduleSupplies = wired.network().parts().stream()
                .filter(part -> part instanceof Battery && !part.id().equals(wired.battery()))
                .map(part -> part.id())
                .toList();
    }

    @Override
    public Shows at(Setup setup) {
        Setting setting = setting(setup);
        return new Shows(
                bench.volts(setting.emf(wired.battery(), 10)),
                bench.volts(setting.emf(wired.battery(), 14)),
                0,
                bench.floats(setting));
    }

    @Override
    public OptionalDouble ohms(Setup setup) {
        return bench.ohms(setting(setup));
    }

    private Setting setting(Setup setup) {
        Setting setting = bench.with(setup);
        for (WorkedSwitch each : wired.switches()) {
            String at = setup.position(each.operatedBy(), rest(each));
            setting = each.closedAt().contains(at) ? setting.closed(each.part()) : setting.open(each.part());
        }
        if (setup.asleep() && sleeps) {
            for (PartId supply : moduleSupplies) {
                setting = setting.emf(supply, 0);
            }
        }
        return setting;
    }

    private String rest(WorkedSwitch each) {
        return sheet.operables().stream()
                .filter(o -> o.id().equals(each.operatedBy()))
                .map(Operable::rest)
                .findFirst()
                .orElse("");
    }
}
