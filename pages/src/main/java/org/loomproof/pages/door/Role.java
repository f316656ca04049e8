package org.loomproof.pages.door;

import java.util.Locale;
import java.util.Optional;

/** What somebody is in the shop. */
public enum Role {
    /** Everything, people and forgetting of customers included. */
    OWNER,
    /** The work, hidden places included. */
    TECHNICIAN,
    /** Customers, calls and check-in; no wiring and no hidden place. */
    FRONT_DESK;

    /** True when the role has the right. */
    public boolean has(Right right) {
        return switch (right) {
            case ANYONE, ONESELF, JOBS -> true;
            case WORK -> this != FRONT_DESK;
            case PEOPLE -> this == OWNER;
        };
    }

    /** As it stands on a card and in the message files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The role a word from outside names. */
    public static Optional<Role> in(String word) {
        for (Role role : values()) {
            if (role.word().equals(word)) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }
}
