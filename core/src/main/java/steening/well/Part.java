package steening.well;

/**
 * The key of one part of a well.
 *
 * @param name unique among the parts
 * @param of what it is a part of
 * @param empty the part before anything has happened
 */
public record Part<T>(String name, Of of, T empty) {
  /** Whether a part stays when the rig moves over and a new hole is begun under the same job. */
  public enum Of {
    /** It stays: where, for whom, by whose leave, to what plan. */
    JOB,
    /** It begins anew: all that was drilled, set, poured, measured and sampled. */
    HOLE
  }

  /** A part that stays with the job, whatever hole is drilled under it. */
  public static <T> Part<T> ofJob(String name, T empty) {
    return new Part<>(name, Of.JOB, empty);
  }

  /** A part that every hole has for itself. */
  public static <T> Part<T> ofHole(String name, T empty) {
    return new Part<>(name, Of.HOLE, empty);
  }
}
