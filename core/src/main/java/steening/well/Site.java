package steening.well;

import java.time.LocalDate;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;

/** Who wants water, and where. */
public record Site(Optional<Enquiry> enquiry, Optional<Place> place) {
  public static final Part<Site> PART = Part.ofJob("site", new Site(Optional.empty(), Optional.empty()));

  /**
   * The first call.
   *
   * @param need what the water is for
   * @param people who will use it
   * @param wanted the day it is wanted by
   */
  public record Enquiry(
      String caller,
      Optional<String> phone,
      Phrase need,
      Optional<Integer> people,
      Optional<Integer> bedrooms,
      Optional<LocalDate> wanted,
      String entry) {}

  /**
   * Where the well is to stand.
   *
   * @param latitude in degrees, north positive
   * @param longitude in degrees, east positive: in North America it is negative
   * @param elevation of the ground above sea level
   * @param neighboursSpecificCapacity median of the neighbours' wells
   * @param neighboursSpread its geometric standard deviation, a number above one
   */
  public record Place(
      String address,
      Optional<String> county,
      Optional<Quantity> latitude,
      Optional<Quantity> longitude,
      Optional<Length> elevation,
      Optional<Quantity> neighboursSpecificCapacity,
      Optional<Quantity> neighboursSpread,
      String entry) {}

  public Site asked(Enquiry enquiry) {
    return new Site(Optional.of(enquiry), place);
  }

  public Site at(Place place) {
    return new Site(enquiry, Optional.of(place));
  }
}
