package org.loomproof.network.solve;

import java.util.Arrays;

/** A set of ranks that is emptied from the lowest on, while higher ones may still be added. */
final class RankSet {
    private final long[] words;
    private int firstWord;

    private RankSet(long[] words) {
        this.words = words;
    }

    /** All ranks below {@code count}. */
    static RankSet full(int count) {
        long[] words = new long[count / Long.SIZE + 1];
        Arrays.fill(words, -1L);
        words[count / Long.SIZE] = (1L << count) - 1;
        return new RankSet(words);
    }

    void add(int rank) {
        int word = rank / Long.SIZE;
        words[word] |= 1L << rank;
        firstWord = Math.min(firstWord, word);
    }

    /** Takes out the lowest; -1 if there is none. */
    int pollFirst() {
        while (firstWord < words.length) {
            long word = words[firstWord];
            if (word != 0) {
                words[firstWord] = word & (word - 1);
                return firstWord * Long.SIZE + Long.numberOfTrailingZeros(word);
            }
            firstWord++;
        }
        return -1;
    }
}
