package org.loomproof.intake.fact;

import org.loomproof.intake.decode.Origin;

/**
 * Something that notes say of the vehicle as a whole.
 *
 * @param key what it is about; as in a sheet's {@code vehicle} where a sheet has such a key
 * @param value what is said, in the words of a sheet
 * @param origin where it stands
 * @param written as it stands there
 */
public record VehicleFact(String key, String value, Origin origin, String written) {}
