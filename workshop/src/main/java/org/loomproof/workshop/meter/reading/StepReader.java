package org.loomproof.workshop.meter.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.meter.reading.Step.Aid;
import org.loomproof.workshop.meter.reading.Step.KeyAt;
import org.loomproof.workshop.meter.reading.Step.Worked;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.QuantityText;
import org.loomproof.workshop.quantity.Unit;

/** Reads a step from the closed list that {@code docs/guide/readings.md} documents; several parts are joined by {@code +}. */
public final class StepReader implements StepWords<Step> {

    private static final Map<String, KeyAt> KEYS = keys();
    private static final Map<String, Worked> RESTING = resting();
    private static final Map<String, Worked> THINGS = things();
    private static final Pattern OPENED = Pattern.compile("(?:opened|open)(?:\\s+(?:the\\s+)?(.+))?");
    private static final Pattern PRESSED = Pattern.compile("(?:pressed|press|pushed)(?:\\s+(?:the\\s+)?(.+))?");
    private static final Pattern AFTER = Pattern.compile("after\\s+(\\d{1,6}(?:[.,]\\d{1,3})?)\\s*(s|sec|min|h)");
    private static final Pattern WITH = Pattern.compile("with\\s+(.+)");

    private final Map<String, Worked> named;

    /** @param named what the sheet names, such as {@code rear-left-door}, and what it is; empty without a sheet */
    public StepReader(Map<String, Worked> named) {
        this.named = new LinkedHashMap<>();
        named.forEach((name, thing) -> this.named.put(name.toLowerCase(Locale.ROOT), thing));
    }

    /** Every word and form that is accepted; a name stands for itself. */
    @Override
    public List<String> accepted() {
        List<String> all = new ArrayList<>(KEYS.keySet());
        all.addAll(RESTING.keySet());
        all.addAll(List.of("opened", "pressed", "after 20 s", "asleep", "with 1 kohm", "battery off"));
        THINGS.forEach((word, thing) -> all.add((thing.isOpening() ? "opened " : "pressed ") + word));
        named.forEach((word, thing) -> all.add((thing.isOpening() ? "opened " : "pressed ") + word));
        return all;
    }

    /** The step that a text means; empty when a part is not on the list or says what another part contradicts. */
    @Override
    public Optional<Step> read(String text) {
        Builder step = new Builder();
        for (String part : text.strip().toLowerCase(Locale.ROOT).split("\\+", -1)) {
            if (!step.take(part.strip().replaceAll("\\s+", " "))) {
                return Optional.empty();
            }
        }
        return Optional.of(step.build());
    }

    /** The parts said so far; each may be said once. */
    private final class Builder {
        private Optional<KeyAt> key = Optional.empty();
        private Optional<Worked> worked = Optional.empty();
        private String name = "";
        private OptionalDouble after = OptionalDouble.empty();
        private boolean asleep;
        private Optional<Aid> aid = Optional.empty();
        private OptionalDouble ohms = OptionalDouble.empty();

        boolean take(String part) {
            KeyAt at = KEYS.get(part);
            Worked rest = RESTING.get(part);
            Matcher opened = OPENED.matcher(part);
            Matcher pressed = PRESSED.matcher(part);
            Matcher later = AFTER.matcher(part);
            Matcher with = WITH.matcher(part);
            if (at != null) {
                boolean first = key.isEmpty();
                key = Optional.of(at);
                return first;
            }
            if (rest != null) {
                return works(rest, "");
            }
            if (opened.matches()) {
                return worksNamed(opened.group(1), Worked.OPENING);
            }
            if (pressed.matches()) {
                return worksNamed(pressed.group(1), Worked.SWITCH);
            }
            if (later.matches() && after.isEmpty()) {
                double number = Double.parseDouble(later.group(1).replace(',', '.'));
                double scale =
                        later.group(2).equals("min") ? 60 : later.group(2).equals("h") ? 3600 : 1;
                after = OptionalDouble.of(number * scale);
                return true;
            }
            if (part.equals("asleep") && !asleep) {
                asleep = true;
                return true;
            }
            if (part.equals("battery off") && aid.isEmpty()) {
                aid = Optional.of(Aid.BATTERY_OFF);
                return true;
            }
            return with.matches() && aid.isEmpty() && hangs(with.group(1));
        }

        private boolean works(Worked thing, String called) {
            boolean first = worked.isEmpty();
            worked = Optional.of(thing);
            name = called;
            return first;
        }

        private boolean worksNamed(@Nullable String called, Worked bare) {
            if (called == null) {
                return works(bare, "");
            }
            Worked thing = named.getOrDefault(called, THINGS.get(called));
            return thing != null && thing.isOpening() == bare.isOpening() && works(thing, ownName(called));
        }

        private String ownName(String called) {
            return named.containsKey(called) ? called : "";
        }

        private boolean hangs(String text) {
            String plain = text.replaceFirst("(?i)\\s*resistor$", "").replace(',', '.');
            QuantityText.Outcome<Ohms> read = QuantityText.read(plain, Unit.OHMS);
            if (read instanceof QuantityText.Outcome.Read<Ohms>(var range)
                    && range.low().value() == range.high().value()) {
                aid = Optional.of(Aid.RESISTOR);
                ohms = OptionalDouble.of(range.typical().value());
                return true;
            }
            return false;
        }

        Step build() {
            return new Step(
                    key.orElse(KeyAt.OFF),
                    worked.orElse(Worked.NOTHING),
                    name,
                    after,
                    asleep,
                    aid.orElse(Aid.NONE),
                    ohms);
        }
    }

    private static Map<String, KeyAt> keys() {
        Map<String, KeyAt> words = new LinkedHashMap<>();
        words.put("no key", KeyAt.NO_KEY);
        words.put("key off", KeyAt.OFF);
        words.put("key acc", KeyAt.ACCESSORY);
        words.put("key on", KeyAt.ON);
        words.put("cranking", KeyAt.CRANKING);
        words.put("running", KeyAt.RUNNING);
        words.put("off", KeyAt.OFF);
        words.put("acc", KeyAt.ACCESSORY);
        words.put("accessory", KeyAt.ACCESSORY);
        words.put("key accessory", KeyAt.ACCESSORY);
        words.put("on", KeyAt.ON);
        words.put("ignition on", KeyAt.ON);
        words.put("crank", KeyAt.CRANKING);
        words.put("engine running", KeyAt.RUNNING);
        return words;
    }

    private static Map<String, Worked> resting() {
        Map<String, Worked> words = new LinkedHashMap<>();
        words.put("closed", Worked.NOTHING);
        words.put("released", Worked.NOTHING);
        words.put("lamps on", Worked.LAMPS);
        words.put("lamps off", Worked.NOTHING);
        return words;
    }

    private static Map<String, Worked> things() {
        Map<String, Worked> words = new LinkedHashMap<>();
        words.put("door", Worked.DOOR);
        words.put("hood", Worked.HOOD);
        words.put("bonnet", Worked.HOOD);
        words.put("trunk", Worked.TRUNK);
        words.put("boot", Worked.TRUNK);
        words.put("tailgate", Worked.TRUNK);
        words.put("lock", Worked.LOCK);
        words.put("unlock", Worked.UNLOCK);
        words.put("horn", Worked.HORN);
        words.put("brake", Worked.BRAKE);
        words.put("release", Worked.RELEASE);
        words.put("window", Worked.WINDOW);
        words.put("dome", Worked.DOME);
        return words;
    }
}
