package org.loomproof.pages.web;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import org.loomproof.pages.desk.Background;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.finished.FaultList;

/** What comes of every fault and slip of a job's plan; tried when a run has left that out. */
final class FaultPages {

    private final Shop shop;

    FaultPages(Shop shop) {
        this.shop = shop;
    }

    void show(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            String part = visit.query("part");
            var faults = new Planning(visit.book(), visit.messages()).faults(job);
            Map<String, Object> shown = new HashMap<>();
            shown.put("job", job);
            shown.put("part", part);
            shown.put("faults", faults);
            shown.put("list", faults.map(kept -> FaultList.of(kept, part)));
            shown.put("progress", background().find(job.id()));
            visit.show("finished/faults", shown);
        });
    }

    /** Has them tried, of the plan that the job has. */
    void begin(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            if (!job.get("run").isEmpty() && background().find(job.id()).isEmpty()) {
                background()
                        .tryFaults(job.id(), visit.author(), visit.messages().locale());
            }
            visit.go("/jobs/" + job.id() + "/faults");
        });
    }

    private Background background() {
        return shop.background().orElseThrow(() -> new IllegalStateException("the book is locked"));
    }
}
