package org.loomproof.network.netlist;

/** Whether a part is whole. */
public enum PartFault {
    NONE,
    /** No current passes any of its pins. */
    BROKEN,
    /** Its two pins are joined by {@link Setting#SHORT_OHMS}. */
    SHORTED
}
