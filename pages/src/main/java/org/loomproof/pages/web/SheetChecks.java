package org.loomproof.pages.web;

import java.util.List;
import java.util.Set;
import org.loomproof.book.card.Card;
import org.loomproof.pages.bay.BayJobs;
import org.loomproof.pages.bay.SheetCheck;
import org.loomproof.pages.desk.Confirmations;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.WorkLog;
import org.loomproof.workshop.brief.sheet.CircuitId;

/**
 * What meters say of a job's sheet: kept in the job's log as readings come, since the sheet may be put right later, and counted
 * beside the shared sheet once the work in the car is done.
 */
final class SheetChecks {

    private final Shop shop;
    private final BayJobs bays;

    SheetChecks(Shop shop, BayJobs bays) {
        this.shop = shop;
        this.bays = bays;
    }

    /** After these entries were written. */
    void noted(Visit visit, Card job, List<Entry> entries) {
        if (!Confirmations.concern(job)) {
            return;
        }
        Set<CircuitId> touched = SheetCheck.touched(entries, new WorkLog(visit.book(), job.id()).all());
        if (!touched.isEmpty()) {
            check(visit, job, touched);
            if (JobStep.BAY.isDone(job)) {
                confirmations(visit).count(job, visit.author());
            }
        }
    }

    /** When the work in the car is done: every circuit once more, so that nothing is missing from the tally. */
    void bayDone(Visit visit, Card job) {
        if (!Confirmations.concern(job)) {
            return;
        }
        List<Entry> all = new WorkLog(visit.book(), job.id())
                .standing().stream().map(Noted::entry).toList();
        check(visit, job, SheetCheck.touched(all, List.of()));
        confirmations(visit).count(job, visit.author());
    }

    private void check(Visit visit, Card job, Set<CircuitId> circuits) {
        WorkLog log = new WorkLog(visit.book(), job.id());
        bays.of(job, visit.book())
                .map(bay -> new SheetCheck(bay, confirmations(visit).entries(job)))
                .map(check ->
                        check.changed(circuits, log.standing(), shop.clock().instant()))
                .filter(changed -> !changed.isEmpty())
                .ifPresent(changed -> log.add(visit.author(), changed));
    }

    private static Confirmations confirmations(Visit visit) {
        return new Confirmations(visit.book(), visit.messages());
    }
}
