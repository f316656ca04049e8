package org.loomproof.pages.work;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonTypeName;

/**
 * One thing that was done or seen at a job. Steps, circuits, joints and tests are named as plan and papers name them; texts are what
 * somebody typed. Constructors refuse what no work can be.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "what")
@JsonSubTypes({
    @JsonSubTypes.Type(Work.Tick.class),
    @JsonSubTypes.Type(Work.ReadingTaken.class),
    @JsonSubTypes.Type(Work.SheetChecked.class),
    @JsonSubTypes.Type(Work.JointMade.class),
    @JsonSubTypes.Type(Work.CutEvidence.class),
    @JsonSubTypes.Type(Work.CutMade.class),
    @JsonSubTypes.Type(Work.EndProven.class),
    @JsonSubTypes.Type(Work.TestResult.class),
    @JsonSubTypes.Type(Work.PartUsed.class),
    @JsonSubTypes.Type(Work.MinutesSpent.class),
    @JsonSubTypes.Type(Work.Deviation.class),
    @JsonSubTypes.Type(Work.Complaint.class),
    @JsonSubTypes.Type(Work.ComebackReading.class),
    @JsonSubTypes.Type(Work.CauseFound.class),
    @JsonSubTypes.Type(Work.Undone.class)
})
public sealed interface Work {

    /** The longest text of an entry, in characters. */
    int LONGEST = 2_000;

    /** The longest time of an entry, in minutes. */
    int A_DAY = 24 * 60;

    /**
     * A step ticked off, or its tick taken back.
     *
     * @param step such as {@code bench/P1-3} or {@code bay/ignition}
     * @param of a sum of what was to be done there, so that the tick does not count for another plan; may be empty
     * @param done false when the tick is taken back
     */
    @JsonTypeName("tick")
    record Tick(String step, String of, boolean done) implements Work {
        public Tick {
            named(step);
            bounded(of);
        }
    }

    /**
     * What a meter showed.
     *
     * @param circuit whose wire the meter was on
     * @param end which part of the wire: {@code whole}, {@code before-cut} or {@code after-cut}
     * @param step what the car did, in the words of a file of readings: {@code key on}, {@code opened door}
     * @param position what stood otherwise than at rest, as {@code light-switch=head}; empty when nothing did
     * @param value as it was typed: {@code 12.4}, {@code OL}, {@code ~0}
     * @param unit {@code V}, {@code ohm}, {@code A}; empty where the value says it
     * @param battery volts at the battery's posts at that moment, as typed; may be empty
     */
    @JsonTypeName("reading")
    record ReadingTaken(
            String circuit, String end, String step, String position, String value, String unit, String battery)
            implements Work {
        public ReadingTaken {
            named(circuit);
            named(end);
            named(step);
            bounded(position);
            named(value);
            bounded(unit);
            bounded(battery);
        }
    }

    /**
     * What all readings together came to for an entry of the job's sheet, each time that changed. The book writes it, no device.
     *
     * @param circuit the entry's name
     * @param entry a sum of what it said
     * @param says what the meter says of it
     */
    @JsonTypeName("sheet-checked")
    record SheetChecked(String circuit, String entry, Says says) implements Work {

        /** What a meter says of an entry. */
        public enum Says {
            CONFIRMED,
            /** Another wire, or not all that must be shown was shown. */
            CONTRADICTED,
            /** Not decided, or no longer. */
            OPEN
        }

        public SheetChecked {
            named(circuit);
            named(entry);
        }
    }

    /**
     * A joint that was made.
     *
     * @param step at which step
     * @param joint its name on the papers, such as {@code J3}
     * @param how the kind of joint, as made
     * @param size of the connector or sleeve, as taken
     * @param minutes how long it took; 0 when nobody counted
     */
    @JsonTypeName("joint")
    record JointMade(String step, String joint, String how, String size, double minutes) implements Work {
        public JointMade {
            named(step);
            named(joint);
            bounded(how);
            bounded(size);
            counted(minutes);
        }
    }

    /**
     * One piece of evidence that a wire is the one to be cut.
     *
     * @param circuit to be cut
     * @param piece what sort of evidence, so that two of a sort count once
     * @param seen what was seen, in words or as a reading
     */
    @JsonTypeName("evidence")
    record CutEvidence(String circuit, String piece, String seen) implements Work {
        public CutEvidence {
            named(circuit);
            named(piece);
            bounded(seen);
        }
    }

    /** A wire was cut. */
    @JsonTypeName("cut")
    record CutMade(String circuit) implements Work {
        public CutMade {
            named(circuit);
        }
    }

    /**
     * An end of a cut wire was proven to be what it should be.
     *
     * @param circuit that was cut
     * @param end {@code before-cut} or {@code after-cut}
     * @param seen what proved it
     */
    @JsonTypeName("end")
    record EndProven(String circuit, String end, String seen) implements Work {
        public EndProven {
            named(circuit);
            named(end);
            named(seen);
        }
    }

    /**
     * How a test before hand-over ended.
     *
     * @param test its name in the order of tests
     * @param of the run of the proof whose test it was: another proof asks for it again
     * @param result how it ended
     * @param seen what was seen
     * @param by who answers for a test left out; empty otherwise
     * @param why it was left out; empty otherwise
     */
    @JsonTypeName("test")
    record TestResult(String test, String of, Result result, String seen, String by, String why) implements Work {

        /** How a test ended. */
        public enum Result {
            PASSED,
            FAILED,
            /** Left out by a named person with a reason. */
            WAIVED
        }

        public TestResult {
            named(test);
            named(of);
            bounded(seen);
            if (result == Result.WAIVED) {
                named(by);
                named(why);
            }
            bounded(by);
            bounded(why);
        }
    }

    /**
     * Something that was used besides what the plan takes.
     *
     * @param article in the word of a file of stock: {@code tie}
     * @param size what tells it from others of its kind; empty where there is only one
     * @param count pieces or metres
     * @param lot its lot or serial number; may be empty
     */
    @JsonTypeName("part")
    record PartUsed(String article, String size, double count, String lot) implements Work {

        /** The most that is used of anything at one car. */
        public static final double MOST = 10_000;

        public PartUsed {
            named(article);
            bounded(size);
            bounded(lot);
            if (!(count > 0 && count <= MOST)) {
                throw new IllegalArgumentException("no such count: " + count);
            }
        }
    }

    /**
     * Time spent.
     *
     * @param step on what
     * @param minutes how long
     */
    @JsonTypeName("minutes")
    record MinutesSpent(String step, double minutes) implements Work {
        public MinutesSpent {
            named(step);
            counted(minutes);
        }
    }

    /**
     * Something was done otherwise than planned, so that the plan is no longer proven.
     *
     * @param step where
     * @param planned what the plan says
     * @param done what was done instead
     * @param why the reason
     */
    @JsonTypeName("deviation")
    record Deviation(String step, String planned, String done, String why) implements Work {
        public Deviation {
            named(step);
            bounded(planned);
            named(done);
            bounded(why);
        }
    }

    /**
     * The car came back.
     *
     * @param symptoms the words of what the owner says, with spaces between
     * @param nowAndThen whether it comes and goes
     */
    @JsonTypeName("complaint")
    record Complaint(String symptoms, boolean nowAndThen) implements Work {
        public Complaint {
            named(symptoms);
        }
    }

    /**
     * What a meter on volts showed at a car that came back.
     *
     * @param place a place of the plan, as a file of readings names it: {@code P1-5}, {@code K1 87a}
     * @param step what car and controller did, as a file of readings says it: {@code armed + opened driver-door}
     * @param value as it was typed, or {@code not taken}
     * @param battery volts at the battery's posts at that moment, as typed; may be empty
     */
    @JsonTypeName("comeback-reading")
    record ComebackReading(String place, String step, String value, String battery) implements Work {
        public ComebackReading {
            named(place);
            named(step);
            named(value);
            bounded(battery);
        }
    }

    /**
     * What was behind a comeback, and that it is mended.
     *
     * @param cause what it was
     * @param mended what was done
     */
    @JsonTypeName("cause")
    record CauseFound(String cause, String mended) implements Work {
        public CauseFound {
            named(cause);
            named(mended);
        }
    }

    /**
     * An entry taken back; it stays to be read and counts no more.
     *
     * @param entry the name of the entry
     */
    @JsonTypeName("undone")
    record Undone(String entry) implements Work {
        public Undone {
            named(entry);
        }
    }

    private static void named(String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a text is missing");
        }
        bounded(text);
    }

    private static void bounded(String text) {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException("a text of more than " + LONGEST + " characters");
        }
    }

    private static void counted(double minutes) {
        if (!(minutes >= 0 && minutes <= A_DAY)) {
            throw new IllegalArgumentException("no such time: " + minutes + " minutes");
        }
    }
}
