package steening.well;

/**
 * The key of one part of a well.
 *
 * @param name unique among the parts
 * @param empty the part before anything has happened
 */
public record Part<T>(String name, T empty) {}
