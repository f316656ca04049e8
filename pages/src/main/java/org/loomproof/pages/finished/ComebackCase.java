package org.loomproof.pages.finished;

import java.util.List;
import java.util.Optional;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;

/**
 * A comeback whose cause is not found yet.
 *
 * @param entry the name of the complaint in the log
 * @param complaint what the owner says
 * @param readings the entries since, the oldest first
 */
public record ComebackCase(String entry, Work.Complaint complaint, List<Noted> readings) {

    /** The open one of a log; nothing when none was begun, or the cause of the last was found. */
    public static Optional<ComebackCase> in(List<Noted> standing) {
        for (int k = standing.size() - 1; k >= 0; k--) {
            Noted noted = standing.get(k);
            if (noted.work() instanceof Work.CauseFound) {
                return Optional.empty();
            }
            if (noted.work() instanceof Work.Complaint complaint) {
                return Optional.of(new ComebackCase(noted.id(), complaint, standing.subList(k + 1, standing.size())));
            }
        }
        return Optional.empty();
    }

    /** How many comebacks of a log had their cause found: after each the car is tested anew. */
    public static long mended(List<Noted> standing) {
        return standing.stream()
                .filter(noted -> noted.work() instanceof Work.CauseFound)
                .count();
    }
}
