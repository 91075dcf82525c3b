package steening.bore;

import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Coefficient;
import steening.reckoning.NotReckonable;
import steening.reckoning.Term;

/**
 * The space between a hole and the pipe in it; the whole hole below the pipe.
 *
 * <p>V = π/4 (D² − d²) h, summed over the reaches; D hole diameter, d pipe outside diameter, h length.
 *
 * <p>Source: geometry; the factor 1/183.35 = 0.0054542 for inches, feet and cubic feet is in formulas handbooks (seen).
 * Range: D at least d, a round hole. Accuracy: rounding only; the hole diameter decides the real error.
 */
public record Annulus(Bore hole, Bore pipe) {
  /** What a square on the diameter becomes as a circle. */
  public static final double QUARTER_PI = 0.78539816339744831;

  private static final Length JUST_ABOVE = new Length(1);
  /** In feet; what would stand higher than this has no room to stand in. */
  private static final double HIGHEST = 1e6;
  private static final Phrase HOLE = Phrase.of("hole diameter", "diámetro del barreno");
  private static final Phrase PIPE = Phrase.of("outside diameter of the pipe", "diámetro exterior del tubo");
  private static final Phrase LENGTH = Phrase.of("length", "longitud");
  private static final Phrase AREA = Phrase.of("volume per length", "volumen por longitud");
  private static final Phrase HELD = Phrase.of("volume that a reach holds", "volumen que cabe en un tramo");

  /** π/4 for this answer's volume and lengths. */
  public static Term quarterPi(Scale volume, Scale diameter, Scale length) {
    return Coefficient.giving(volume, QUARTER_PI).of(diameter, 2).of(length).term();
  }

  /** The volume of a cylinder as a formula: π/4 D² h. */
  public static Term cylinder(Term diameter, Term length, Scale volume) {
    return quarterPi(volume, diameter.scale(), length.scale()).times(diameter.squared()).times(length);
  }

  /** The annulus between two depths as a named term of cubic feet or cubic metres, a line for each reach. */
  public Term volume(String symbol, Phrase label, Length from, Length to) {
    return volume(symbol, "", label, from, to);
  }

