package steening.stage;

import steening.job.JobInSteps;

/** The everyday well of the scenarios from the pack to the end of the pumping test, entry by entry. Own scenario. */
public final class TestedWell {
  private TestedWell() {}

  /** Planned, with what the neighbours' wells give. */
  public static JobInSteps planned() {
    return JobInSteps.nothing()
        .then("site", "address", "14 Plover Lane", "neighbours-specific-capacity", "0.85 gpm/ft", "neighbours-spread",
            "1.6")
        .then("plan", "hole-diameter", "7 7/8 in", "hole-depth", "142 ft", "casing-outside", "4.5 in", "casing-wall",
            "0.214 in",
            "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft", "sump", "2 ft", "slot", "20 slot",
            "pack-top", "115 ft", "chips-top", "110 ft", "grout-top", "0 ft", "rate", "12 gpm");
  }

  /** Drilled, the string not yet set: the stick-up is not known. */
  public static JobInSteps drilled() {
    JobInSteps job = planned()
        .then("hole", "from", "0 ft", "to", "142 ft", "diameter", "7 7/8 in")
        .then("sump", "length", "2.00 ft")
        .then("screen", "length", "10.00 ft", "slot", "0.020 in");
    String[] joints = {"19.98", "20.02", "20.01", "19.97", "20.03", "19.99"};
    for (int i = 0; i < joints.length; i++) job =
        job.then("joint", "number", String.valueOf(i + 1), "overall", joints[i] + " ft");
    return job.then("cut-piece", "length", "6.50 ft");
  }

  /** String set with its bottom at 137 ft, the pack sounded at 115 ft. */
  public static JobInSteps packed() {
    return drilled()
        .then("string-set", "stick-up", "1.5 ft", "outside", "4.5 in", "wall", "0.214 in")
        .then("pack-bags", "bags", "14", "weight", "50 lb")
        .then("pack-tape", "reading", "115 ft", "from", "ground");
  }

  /** Static level 31.0 ft from the top of casing, and the pump started. */
  public static JobInSteps pumping(String rate) {
    return packed().then("static-level", "level", "31.0 ft", "from", "top-of-casing")
        .then("pumping-start", "rate", rate);
  }

  /** Pumped at 12 gpm for four hours. */
  public static JobInSteps tested() {
    return levels(pumping("12 gpm")).then("pumping-stop");
  }

  /** The levels of the test, from the top of casing. */
  public static JobInSteps levels(JobInSteps job) {
    return level(level(level(job, 10, "41.58"), 100, "42.90"), 240, "43.40");
  }

  public static JobInSteps level(JobInSteps job, int minutes, String feet) {
    return job.then("pumping-level", "minutes", minutes + " min", "level", feet + " ft", "from", "top-of-casing");
  }
}
