package org.loomproof.workshop.brief.order;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.sheet.OperableId;

/**
 * What the customer wants and the shop has decided.
 *
 * @param job what the shop calls the job
 * @param wishes what is asked for
 * @param watched the openings to watch; empty unless {@link Wish#WATCH_OPENINGS} is asked for
 * @param overridePlace where the override button goes, when there is one
 * @param ruleSet whose limits for sound and light apply
 * @param longestUnusedDays the longest time the car stands
 * @param shop the shop's choices
 * @param stock the parts the shop has, by the name used in the parts data; empty when not said
 */
public record Order(
        String job,
        Set<Wish> wishes,
        List<OperableId> watched,
        Optional<String> overridePlace,
        RuleSet ruleSet,
        int longestUnusedDays,
        ShopChoices shop,
        Set<String> stock) {

    public Order {
        wishes = Collections.unmodifiableSet(new TreeSet<>(wishes));
        watched = List.copyOf(watched);
        stock = Collections.unmodifiableSet(new TreeSet<>(stock));
    }

    /** Where the button of the override goes, when one is wanted and its place is said: for the owner and the shop alone. */
    public Optional<String> hiddenPlace() {
        return overridePlace.filter(place -> wishes.contains(Wish.OVERRIDE_BUTTON));
    }

    /** Whose limits for sound and light apply. */
    public enum RuleSet {
        UN_R116,
        NONE
    }
}
