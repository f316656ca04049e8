package org.loomproof.workshop.planner.survey;

import java.util.HashMap;
import java.util.Map;

/** What hangs together: names that are tied to each other, directly or through others. */
final class Ties {

    private final Map<String, String> parents = new HashMap<>();

    void tie(String one, String other) {
        String a = root(one);
        String b = root(other);
        if (!a.equals(b)) {
            parents.put(b, a);
        }
    }

    /** One name for all that hang together with it. */
    String root(String name) {
        String root = name;
        for (String next = parents.get(root); next != null; next = parents.get(root)) {
            root = next;
        }
        return root;
    }
}
