package org.loomproof.workshop.brief.order;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.sheet.ElementId;
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
 * @param changes what the vehicle does otherwise afterwards on purpose, at most one of each load or input
 */
public record Order(
        String job,
        Set<Wish> wishes,
        List<OperableId> watched,
        Optional<String> overridePlace,
        RuleSet ruleSet,
        int longestUnusedDays,
        ShopChoices shop,
        Set<String> stock,
        List<DeclaredChange> changes) {

    /** An order of which everything else stays as it was. */
    public Order(
            String job,
            Set<Wish> wishes,
            List<OperableId> watched,
            Optional<String> overridePlace,
            RuleSet ruleSet,
            int longestUnusedDays,
            ShopChoices shop,
            Set<String> stock) {
        this(job, wishes, watched, overridePlace, ruleSet, longestUnusedDays, shop, stock, List.of());
    }

    public Order {
        wishes = Collections.unmodifiableSet(new TreeSet<>(wishes));
        watched = List.copyOf(watched);
        stock = Collections.unmodifiableSet(new TreeSet<>(stock));
        changes = List.copyOf(changes);
    }

    /** The same order with these wishes and watched openings alone. */
    public Order wanting(Set<Wish> others, List<OperableId> openings) {
        return new Order(job, others, openings, overridePlace, ruleSet, longestUnusedDays, shop, stock, changes);
    }

    /** The same order with other changes declared. */
    public Order declaring(List<DeclaredChange> others) {
        return new Order(job, wishes, watched, overridePlace, ruleSet, longestUnusedDays, shop, stock, others);
    }

    /** What is declared to become of a load or an input. */
    public Optional<DeclaredChange> findChange(ElementId of) {
        return changes.stream().filter(change -> change.of().equals(of)).findFirst();
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
