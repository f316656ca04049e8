package org.loomproof.workshop.brief.sheet;

/** What may be done to a factory wire. */
public enum Access {
    MAY_BE_CUT,
    MAY_BE_TAPPED,
    NOT_TO_BE_TOUCHED
}
