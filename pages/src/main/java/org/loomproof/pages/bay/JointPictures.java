package org.loomproof.pages.bay;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.Attachments;
import org.loomproof.book.store.OpenBook;
import org.loomproof.papers.record.Photo;
import org.loomproof.papers.record.PhotoReader;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.words.Messages;

/** Pictures of the joints of a job, sealed with it: as small as the record shows them, without place, time or device in the file. */
public final class JointPictures {

    /** Twice what the largest plans have joints. */
    private static final int MOST = 300;

    private static final String LABEL = "joint ";

    /** Large pictures are opened one after another, whoever sends them. */
    private static final Object ONE_AT_A_TIME = new Object();

    private final OpenBook book;
    private final CardId job;

    public JointPictures(OpenBook book, CardId job) {
        this.book = book;
        this.job = job;
    }

    /**
     * One of them.
     *
     * @param id its name
     * @param at when it was handed in
     * @param who by whom
     * @param of the sum of the joint that it shows
     * @param called what that was called then
     */
    public record Kept(CardId id, Instant at, Author who, String of, String called) {}

    /** All of them, the oldest first. */
    public List<Kept> all() {
        return book.attachments().of(job).stream()
                .filter(label -> label.label().startsWith(LABEL))
                .map(JointPictures::kept)
                .toList();
    }

    private static Kept kept(Attachments.Label label) {
        String[] parts = label.label().split(" ", 3);
        return new Kept(label.id(), label.at(), label.who(), parts[1], parts[2]);
    }

    /** True while there is room for one more. */
    public boolean hasRoom() {
        return all().size() < MOST;
    }

    /** Keeps a picture of a joint; false when the bytes are none that can be read. */
    public boolean add(Author who, BayJob bay, PlacedJoint joint, byte[] bytes) {
        Optional<Photo> photo;
        synchronized (ONE_AT_A_TIME) {
            photo = PhotoReader.read(joint.name(), bytes);
        }
        return photo.flatMap(small ->
                        book.attachments().add(job, who, LABEL + bay.sum(joint) + " " + joint.name(), small.bytes()))
                .isPresent();
    }

    /** The bytes of one, a JPEG. */
    public Optional<byte[]> open(CardId id) {
        return find(id).flatMap(kept -> book.attachments().open(job, id));
    }

    /** One by its name. */
    public Optional<Kept> find(CardId id) {
        return all().stream().filter(kept -> kept.id().equals(id)).findFirst();
    }

    /** Takes one away for good. */
    public void drop(Kept gone) {
        book.attachments().drop(job, label -> label.id().equals(gone.id()));
    }

    /** The pictures for the record of a plan: named by the joint as it is called there and the day, or as of an earlier plan. */
    public List<Photo> photos(BayJob bay, Messages messages) {
        Map<String, String> names = new HashMap<>();
        bay.joints().forEach(joint -> names.put(bay.sum(joint), joint.name()));
        return all().stream()
                .flatMap(kept -> open(kept.id()).stream().flatMap(bytes -> {
                    String joint = Optional.ofNullable(names.get(kept.of()))
                            .orElseGet(() -> messages.text("pages.joints.earlier", kept.called()));
                    String day = LocalDate.ofInstant(kept.at(), ZoneId.systemDefault())
                            .toString();
                    return PhotoReader.kept(joint + ", " + day, bytes).stream();
                }))
                .toList();
    }
}
