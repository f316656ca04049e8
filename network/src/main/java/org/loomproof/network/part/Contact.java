package org.loomproof.network.part;

import java.util.Optional;

/**
 * One contact set of a relay. A contact with both throws is a changeover.
 *
 * @param common the moving contact (30)
 * @param make closed when pulled in (87)
 * @param rest closed when released (87a)
 */
public record Contact(Node common, Optional<Node> make, Optional<Node> rest) {
    public Contact {
        if (make.isEmpty() && rest.isEmpty()) {
            throw new IllegalArgumentException("a contact at " + common + " needs a make or a rest throw");
        }
    }

    /** 30, 87 and 87a. */
    public static Contact changeover(Node common, Node make, Node rest) {
        return new Contact(common, Optional.of(make), Optional.of(rest));
    }

    /** 30 and 87 only. */
    public static Contact make(Node common, Node make) {
        return new Contact(common, Optional.of(make), Optional.empty());
    }

    /** 30 and 87a only. */
    public static Contact rest(Node common, Node rest) {
        return new Contact(common, Optional.empty(), Optional.of(rest));
    }
}
