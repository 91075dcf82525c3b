package steening.stage;

import java.util.List;
import steening.job.JobInSteps;

/** Own scenario: the everyday well of 142 ft, planned, drilled and cased as a crew writes it down. Invented. */
public final class EverydayWell {
  private static final List<String> JOINTS =
      List.of("19.98 ft", "20.02 ft", "20.01 ft", "19.97 ft", "20.03 ft", "19.99 ft");

  private EverydayWell() {}

  public static JobInSteps planned() {
    return JobInSteps.nothing().then("plan",
        "hole-diameter", "7 7/8 in", "hole-depth", "142 ft", "casing-outside", "4.5 in", "casing-wall", "0.214 in",
        "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft", "sump", "2 ft", "slot", "0.020 in",
        "open-area", "8.48 in2/ft", "pack-top", "115 ft", "chips-top", "110 ft", "grout-top", "0 ft", "rate", "12 gpm");
  }

  public static JobInSteps setUp() {
    return planned().then("drilling", "bit", "7 7/8 in", "rod", "2.875 in", "pump-rate", "110 gpm");
  }

  /** Seven rods and a bit with its sub; the last two feet are drilled on the kelly. */
  public static JobInSteps rods() {
    JobInSteps job = setUp();
    for (int rod = 1; rod <= 7; rod++) {
      job = job.then("rod", "number", Integer.toString(rod), "length", "20 ft", "depth", 20 * rod + " ft");
    }
    return job;
  }

  public static JobInSteps logged() {
    return logged(rods());
  }

  public static JobInSteps logged(JobInSteps job) {
    return job
        .then("log", "from", "0 ft", "to", "3 ft", "material", "topsoil")
        .then("log", "from", "3 ft", "to", "38 ft", "material", "sandy-clay")
        .then("log", "from", "38 ft", "to", "61 ft", "material", "clay", "colour", "blue")
        .then("log", "from", "61 ft", "to", "78 ft", "material", "silty-sand", "colour", "gray", "description", "fine")
        .then("log", "from", "78 ft", "to", "118 ft", "material", "clay")
        .then("log", "from", "118 ft", "to", "138 ft", "material", "coarse-sand", "water", "yes")
        .then("log", "from", "138 ft", "to", "142 ft", "material", "clay");
  }

  public static JobInSteps drilled() {
    return logged()
        .then("hole", "from", "0 ft", "to", "142 ft", "diameter", "7 7/8 in")
        .then("mud", "weight", "8.8 lb/gal", "funnel", "38 s/qt", "sand", "1 %", "pit-drop", "2 in");
  }

  public static JobInSteps lowered() {
    return lowered(drilled());
  }

  /** Sump, screen and six joints. */
  public static JobInSteps lowered(JobInSteps job) {
    return joints(job.then("sump", "length", "2.00 ft").then("screen", "length", "10.00 ft", "slot", "0.020 in"));
  }

  public static JobInSteps joints(JobInSteps job) {
    JobInSteps more = job;
    for (int i = 0; i < JOINTS.size(); i++) {
      more = more.then("joint", "number", Integer.toString(i + 1), "overall", JOINTS.get(i));
    }
    return more;
  }

  public static JobInSteps cased() {
    return set(lowered());
  }

  public static JobInSteps set(JobInSteps job) {
    return job.then("cut-piece", "length", "6.50 ft")
        .then("string-set", "stick-up", "1.5 ft", "loaded", "8", "left", "1", "outside", "4.5 in", "wall", "0.214 in");
  }
}
