package steening.stage.decommissioning;

import steening.job.JobInSteps;
import steening.stage.EverydayWell;

/** Own scenario: the everyday well's first hole, lost at 88 ft with the tools in its lowest 22 ft. Invented. */
public final class LostHole {
  private LostHole() {}

  public static JobInSteps givenUp() {
    return EverydayWell.setUp()
        .then("hole", "from", "0 ft", "to", "88 ft", "diameter", "7 7/8 in")
        .then("moved-over", "depth", "88 ft", "why", "lost-tools", "distance", "12 ft", "direction", "north-east");
  }

  static JobInSteps decided() {
    return givenUp().then("decommissioning", "hole", "1", "why", "given-up", "casing", "none");
  }

  static JobInSteps plug(JobInSteps job, String from, String to, String material, int bags, String... more) {
    String[] body = new String[10 + more.length];
    String[] least = {"hole", "1", "from", from, "to", to, "material", material, "bags", Integer.toString(bags)};
    System.arraycopy(least, 0, body, 0, 10);
    System.arraycopy(more, 0, body, 10, more.length);
    return job.then("plug", body);
  }

  /** 50 ft of cement take 14.4 sacks, 35 ft of chips 17.2 bags. */
  public static JobInSteps plugged() {
    JobInSteps cement = plug(decided(), "38 ft", "88 ft", "neat-cement", 15, "water", "78 gal", "by", "tremie")
        .then("plug-tape", "hole", "1", "reading", "36.5 ft", "from", "ground");
    return plug(cement, "3 ft", "36.5 ft", "chips", 17, "minutes", "70 min")
        .then("plug-tape", "hole", "1", "reading", "2.0 ft", "from", "ground");
  }
}
