package org.loomproof.shop.job;

import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.meter.comeback.Finding;
import org.loomproof.workshop.meter.comeback.LookWords;
import org.loomproof.workshop.meter.comeback.Symptom;

/**
 * A car that came back, looked into.
 *
 * @param brief what was given, completed
 * @param said what the owner complains of
 * @param nowAndThen whether it comes and goes
 * @param measured how many readings there were
 * @param words the words for steps in a file of readings
 * @param finding how it stands
 */
public record Diagnosis(
        Brief brief, Set<Symptom> said, boolean nowAndThen, int measured, LookWords words, Finding finding) {

    public Diagnosis {
        said = Set.copyOf(said);
    }
}
