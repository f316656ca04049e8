package org.loomproof.workshop.trade.template;

import java.util.List;
import java.util.Set;

/**
 * How current usually runs in a circuit of one role that switches in one way, as text in the path language of the sheet.
 *
 * @param role the circuit's role, as written on a sheet
 * @param rest the levels at rest it stands for, as written on a sheet ({@code voltage} for a stated number of volts)
 * @param active the level when active
 * @param keyAt the key positions that make it active; empty where the key has nothing to do with it
 * @param path the text under {@code path}
 * @param branches the text under {@code branches}; may be empty
 * @param eachFollower branches that are written once for everything the circuit follows; may be empty
 */
public record RoleTemplate(
        String role,
        Set<String> rest,
        String active,
        List<String> keyAt,
        String path,
        String branches,
        String eachFollower) {
    public RoleTemplate {
        rest = Set.copyOf(rest);
        keyAt = List.copyOf(keyAt);
    }

    /**
     * Something a person operates to make a circuit active.
     *
     * @param id its name on the sheet
     * @param closedAt the positions in which its contact is closed
     */
    public record Follower(String id, List<String> closedAt) {
        public Follower {
            closedAt = List.copyOf(closedAt);
        }
    }

    /** True when the template says nothing without something to follow. */
    public boolean needsFollowers() {
        return !eachFollower.isEmpty();
    }

    /**
     * The paths of one circuit, as a text with {@code path} and {@code branches}.
     *
     * @param circuit the circuit's id
     * @param rest its level at rest as stated, such as {@code 5 V}
     * @param followers what it follows
     */
    public String text(String circuit, String rest, List<Follower> followers) {
        StringBuilder text = new StringBuilder("path:").append(path);
        StringBuilder all = new StringBuilder(branches);
        if (needsFollowers()) {
            for (Follower follower : followers) {
                all.append(eachFollower
                        .replace("$follower", follower.id())
                        .replace("$closed-at", follower.closedAt().toString()));
            }
        }
        if (!all.isEmpty()) {
            text.append("branches:\n").append(all);
        }
        return text.toString().replace("$circuit", circuit).replace("$rest", rest);
    }
}
