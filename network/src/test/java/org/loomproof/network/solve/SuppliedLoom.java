package org.loomproof.network.solve;

import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.loomproof.network.TestNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Motor;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.SteppedSwitch;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;

/** Looms of one battery drawn from a seed: relays and outputs on splices that hold more or less firm, among loads of every kind. */
final class SuppliedLoom {
    private final SplittableRandom random;
    private final TestNetwork wired = TestNetwork.network();
    private final List<String> splices = new ArrayList<>(List.of("bus"));
    private int made;

    private SuppliedLoom(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Batteries that hold firm, that loads pull about by a volt or two, and that give way. */
    static Network of(long seed) {
        return new SuppliedLoom(seed).build();
    }

    private Network build() {
        wired.battery("battery", "plus", "0", 12.6, List.of(0.012, 0.05, 0.4).get(random.nextInt(3)));
        wired.part(new Fuse(id("main"), at("plus"), at("bus"), 0.002, 80));
        for (int k = 0; k < 6; k++) {
            String end = name();
            wired.part(new Wire(id("run " + end), at(any()), at(end), random.nextDouble(1e-3, 2e-2)));
            splices.add(end);
        }
        wired.resistor("strap", any(), any(), random.nextDouble(0.05, 5));
        for (int k = 0; k < 4; k++) {
            relay();
            load(any());
            load(switched(any()));
            output();
        }
        for (int k = 0; k < 3; k++) {
            trigger();
        }
        return wired.build();
    }

    private void relay() {
        String plus = random.nextInt(3) == 0 ? any() : switched(any());
        String minus = random.nextBoolean() ? "0" : switched("0");
        if (random.nextInt(3) == 0) {
            String behind = name();
            wired.diode("feed " + behind, plus, behind, DiodeModel.SILICON_1A);
            plus = behind;
        }
        wired.diode("clamp " + name(), minus, plus, DiodeModel.SILICON_1A);
        String make = name();
        String rest = name();
        String relay = name();
        wired.part(new Relay(
                id(relay),
                at(plus),
                at(minus),
                random.nextDouble(60, 300),
                random.nextDouble(6, 12),
                1.2,
                List.of(Contact.changeover(at(any()), at(make), at(rest))),
                2e-3));
        load(make);
        load(rest);
    }

    private void load(String feed) {
        String name = name();
        switch (random.nextInt(5)) {
            case 0 -> wired.lamp(name, feed, "0", 13.5, random.nextDouble(5, 21));
            case 1 -> wired.resistor(name, feed, "0", random.nextDouble(1, 300));
            case 2 -> wired.part(new Motor(id(name), at(feed), at("0"), 1.5, 0, 12, 2, 0.1));
            case 3 ->
                wired.part(new SteppedSwitch(
                        id(name),
                        at(feed),
                        at("0"),
                        List.of(OptionalDouble.empty(), OptionalDouble.of(3), OptionalDouble.of(90))));
            default ->
                wired.resistor(name, feed, "lit " + name, 560)
                        .diode("led " + name, "lit " + name, "0", DiodeModel.LED_RED);
        }
    }

    private void output() {
        String name = name();
        Drive drive = new Drive(random.nextDouble(0.3, 2), 0, random.nextDouble(0.2, 1.5));
        if (random.nextBoolean()) {
            wired.resistor("load " + name, any(), name, random.nextDouble(15, 150));
            wired.part(new LowSideOutput(
                    id("low " + name), at(name), at(any()), at("0"), drive, true, random.nextBoolean()));
        } else {
            wired.part(
                    new HighSideOutput(id("high " + name), at(name), at(switched(any())), at("0"), drive, true, false));
            load(name);
        }
    }

    private void trigger() {
        String name = name();
        wired.lamp("interior " + name, any(), "door " + name, 13.5, 10)
                .contact("switch " + name, "door " + name, "0")
                .diode("isolation " + name, "input " + name, "door " + name, DiodeModel.SILICON_1A)
                .pulledUpInput(name, "input " + name, any(), "0", 10e3);
    }

    private String switched(String from) {
        String end = name();
        wired.contact("switch " + end, from, end);
        return end;
    }

    private String any() {
        return splices.get(random.nextInt(splices.size()));
    }

    private String name() {
        return "n" + made++;
    }

    /** So many settings, each a few throws, faults or stuck contacts on from the one before. */
    static List<Setting> walk(Network network, long seed, int count) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Setting> settings = new ArrayList<>();
        Setting setting = network.atRest();
        for (int k = 0; k < count; k++) {
            for (int t = 0; t < 1 + random.nextInt(3); t++) {
                setting = thrown(
                        setting,
                        network.parts().get(random.nextInt(network.parts().size())),
                        random);
            }
            settings.add(faulty(
                    setting, network.parts().get(random.nextInt(network.parts().size())), random));
        }
        return settings;
    }

    private static Setting thrown(Setting setting, Part part, SplittableRandom random) {
        boolean isOn = setting.isOn(part.id());
        return switch (part) {
            case Switch s -> isOn ? setting.open(s.id()) : setting.closed(s.id());
            case LowSideOutput o -> isOn ? setting.off(o.id()) : setting.on(o.id());
            case HighSideOutput o -> isOn ? setting.off(o.id()) : setting.on(o.id());
            case Motor m -> isOn ? setting.turning(m.id()) : setting.stalled(m.id());
            case SteppedSwitch s ->
                setting.selected(s.id(), random.nextInt(s.ohmsAt().size()));
            default -> setting;
        };
    }

    private static Setting faulty(Setting setting, Part part, SplittableRandom random) {
        return switch (random.nextInt(12)) {
            case 0, 1, 2 -> setting.broken(part.id());
            case 3, 4 -> part instanceof Resistor || part instanceof Wire ? setting.shorted(part.id()) : setting;
            case 5 ->
                part instanceof Relay
                        ? setting.contactHeld(
                                part.id(), random.nextBoolean() ? RelayPosition.PULLED_IN : RelayPosition.RELEASED)
                        : setting;
            case 6 -> part instanceof Wire ? setting.ohms(part.id(), 5) : setting;
            default -> setting;
        };
    }
}
