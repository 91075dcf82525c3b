package steening.well;

import steening.quantity.Length;

/**
 * One interval of the driller's log.
 *
 * @param from upper end below ground
 * @param to lower end
 * @param material what it is mostly made of
 * @param looks its colour and so on, and the driller's own words
 * @param waterBearing the driller's judgement
 * @param entry the id of the entry that says so
 */
public record Stratum(
    Length from, Length to, Material material, Looks looks, boolean waterBearing, String entry) {}
