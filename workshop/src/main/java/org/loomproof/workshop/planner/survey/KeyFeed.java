package org.loomproof.workshop.planner.survey;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.PathStep;

/** What the key does to a feed, read off the switches of its path. */
final class KeyFeed {

    /** Where a true ignition is alive. */
    private static final Set<String> RUNNING = Set.of("on", "start");

    private KeyFeed() {}

    /**
     * True when the path from the supply to the wire goes through the key's switches alone, and each is closed in ON as in START.
     * A relay's contact in between may let go while the battery is low: of such a feed it is not known.
     */
    static boolean holdsWhileCranking(Circuit circuit) {
        List<List<PathStep>> feeds = listFeeds(circuit);
        return !feeds.isEmpty() && feeds.stream().allMatch(feed -> feed.stream().allMatch(KeyFeed::lasts));
    }

    /** What lies between the supply and the circuit's wire, path by path; paths that do not name both say nothing. */
    static List<List<PathStep>> listFeeds(Circuit circuit) {
        return circuit.paths().stream()
                .filter(path -> path.contains(new PathStep.Supply()) && path.contains(new PathStep.Here()))
                .map(KeyFeed::fromSupply)
                .toList();
    }

    private static List<PathStep> fromSupply(List<PathStep> path) {
        int supply = path.indexOf(new PathStep.Supply());
        int here = path.indexOf(new PathStep.Here());
        return path.subList(Math.min(supply, here), Math.max(supply, here));
    }

    private static boolean lasts(PathStep step) {
        return switch (step) {
            case PathStep.Switch contact ->
                contact.operatedBy().equals(Operable.KEY) && contact.closedAt().containsAll(RUNNING);
            case PathStep.Contact contact -> false;
            case PathStep.Point point -> false;
            case PathStep.Supply supply -> true;
            case PathStep.Ground ground -> false;
            case PathStep.Here here -> true;
            case PathStep.Part other -> true;
        };
    }
}
