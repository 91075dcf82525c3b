package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bore;
import steening.quantity.Length;

/**
 * The string of pipe, as measured and as set. The bottom was fixed when it was set; a later cut takes pipe off the top
 * and changes the stick-up only, so readings made before the cut keep their own stick-up.
 *
 * @param pieces in the order they were lowered, the lowest first
 * @param bottom depth of the lower end below ground, once it is set
 * @param stickUp height of the top above ground now
 * @param outside outside diameter
 * @param inside inside diameter
 */
public record CasingString(
    List<Piece> pieces, Optional<Length> bottom, Optional<Length> stickUp,
    Optional<Length> outside, Optional<Length> inside) {
  public static final Part<CasingString> PART = Part.ofHole(
      "string", new CasingString(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));

  public CasingString {
    pieces = List.copyOf(pieces);
  }

  public CasingString with(Piece piece) {
    List<Piece> more = new ArrayList<>(pieces);
    more.add(piece);
    return new CasingString(more, bottom, stickUp, outside, inside);
  }

  public CasingString of(Length outside, Length inside) {
    return new CasingString(pieces, bottom, stickUp, Optional.of(outside), Optional.of(inside));
  }

  /** Set with so much of it above ground. */
  public CasingString set(Length stickUp) {
    return new CasingString(pieces, Optional.of(length().minus(stickUp)), Optional.of(stickUp), outside, inside);
  }

  /** Cut, so that so much is left above ground. */
  public CasingString cutTo(Length stickUp) {
    return new CasingString(pieces, bottom, Optional.of(stickUp), outside, inside);
  }

  public boolean isSet() {
    return bottom.isPresent();
  }

  public Length length() {
    return pieces.stream().map(Piece::laying).reduce(Length.ZERO, Length::plus);
  }

  public Length length(Piece.Sort sort) {
    return pieces.stream().filter(p -> p.sort() == sort).map(Piece::laying).reduce(Length.ZERO, Length::plus);
  }

  public long count(Piece.Sort sort) {
    return pieces.stream().filter(p -> p.sort() == sort).count();
  }

  /** Upper and lower end of each screen below ground, once the string is set. */
  public List<Screen> screens() {
    List<Screen> screens = new ArrayList<>();
    if (bottom.isEmpty()) return screens;
    Length end = bottom.get();
    for (Piece piece : pieces) {
      Length top = end.minus(piece.laying());
      if (piece.sort() == Piece.Sort.SCREEN) screens.add(new Screen(top, end, piece.entry()));
      end = top;
    }
    return screens;
  }

  /** The top of the highest screen. */
  public Optional<Length> screenTop() {
    return screens().stream().map(Screen::top).min(Length::compareTo);
  }

  /** The pipe as a bore from above ground to its bottom; none before it is set. */
  public Bore pipe() {
    if (bottom.isEmpty() || outside.isEmpty()) return Bore.NONE;
    Length top = Length.ZERO.minus(stickUp.orElse(Length.ZERO));
    return bottom.get().isMoreThan(top) ? Bore.straight(outside.get(), top, bottom.get()) : Bore.NONE;
  }

  /** A reading in depth below ground, with the stick-up of now; empty where that is needed and not known. */
  public Optional<Length> belowGround(Length reading, DepthFrom from) {
    return from == DepthFrom.GROUND ? Optional.of(reading) : stickUp.map(reading::minus);
  }
}
