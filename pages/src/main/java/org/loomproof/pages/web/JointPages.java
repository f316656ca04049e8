package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.pages.bay.BayJob;
import org.loomproof.pages.bay.BayJobs;
import org.loomproof.pages.bay.JointPictures;
import org.loomproof.pages.bay.JointPictures.Kept;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Picture;
import org.loomproof.papers.card.JointText;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;

/** Pictures of the joints of a job: taken where the work is, shown with what they are of, and printed in the warranty record. */
final class JointPages {

    private final BayJobs jobs;

    JointPages(BayJobs jobs) {
        this.jobs = jobs;
    }

    void show(Context context) {
        Visit visit = Visit.of(context);
        BayPages.planned(visit, jobs, (job, bay) -> show(visit, HttpStatus.OK, job, bay, ""));
    }

    private static void show(Visit visit, HttpStatus status, Card job, BayJob bay, String problem) {
        visit.show(
                status,
                "bay/joints",
                Map.of(
                        "job",
                        job,
                        "bay",
                        bay,
                        "text",
                        new JointText(new Joints(bay.brief(), bay.plan()), new Wording(visit.messages())),
                        "pictures",
                        pictures(visit, job.id()).all(),
                        "people",
                        new People(visit.book().cards()),
                        "problem",
                        problem));
    }

    void add(Context context) {
        Visit visit = Visit.of(context);
        BayPages.planned(visit, jobs, (job, bay) -> {
            Optional<PlacedJoint> joint = joint(bay, visit.form("joint"));
            if (joint.isEmpty()) {
                visit.refuse(HttpStatus.CONFLICT); // the plan is another by now
                return;
            }
            String problem = keep(visit, pictures(visit, job.id()), bay, joint.orElseThrow());
            if (problem.isEmpty()) {
                String back = visit.form("back");
                visit.go(back.startsWith("/jobs/" + job.id() + "/") ? back : path(job));
            } else {
                show(visit, HttpStatus.UNPROCESSABLE_CONTENT, job, bay, problem);
            }
        });
    }

    private static Optional<PlacedJoint> joint(BayJob bay, String sum) {
        return bay.joints().stream().filter(joint -> bay.sum(joint).equals(sum)).findFirst();
    }

    /** Keeps the picture that was handed in; the key of what is wrong with it, else empty text. */
    private static String keep(Visit visit, JointPictures pictures, BayJob bay, PlacedJoint joint) {
        UploadedFile file = visit.context().uploadedFile("picture");
        if (file == null || file.size() == 0) {
            return "pages.joints.none";
        }
        if (file.size() > Picture.MOST_BYTES) {
            return "pages.check-in.picture-too-large";
        }
        if (!pictures.hasRoom()) {
            return "pages.joints.full";
        }
        try (InputStream in = file.content()) {
            byte[] bytes = in.readNBytes(Picture.MOST_BYTES);
            boolean isKept = Picture.in(bytes).isPresent() && pictures.add(visit.author(), bay, joint, bytes);
            return isKept ? "" : "pages.joints.no-picture";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One of them; only for who may know where things are. */
    void picture(Context context) {
        Visit visit = Visit.of(context);
        Optional<byte[]> bytes = visit.card()
                .flatMap(job -> CardId.in(visit.part("picture"))
                        .flatMap(id -> pictures(visit, job).open(id)));
        if (bytes.isEmpty()) {
            visit.refuse(HttpStatus.NOT_FOUND);
        } else {
            context.contentType(Picture.JPEG.mediaType()).result(bytes.orElseThrow());
        }
    }

    /** Takes one away; that it was there stays in the job's past. */
    void drop(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            JointPictures pictures = pictures(visit, job.id());
            Optional<Kept> gone = CardId.in(visit.form("picture")).flatMap(pictures::find);
            gone.ifPresent(kept -> {
                visit.book()
                        .cards()
                        .amend(
                                job,
                                visit.author(),
                                "job.picture-dropped",
                                now -> Map.of("picture-dropped", kept.called() + ", " + kept.at()));
                pictures.drop(kept);
            });
            visit.go(path(job));
        });
    }

    private static JointPictures pictures(Visit visit, CardId job) {
        return new JointPictures(visit.book(), job);
    }

    private static String path(Card job) {
        return "/jobs/" + job.id() + "/joints";
    }
}
