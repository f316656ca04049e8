package org.loomproof.network.solve;

import org.jspecify.annotations.Nullable;
import org.loomproof.network.netlist.Setting;

/** The setting in force and the parts in which it differs from the one before: looked through once for all who ask. */
final class SettingChange {
    private final int[] parts;
    private int count;
    private @Nullable Setting before;
    private @Nullable Setting now;

    SettingChange(int partCount) {
        parts = new int[partCount];
    }

    /** A setting comes into force; before the first of all every part counts as differing. */
    void to(Setting setting) {
        before = now;
        now = setting;
        count = list(setting, before, parts);
    }

    /** How many parts differ from before. */
    int count() {
        return count;
    }

    /** One of these parts, by its place in the network; they ascend. */
    int part(int at) {
        return parts[at];
    }

    /**
     * Lists the parts in which a setting, as a rule the one in force, differs from another, as a rule the one before.
     *
     * @param other null for none: every part
     * @param list where the parts are put, ascending
     * @return how many
     */
    @SuppressWarnings("ReferenceEquality") // only for the very settings that were looked through is the answer at hand
    int since(Setting setting, @Nullable Setting other, int[] list) {
        if (setting != now || other != before) {
            return list(setting, other, list);
        }
        System.arraycopy(parts, 0, list, 0, count);
        return count;
    }

    private static int list(Setting setting, @Nullable Setting other, int[] list) {
        int found = 0;
        for (int part = next(setting, other, 0, list.length); part >= 0; ) {
            list[found++] = part;
            part = next(setting, other, part + 1, list.length);
        }
        return found;
    }

    private static int next(Setting setting, @Nullable Setting other, int from, int partCount) {
        if (from >= partCount) {
            return -1;
        }
        return other == null ? from : setting.findDifference(other, from);
    }
}
