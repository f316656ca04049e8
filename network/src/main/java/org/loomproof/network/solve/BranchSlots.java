package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.List;

/** Which slots of the elimination each branch adds to, and which branches add to each slot. Immutable, made once a network. */
final class BranchSlots {
    /** Slots, with one more for each branch that its currents into the chassis and the like may go to: its sink. */
    final int withSinks;

    /** Per branch, the slot of its conductance, of the current into its first end and of that into its second. */
    final int[] conductance;

    final int[] intoFirst;
    final int[] intoSecond;

    /** Where each slot's branches begin in {@link #adding}, with one more at the end. */
    final int[] addingStart;

    /** Branches; for a current into the first end the complement of the number. */
    final int[] adding;

    /** Slots of joins that branches add to, and the ranks they join. */
    final int[] joins;

    final int[] joinLow;
    final int[] joinHigh;

    BranchSlots(EliminationScheme scheme, int[] from, int[] to) {
        int slots = scheme.slotCount();
        withSinks = slots + from.length;
        conductance = new int[from.length];
        intoFirst = new int[from.length];
        intoSecond = new int[from.length];
        List<IntList> lists = new ArrayList<>();
        for (int slot = 0; slot < withSinks; slot++) {
            lists.add(new IntList());
        }
        for (int b = 0; b < from.length; b++) {
            int sink = slots + b;
            conductance[b] = scheme.slotBetween(from[b], to[b], sink);
            intoFirst[b] = scheme.slotInto(from[b], to[b], sink);
            intoSecond[b] = scheme.slotInto(to[b], from[b], sink);
            lists.get(conductance[b]).add(b);
            lists.get(intoFirst[b]).add(~b);
            lists.get(intoSecond[b]).add(b);
        }
        addingStart = new int[slots + 1];
        IntList all = new IntList();
        for (int slot = 0; slot < slots; slot++) {
            all.addAll(lists.get(slot).toArray());
            addingStart[slot + 1] = all.size();
        }
        adding = all.toArray();
        IntList found = new IntList();
        IntList lows = new IntList();
        IntList highs = new IntList();
        for (int low = 0; low < scheme.rankCount; low++) {
            for (int m = scheme.memberStart[low]; m < scheme.memberStart[low + 1]; m++) {
                int slot = scheme.joinSlots() + m;
                if (addingStart[slot + 1] > addingStart[slot]) {
                    found.add(slot);
                    lows.add(low);
                    highs.add(scheme.members[m]);
                }
            }
        }
        joins = found.toArray();
        joinLow = lows.toArray();
        joinHigh = highs.toArray();
    }
}
