package steening.well;

import steening.quantity.Length;

/**
 * One interval of the driller's log.
 *
 * @param from upper end below ground
 * @param to lower end
 * @param material what it is mostly made of
 * @param description the driller's own words, colour and so on; may be empty
 * @param waterBearing the driller's judgement
 * @param entry the id of the entry that says so
 */
public record Stratum(
    Length from, Length to, Material material, String description, boolean waterBearing, String entry) {}
