package org.loomproof.workshop.prover.claim;

import java.util.List;

/** One statement that the fitted vehicle must satisfy. */
public interface Claim {

    /** Short and stable, such as {@code opening-seen}. */
    String name();

    /** What it comes to in this job: one case a load, an opening, a lead or a part, in the order of sheet, kit and plan. */
    List<Claimed> in(Fitting fitting);

    /** Whether any of it is to be shown in every situation, so that a damaged vehicle may break it; else figures decide it. */
    default boolean isWalked() {
        return true;
    }

    /** All claims, in the order in which they are reported. */
    static List<Claim> all() {
        return List.of(
                new StartsWhenDisarmed(),
                new StartsWithControllerDead(),
                new DoesNotStartWhenArmed(),
                new EngineKeepsRunning(),
                new IgnitionTapFused(),
                new OpeningSeen(),
                new QuietWhenClosed(),
                new AddedContactRead(),
                new ArmedAfterLight(),
                new StockAsBefore(),
                new NoSneakPath(),
                new DoesItsWork(),
                new WithinRating(),
                new WithinInrush(),
                new CoilKick(),
                new LetsGoInTime(),
                new StaysDead(),
                new FactoryWireFused(),
                new ShortOpensFuse(),
                new HeldLongEnough(),
                new PulseLongEnough(),
                new StaysAsWorked(),
                new OutlastsParking(),
                new OutlivesSupply(),
                new WithinRuleSet());
    }
}
