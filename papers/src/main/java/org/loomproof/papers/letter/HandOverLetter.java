package org.loomproof.papers.letter;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.standby.Standby;

/**
 * What the customer takes home: what was fitted, how to live with it, and what was not done. No hidden place stands on it;
 * that of the override button has a slip of its own.
 */
public final class HandOverLetter {

    private final Brief brief;
    private final Plan plan;
    private final Wording words;

    private HandOverLetter(Brief brief, Plan plan, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.words = words;
    }

    /** The hand-over as a page. */
    public static Page page(Brief brief, Plan plan, Wording words) {
        return LetterPage.of(new HandOverLetter(brief, plan, words).letter(), brief, words);
    }

    /** The hand-over as text. */
    public static String text(Brief brief, Plan plan, Wording words) {
        return LetterText.of(new HandOverLetter(brief, plan, words).letter());
    }

    /** The slip for the owner alone. */
    public static Page slip(Brief brief, Wording words) {
        List<String> points = new ArrayList<>();
        brief.order().overridePlace().ifPresent(place -> points.add(words.of("override-slip.place", place)));
        points.add(words.of("hand-over.override-how"));
        Letter letter = new Letter(
                words.of("override-slip.title"),
                List.of(
                        new Letter.Block.Beware(
                                words.of("override-slip.not-in-the-car"), List.of(words.of("override-slip.keep"))),
                        new Letter.Block.Points("", points)));
        return LetterPage.of(letter, brief, words);
    }

    /** Whether there is a place that only the owner should know. */
    public static boolean hasSlip(Brief brief) {
        return brief.order().hiddenPlace().isPresent();
    }

    private Letter letter() {
        Wishes wishes = new Wishes(brief, plan, words);
        List<Letter.Block> blocks = new ArrayList<>();
        add(blocks, "hand-over.fitted", wishes.granted());
        add(blocks, "hand-over.use", use());
        add(blocks, "hand-over.trouble", trouble());
        List<String> not = new ArrayList<>(wishes.refused());
        wishes.waiting().forEach(wish -> not.add(words.of("hand-over.not-yet", wish)));
        add(blocks, "hand-over.not-done", not);
        ToSign.of(brief, words).ifPresent(blocks::add);
        add(blocks, "hand-over.standing", List.of(words.of(Standby.phrase(brief, plan))));
        blocks.add(new Letter.Block.Beware(
                words.of("hand-over.beware"),
                List.of(
                        words.of("hand-over.beware-service"),
                        words.of("hand-over.beware-battery"),
                        words.of("caution.maker-law-licence"))));
        return new Letter(words.of("hand-over.title"), blocks);
    }

    private void add(List<Letter.Block> blocks, String heading, List<String> points) {
        if (!points.isEmpty()) {
            blocks.add(new Letter.Block.Points(words.of(heading), points));
        }
    }

    private List<String> use() {
        Behaviour behaviour = brief.kit().behaviour();
        List<String> points = new ArrayList<>();
        points.add(words.of("hand-over.arm", behaviour.armingDelay().high().toString()));
        points.add(words.of("hand-over.disarm"));
        behaviour
                .soundingTime()
                .ifPresent(time ->
                        points.add(words.of("hand-over.sounds", time.high().toString())));
        if (HandOverLetter.hasSlip(brief)) {
            points.add(words.of("hand-over.override-how"));
            points.add(words.of("hand-over.override-slip"));
        }
        return points;
    }

    private List<String> trouble() {
        List<String> points = new ArrayList<>();
        points.add(words.of("hand-over.flat-battery"));
        points.add(words.of("hand-over.lost-remote"));
        if (brief.order().wishes().contains(Wish.STARTER_INTERRUPT)) {
            points.add(words.of("hand-over.does-not-start"));
        }
        return points;
    }
}
