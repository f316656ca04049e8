package org.loomproof.workshop.meter.synthetic;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.fixture.Figured;

/** Entries of made-up papers. */
public final class Papers {

    private Papers() {}

    /** An entry that says nothing but its role. */
    public static Circuit entry(CircuitRole role) {
        return new Circuit(
                new CircuitId("of-" + role.name().toLowerCase(Locale.ROOT).replace('_', '-')),
                role,
                new Where("", "", "", ""),
                Optional.empty(),
                Optional.empty(),
                new Switching(new Level.Reversing(), new Level.Reversing()),
                List.of(),
                List.of(),
                Access.MAY_BE_TAPPED,
                Figured.STATED,
                "",
                "");
    }
}
