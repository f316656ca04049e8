package org.loomproof.intake.check;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.role.RoleReading;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;

/** What the words for a circuit's use already say of how it switches: a wire for messages, and "plus" within its name. */
final class SwitchingByRole {

    private static final Pattern PLUS = Pattern.compile(".*(\\+|plus|positiv|12\\s?v\\b).*");
    private static final Pattern PLUS_IN_NAME = Pattern.compile("\\s*(?:\\+\\s?[a-z]|b\\+)");
    private static final Set<CircuitRole> FED = EnumSet.of(
            CircuitRole.CONSTANT_SUPPLY, CircuitRole.IGNITION, CircuitRole.SECOND_IGNITION, CircuitRole.ACCESSORY);

    private SwitchingByRole() {}

    /** What the role says, and the name it stands in: {@code B+}, {@code + permanent}. */
    static Optional<Found<Behaviour>> of(Found<RoleReading> role, String name) {
        CircuitRole use = role.value().role();
        if (use == CircuitRole.DATA) {
            Optional<Level> messages = Optional.of(new Level.Data());
            return said(role, new Behaviour(Behaviour.Kind.DATA, messages, messages));
        }
        boolean plus = FED.contains(use)
                && (PLUS.matcher(Passage.fold(role.written())).matches()
                        || PLUS_IN_NAME.matcher(Passage.fold(name)).lookingAt());
        return plus
                ? said(role, new Behaviour(Behaviour.Kind.POSITIVE, Optional.empty(), Optional.of(new Level.Supply())))
                : Optional.empty();
    }

    private static Optional<Found<Behaviour>> said(Found<RoleReading> role, Behaviour behaviour) {
        return Optional.of(new Found<>(behaviour, Evidence.COMPOUND, role.origin(), role.written()));
    }
}
