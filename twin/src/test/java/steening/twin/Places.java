package steening.twin;

import java.util.ArrayList;
import java.util.List;
import steening.job.Stages;
import steening.reckoning.Reckoning;
import steening.stage.Stage;

/** Every address the desk answers. A page with an address of its own belongs in one of these two lists. */
final class Places {
  private Places() {}

  /** Without a well. */
  static List<String> ofTheFirm() {
    List<String> places = new ArrayList<>(List.of("/", "/new", "/reckon", "/api/reckon"));
    for (Reckoning reckoning : Stages.reckonings()) places.add("/reckon/" + reckoning.name());
    return places;
  }

  /** @param well the address of a well: {@code /well/} and its id */
  static List<String> of(String well) {
    List<String> places = new ArrayList<>(List.of(well, well + "/journal", well + "/load-list", well + "/tailgate", well + "/earlier-wells"));
    for (Stage stage : Stages.all()) places.add(well + "/" + stage.name());
    return places;
  }

  /** A hole that was given up, where the job has one. */
  static String firstHole(String well) {
    return well + "/hole/1";
  }
}
