package org.loomproof.pages.web;

import io.javalin.http.ContentType;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.Attachments;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.Picture;

/** Check-in: how the vehicle came, before any panel comes off, signed by the customer. */
final class CheckInPages {

    /** What is tried, each found working, not working, or not there. */
    static final List<String> TRIED = List.of(
            "doors",
            "windows",
            "wipers",
            "lamps-front",
            "lamps-rear",
            "indicators",
            "horn",
            "radio",
            "heater",
            "starter");

    private static final List<String> NOTED =
            List.of("warning-lamps", "volts-rest", "volts-cranking", "sleep-milliamps", "notes");
    private static final String SIGNATURE = "signature";
    private static final String PHOTO = "photo";
    private static final String DRAWN = "data:image/png;base64,";
    private static final int MOST_SIGNATURE_TEXT = 400_000;

    private final Shop shop;

    CheckInPages(Shop shop) {
        this.shop = shop;
    }

    void show(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> show(visit, HttpStatus.OK, job, Map.of(), "", ""));
    }

    void save(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> save(visit, job));
    }

    private void save(Visit visit, Card job) {
        Map<String, String> fields = new HashMap<>(visit.form(NOTED));
        TRIED.forEach(thing -> fields.put("works-" + thing, visit.form("works-" + thing)));
        fields.put("signed-by", visit.form("signed-by"));
        Optional<byte[]> drawn = drawn(visit.raw(SIGNATURE));
        List<byte[]> photos = new ArrayList<>();
        String problem = photos(visit, photos);
        if (problem.isEmpty() && fields.get("signed-by").isEmpty()) {
            problem = "pages.check-in.not-signed";
        }
        if (!problem.isEmpty()) {
            String kept = drawn.isPresent() ? visit.raw(SIGNATURE) : "";
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, job, fields, problem, kept);
            return;
        }
        fields.put("checked-in", shop.today());
        drawn.ifPresent(bytes -> visit.book().attachments().add(job.id(), visit.author(), SIGNATURE, bytes));
        photos.forEach(bytes -> visit.book().attachments().add(job.id(), visit.author(), PHOTO, bytes));
        JobPages.save(visit, "check-in-again", job, "job.checked-in", fields);
    }

    /** Takes the pictures that were handed in; the key of what is wrong with them, else empty text. */
    private static String photos(Visit visit, List<byte[]> into) {
        for (UploadedFile file : visit.context().uploadedFiles("photos")) {
            if (file.size() > Picture.MOST_BYTES) {
                return "pages.check-in.picture-too-large";
            }
            byte[] bytes = bytes(file);
            if (bytes.length > 0) {
                if (Picture.in(bytes).isEmpty()) {
                    return "pages.check-in.no-picture";
                }
                into.add(bytes);
            }
        }
        return "";
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readNBytes(Picture.MOST_BYTES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The picture of a signature that a form brought; nothing when none was drawn. */
    static Optional<byte[]> drawn(String text) {
        if (!text.startsWith(DRAWN) || text.length() > MOST_SIGNATURE_TEXT) {
            return Optional.empty();
        }
        try {
            byte[] bytes = Base64.getDecoder().decode(text.substring(DRAWN.length()));
            return Optional.of(bytes).filter(b -> Picture.in(b).equals(Optional.of(Picture.PNG)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** @param signature as it was drawn on a form that was refused, so that nobody has to sign twice */
    private static void show(
            Visit visit, HttpStatus status, Card job, Map<String, String> fields, String problem, String signature) {
        List<Attachments.Label> pictures = pictures(visit, job.id()).toList();
        visit.show(
                status,
                "check-in",
                Map.of(
                        "job", job,
                        "entries", job.entries().with(fields),
                        "tried", TRIED,
                        "pictures", pictures,
                        "problem", problem,
                        "signature", signature));
    }

    /** What was handed in at check-in and no more: pictures of the work show where things are. */
    private static Stream<Attachments.Label> pictures(Visit visit, CardId job) {
        return visit.book().attachments().of(job).stream()
                .filter(label -> label.label().equals(PHOTO) || label.label().equals(SIGNATURE));
    }

    /** A photo or signature. Its kind is what its bytes say, and it is never shown as a page. */
    void picture(Context context) {
        Visit visit = Visit.of(context);
        Optional<CardId> id = CardId.in(visit.part("picture"));
        Optional<byte[]> bytes = visit.card()
                .flatMap(job -> pictures(visit, job)
                        .filter(label -> Optional.of(label.id()).equals(id))
                        .findFirst()
                        .flatMap(label -> visit.book().attachments().open(job, label.id())));
        Optional<Picture> kind = bytes.flatMap(Picture::in);
        if (kind.isEmpty()) {
            visit.refuse(HttpStatus.NOT_FOUND);
        } else {
            context.contentType(kind.orElseThrow().mediaType()).result(bytes.orElseThrow());
        }
    }

    /** Text of a kind that browsers do not guess about. */
    static void plain(Context context, byte[] bytes) {
        context.contentType(ContentType.TEXT_PLAIN.getMimeType() + "; charset=utf-8")
                .result(bytes);
    }
}
