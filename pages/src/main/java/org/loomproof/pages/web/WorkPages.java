package org.loomproof.pages.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.desk.Runs;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.EntryText;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.WorkLog;

/**
 * Takes in what was noted at a job. A page of ours sends whole entries, each a line of JSON under {@code line}; a form without script
 * sends under {@code entry} what is always so, under {@code with} what was chosen, under {@code field.NAME} what was typed, and under
 * {@code id} the names that the form was made with, so that a form that is sent twice is written once.
 */
final class WorkPages {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String FIELD = "field.";
    private static final int MOST_ENTRIES = 500;

    private final Shop shop;
    private final SheetChecks checks;

    WorkPages(Shop shop, SheetChecks checks) {
        this.shop = shop;
        this.checks = checks;
    }

    /** What the device asks before it sends what it kept: the mark of whoever is signed in. */
    void mark(Context context) {
        Visit visit = Visit.of(context);
        context.json("{\"mark\":\"" + visit.formMark() + "\",\"person\":\""
                + visit.person().id() + "\"}");
    }

    void note(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            List<String> lines = context.formParams("line");
            if (lines.isEmpty()) {
                noteForm(visit, job);
            } else {
                noteLines(visit, job, lines);
            }
        });
    }

    private void noteLines(Visit visit, Card job, List<String> lines) {
        List<Optional<Entry>> read = lines.stream().map(WorkPages::given).toList();
        if (lines.size() > MOST_ENTRIES) {
            visit.refuse(HttpStatus.CONTENT_TOO_LARGE);
        } else if (add(visit, job, read.stream().flatMap(Optional::stream).toList())) {
            visit.context()
                    .json(JSON.createObjectNode()
                            .set(
                                    "refused",
                                    JSON.valueToTree(read.stream()
                                            .map(entry -> entry.isPresent() ? 0 : 1)
                                            .toList()))
                            .toString());
        } else {
            visit.refuse(HttpStatus.NOT_FOUND);
        }
    }

    private void noteForm(Visit visit, Card job) {
        List<Entry> entries = new ArrayList<>();
        List<String> given = visit.context().formParams("entry");
        List<String> ids = visit.context().formParams("id");
        for (int k = 0; k < given.size(); k++) {
            Optional<ObjectNode> node = node(given.get(k));
            if (node.isEmpty() || k >= ids.size()) {
                visit.refuse(HttpStatus.UNPROCESSABLE_CONTENT);
                return;
            }
            ObjectNode entry = node.orElseThrow();
            if (k == 0) {
                node(visit.form("with")).ifPresent(entry::setAll);
                fields(visit).forEach(entry::put);
            }
            entry.put("id", ids.get(k)).put("when", shop.clock().millis());
            Optional<Entry> read = given(entry.toString());
            if (read.isEmpty()) {
                visit.refuse(HttpStatus.UNPROCESSABLE_CONTENT);
                return;
            }
            entries.add(read.orElseThrow());
        }
        String back = visit.form("back");
        if (add(visit, job, entries)) {
            visit.go(back.startsWith("/jobs/" + job.id() + "/") ? back : "/jobs/" + job.id());
        } else {
            visit.refuse(HttpStatus.NOT_FOUND);
        }
    }

    /** What a device may write; what comes of its readings the book says itself, and what was used goes over the shelf. */
    private static Optional<Entry> given(String text) {
        return EntryText.read(text)
                .filter(entry ->
                        !(entry.work() instanceof Work.SheetChecked) && !(entry.work() instanceof Work.PartUsed));
    }

    private static Map<String, String> fields(Visit visit) {
        Map<String, String> fields = new HashMap<>();
        visit.context().formParamMap().keySet().forEach(name -> {
            if (name.startsWith(FIELD)) {
                fields.put(name.substring(FIELD.length()), visit.form(name));
            }
        });
        return fields;
    }

    private static Optional<ObjectNode> node(String text) {
        try {
            JsonNode read = JSON.readTree(text);
            return read instanceof ObjectNode node ? Optional.of(node) : Optional.empty();
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }

    /** A deviation takes the verdict away before it is written down: should that fail, a plan too many is proven again. */
    private boolean add(Visit visit, Card job, List<Entry> entries) {
        WorkLog log = new WorkLog(visit.book(), job.id());
        boolean deviates = entries.stream().anyMatch(entry -> entry.work() instanceof Work.Deviation);
        if (deviates) {
            List<String> known = log.all().stream().map(Noted::id).toList();
            if (entries.stream()
                    .anyMatch(entry -> entry.work() instanceof Work.Deviation && !known.contains(entry.id()))) {
                takeVerdictAway(visit, job);
            }
        }
        Optional<List<Entry>> written = log.add(visit.author(), entries);
        written.ifPresent(now -> checks.noted(visit, job, now));
        return written.isPresent();
    }

    private static void takeVerdictAway(Visit visit, Card job) {
        visit.book().cards().amend(job, visit.author(), "job.deviated", now -> {
            Map<String, String> changes = new HashMap<>(Runs.overtaken(now));
            changes.put(JobStep.TEST.entry(), "");
            changes.put(JobStep.HAND_OVER.entry(), "");
            changes.put("deviated", "yes");
            return JobStep.withStage(now, changes);
        });
    }
}
