package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.Length;
import steening.quantity.Quantity;

/** How deep the sands are thought to be, where somebody said so: by a map, or by those who drilled around here. */
public record Forecast(List<Sand> sands) {
  public static final Part<Forecast> PART = Part.ofJob("forecast", new Forecast(List.of()));

  public Forecast {
    sands = List.copyOf(sands);
  }

  /**
   * One sand as it is thought to be.
   *
   * @param number which sand, counted from the top: 1 is the wanted one
   * @param likely depth of its top, as likely deeper as shallower
   * @param shallowest shallower once in twenty
   * @param deepest deeper once in twenty
   * @param chance that there is such a sand, a number from nought to one
   */
  public record Sand(
      int number, Length likely, Length shallowest, Length deepest, Quantity chance, String entry) {}

  public Forecast with(Sand sand) {
    List<Sand> more = new ArrayList<>(sands);
    more.removeIf(s -> s.number() == sand.number());
    more.add(sand);
    return new Forecast(more);
  }

  public Optional<Sand> of(int number) {
    return sands.stream().filter(s -> s.number() == number).findFirst();
  }
}
