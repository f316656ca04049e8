package org.loomproof.papers.letter;

import java.util.List;

/**
 * A paper for a reader who is no technician: headed blocks one below the other.
 *
 * @param title what it is
 * @param blocks what it says
 */
record Letter(String title, List<Block> blocks) {

    Letter {
        blocks = List.copyOf(blocks);
    }

    /** One headed piece; the heading may be empty. */
    sealed interface Block {

        String heading();

        /** Sentences, each a point of its own. */
        record Points(String heading, List<String> points) implements Block {
            public Points {
                points = List.copyOf(points);
            }
        }

        /** Lines with an amount each; the last of a sum is strong. */
        record Sums(String heading, List<Row> rows) implements Block {
            public Sums {
                rows = List.copyOf(rows);
            }
        }

        /** Sentences that the reader signs, each a point of its own. */
        record Signed(String heading, List<String> points, List<String> fields) implements Block {
            public Signed {
                points = List.copyOf(points);
                fields = List.copyOf(fields);
            }
        }

        /** What must not be overlooked. */
        record Beware(String heading, List<String> points) implements Block {
            public Beware {
                points = List.copyOf(points);
            }
        }
    }

    /**
     * A line of a sum.
     *
     * @param what it is for
     * @param amount as it is printed
     * @param strong whether it is a total
     */
    record Row(String what, String amount, boolean strong) {}
}
