package steening.office.command;

import java.util.List;
import java.util.Locale;
import steening.job.WellName;
import steening.office.OfficeShelf;

/** A well as a person names it: by its id, or by a part of its name where only one has it. */
final class WellChoice {
  private WellChoice() {}

  /**
   * The id of the well.
   *
   * @throws WrongUsage where no well is called so, or several are
   */
  static String of(OfficeShelf shelf, String well) {
    if (shelf.wells().contains(well)) return well;
    List<String> named =
        shelf.wells().stream().filter(id -> lower(WellName.of(shelf.journal(id))).contains(lower(well))).toList();
    if (named.size() == 1) return named.get(0);
    throw named.isEmpty()
        ? new WrongUsage("There is no well \"{0}\" here.", "Aquí no hay un pozo «{0}».", well)
        : new WrongUsage(
            "Several wells are called so: {1}.", "Varios pozos se llaman así: {1}.", well, String.join(", ", named));
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
