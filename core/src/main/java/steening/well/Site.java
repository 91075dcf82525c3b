package steening.well;

import java.time.LocalDate;
import java.util.Optional;
import steening.language.Phrase;
import steening.number.Elementary;
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
      String entry) {
    /** Mean radius of the earth by the International Union of Geodesy and Geophysics (memory). */
    private static final double EARTH_IN_METRES = 6_371_009;

    private static final double RADIANS = 0.017453292519943295;

    /** As the crow flies, good to a thousandth over a county; none where one of the places has no coordinates. */
    public Optional<Length> distanceTo(Place other) {
      if (latitude.isEmpty() || longitude.isEmpty()) return Optional.empty();
      if (other.latitude.isEmpty() || other.longitude.isEmpty()) return Optional.empty();
      double middle = (latitude.get().coherent() + other.latitude.get().coherent()) / 2;
      double north = other.latitude.get().coherent() - latitude.get().coherent();
      double east =
          (other.longitude.get().coherent() - longitude.get().coherent()) * Elementary.cos(middle * RADIANS);
      double degrees = Elementary.sqrt(north * north + east * east);
      return Optional.of(Length.ofMetres(degrees * RADIANS * EARTH_IN_METRES));
    }
  }

  public Site asked(Enquiry enquiry) {
    return new Site(Optional.of(enquiry), place);
  }

  public Site at(Place place) {
    return new Site(enquiry, Optional.of(place));
  }
}