  /** The same with a mark on the symbols of its reaches, for a working that speaks of other reaches too. */
  public Term volume(String symbol, String mark, Phrase label, Length from, Length to) {
    List<Reach> pieces = pieces(from, to);
    List<Term> volumes = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      String index = pieces.size() == 1 ? mark : mark + Term.index(i + 1);
      Term piece = pieceVolume(pieces.get(i), index);
      if (pieces.size() == 1) return piece.named(symbol, label, Scale.VOLUME);
      Phrase reach = Phrase.of(
          "between {0} and {1}", "entre {0} y {1}",
          new Figure(pieces.get(i).from(), Scale.DEPTH), new Figure(pieces.get(i).to(), Scale.DEPTH));
      volumes.add(piece.named(symbol + index, reach, Scale.VOLUME));
    }
    return Term.sum(volumes).named(symbol, label, Scale.VOLUME);
  }

  /** The same as a bare volume. */
  public Volume volume(Length from, Length to) {
    return (Volume) volume("V", LENGTH, from, to).quantity();
  }

  /**
   * How high a volume stands that was put in from a depth upward: the depth of its top, as a named term.
   *
   * @throws NotReckonable where the hole's diameter is not known that far up
   */
  public Term top(String symbol, Phrase label, Length bottom, Term volume) {
    return top(symbol, "", label, bottom, volume);
  }

  /** The same with a mark on the symbols of its reaches, for a working that speaks of other reaches too. */
  public Term top(String symbol, String mark, Phrase label, Length bottom, Term volume) {
    Volume left = (Volume) volume.quantity();
    Length highest = hole.isEmpty() ? Length.ZERO : hole.reaches().get(0).from();
    List<Reach> pieces = pieces(highest, bottom);
    List<Term> filled = new ArrayList<>();
    for (int i = pieces.size() - 1; i >= 0; i--) {
      Reach piece = pieces.get(i);
      String index = mark + Term.index(pieces.size() - i);
      Term holds = pieceVolume(piece, index);
      boolean last = i == 0;
      double capacity = Scale.VOLUME.us().toCoherent(holds.in(UnitSystem.US));
      if (left.cubicMetres() <= capacity || last) {
        Term rest = filled.isEmpty() ? volume : volume.minus(Term.sum(filled));
        Term area = areaOf(piece, index).named("A" + index, AREA, Scale.CAPACITY);
        Term from = Term.given("z₀" + index, Phrase.of("lower end", "extremo inferior"), Scale.DEPTH, piece.to());
        // A volume and an area each in the reader's own units: in metric litres per metre, so a factor stands between.
        Term rise = perLength().times(rest).over(area);
        if (!(rise.in(UnitSystem.US) < HIGHEST)) {
          throw new NotReckonable(
              "There is no room between hole and pipe.", "No hay espacio entre el barreno y el tubo.");
        }
        return from.minus(rise).named(symbol, label, Scale.DEPTH);
      }
      filled.add(holds.named("V" + index, HELD, Scale.VOLUME));
      left = left.minus(new Volume(capacity));
    }
    throw new NotReckonable("The hole's diameter is not known.", "No se conoce el diámetro del barreno.");
  }

  /** What a foot of it holds just above a depth, as a named term. */
  public Term capacityAbove(String symbol, Length depth) {
    List<Reach> pieces = pieces(depth.minus(JUST_ABOVE), depth);
    return areaOf(pieces.get(pieces.size() - 1), "").named(symbol, AREA, Scale.CAPACITY);
  }

  /** The even hole that would hold a volume between two depths: √(d² + V / (π/4 h)). */
  public Term apparentDiameter(Length pipeDiameter, Term volume, Term length) {
    Term pipe = Term.given("d", PIPE, Scale.DIAMETER, pipeDiameter);
    Term area = volume.over(quarterPi(Scale.VOLUME, Scale.DIAMETER, Scale.DEPTH).times(length));
    return pipe.squared().plus(area).squareRoot();
  }

  /** Stretches between two depths in which neither the hole nor the pipe changes. */
  public List<Reach> pieces(Length from, Length to) {
    if (!to.isMoreThan(from)) {
      throw new NotReckonable(
          "The lower end must be deeper than the upper end.",
          "El extremo inferior debe estar más abajo que el superior.");
    }
    List<Length> ends = new ArrayList<>(hole.changes(from, to));
    for (Length change : pipe.changes(from, to)) if (!ends.contains(change)) ends.add(change);
    ends.add(to);
    ends.sort(Length::compareTo);
    List<Reach> pieces = new ArrayList<>();
    Length top = from;
    for (Length end : ends) {
      pieces.add(new Reach(top, end, holeAt(top)));
      top = end;
    }
    return pieces;
  }

  private Length holeAt(Length depth) {
    return hole.diameterBelow(depth)
        .orElseThrow(() -> new NotReckonable(
            "The hole's diameter at {0} is not known.", "No se conoce el diámetro del barreno a {0}.",
            new Figure(depth, Scale.DEPTH)));
  }

  private Term pieceVolume(Reach piece, String index) {
    Term length = Term.given("h" + index, LENGTH, Scale.DEPTH, piece.length());
    return quarterPi(Scale.VOLUME, Scale.DIAMETER, Scale.DEPTH).times(squares(piece, index)).times(length);
  }

  private Term areaOf(Reach piece, String index) {
    return Coefficient.giving(Scale.CAPACITY, QUARTER_PI).of(Scale.DIAMETER, 2).term().times(squares(piece, index));
  }

  private Term squares(Reach piece, String index) {
    Term hole = Term.given("D" + index, HOLE, Scale.DIAMETER, piece.diameter());
    Length inside = pipe.diameterBelow(piece.from()).orElse(Length.ZERO);
    if (inside.isMoreThan(piece.diameter())) {
      throw new NotReckonable(
          "The pipe is larger than the hole: {0} against {1}.", "El tubo es mayor que el barreno: {0} contra {1}.",
          new Figure(inside, Scale.DIAMETER), new Figure(piece.diameter(), Scale.DIAMETER));
    }
    if (inside.equals(Length.ZERO)) return hole.squared();
    return hole.squared().minus(Term.given("d" + index, PIPE, Scale.DIAMETER, inside).squared());
  }

  /** For a volume over a volume per length. */
  public static Term perLength() {
    return Coefficient.giving(Scale.DEPTH, 1).of(Scale.VOLUME).of(Scale.CAPACITY, -1).term();
  }
}
