package org.loomproof.pages.door;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.loomproof.book.key.PasswordHash;
import org.loomproof.pages.door.People.Added;

/**
 * Which passwords will do: long enough, and not among the first that somebody would try who knows whose it is. How many tries one
 * takes is estimated by a kept library from its lists of passwords that many use, words, names, dates, rows of keys and repeats
 * (Wheeler, "zxcvbn: low-budget password strength estimation", USENIX Security 2016).
 */
final class Passwords {

    /** A score of three is 10⁸ tries and more; a server that makes guesses wait is asked far fewer. */
    private static final int LEAST_SCORE = 3;

    /** The estimate takes ever longer for long texts, and none so long is within reach of guessing. */
    private static final int ESTIMATED_CHARACTERS = 64;

    /** What somebody tries first here. */
    private static final List<String> OF_THE_TRADE =
            List.of("loomproof", "workshop", "technician", "starter", "siren", "controller", "password");

    private static final Zxcvbn ESTIMATE = new Zxcvbn();

    private Passwords() {}

    /** Whether a password will do for somebody with these names. */
    static Added judged(String password, String name, String signIn) {
        if (password.codePointCount(0, password.length()) < PasswordHash.FEWEST_CHARACTERS) {
            return Added.PASSWORD_TOO_SHORT;
        }
        if (password.length() > PasswordHash.MOST_CHARACTERS) {
            return Added.PASSWORD_TOO_LONG;
        }
        List<String> near = new ArrayList<>(OF_THE_TRADE);
        String folded = name.toLowerCase(Locale.ROOT);
        near.addAll(List.of(folded.split("\\s+")));
        near.add(folded.replaceAll("\\s+", ""));
        near.add(signIn);
        String looked = password.substring(0, Math.min(password.length(), ESTIMATED_CHARACTERS));
        return ESTIMATE.measure(looked, near).getScore() < LEAST_SCORE ? Added.PASSWORD_TOO_EASY : Added.DONE;
    }
}
