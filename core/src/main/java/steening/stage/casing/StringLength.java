package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;

/**
 * How long the string is and where its screen will stand.
 *
 * <p>S = Σ (L − b) + c + f + u; B = S − a; Z = B − u; Y = Z − f. L overall lengths of the joints, b bell that the next
 * spigot fills, c cut piece, f screen, u sump and cap, a stick-up; B string bottom, Z screen bottom, Y screen top.
 *
 * <p>Source: arithmetic. Range: one screen, standing on the sump. Accuracy: that of the tape. Whether "20 ft" is the
 * overall or the laying length, and how deep a bell is, differ by maker: measure them.
 */
final class StringLength {
  static final SeriesField JOINTS = SeriesField.of(
      CasingEntries.JOINT_OVERALL.named("joints")
          .labelled("overall lengths of the joints", "longitudes totales de los tubos"),
      1, "19.98 20.02 20.01 ft", "6.09 6.10 6.10 m");
  static final QuantityField BELL = CasingEntries.JOINT_BELL;
  static final QuantityField CUT_PIECE = CasingEntries.CUT_PIECE_LENGTH.named("cut-piece").optional();
  static final QuantityField SCREEN = CasingEntries.SCREEN_LENGTH.named("screen");
  static final QuantityField SUMP = Plan.SUMP.optional();
  static final QuantityField STICK_UP = Plan.STICK_UP;

  static final Answer STRING =
      new Answer("string", Phrase.of("length of the string", "longitud de la columna"), Scale.DEPTH);
  static final Answer BOTTOM =
      new Answer("bottom", Phrase.of("string bottom below ground", "fondo de la columna bajo el terreno"), Scale.DEPTH);
  static final Answer SCREEN_TOP = new Answer("screen-top", Plan.SCREEN_TOP.label(), Scale.DEPTH);
  static final Answer SCREEN_BOTTOM = new Answer("screen-bottom", Plan.SCREEN_BOTTOM.label(), Scale.DEPTH);

  static final Reckoning RECKONING = new Reckoning(
      "casing-string",
      CasingStage.NAME,
      Phrase.of("Casing string", "Columna de ademe"),
      List.of(JOINTS, BELL, CUT_PIECE, SCREEN, SUMP, STICK_UP),
      List.of(STRING, BOTTOM, SCREEN_TOP, SCREEN_BOTTOM),
      Source.derived("Arithmetic.", "Aritmética."),
      List.of(Phrase.of(
          "One screen, standing on the sump. The bell counts at every joint.",
          "Una sola rejilla, sobre el tramo ciego. La campana cuenta en cada tubo.")),
      inputs -> string(inputs, lengths(inputs.value(JOINTS), inputs.find(BELL))));

  private StringLength() {}

  /** The string as tallied so far, as if it were set with this stick-up. */
  static Outcome of(CasingString string, Length stickUp) {
    List<Term> pieces = new ArrayList<>();
    int joint = 0;
    for (Piece piece : string.pieces()) {
      if (piece.sort() != Piece.Sort.JOINT) continue;
      joint++;
      pieces.add(length("L" + Term.index(joint), layingOf(joint), piece.laying()));
    }
    Length cut = string.length(Piece.Sort.CUT_PIECE);
    Inputs inputs = Inputs.none()
        .with(SCREEN, string.length(Piece.Sort.SCREEN))
        .with(SUMP, string.length(Piece.Sort.SUMP))
        .with(STICK_UP, stickUp);
    Outcome outcome = string(cut.isMoreThan(Length.ZERO) ? inputs.with(CUT_PIECE, cut) : inputs, pieces);
    if (stackedSimply(string)) return outcome;
    return Outcome.empty().with(STRING.name(), outcome.term("string")).with(BOTTOM.name(), outcome.term("bottom"));
  }

  private static Outcome string(Inputs inputs, List<Term> joints) {
    Term screen = inputs.given("f", SCREEN);
    Term sump = inputs.given("u", SUMP, Length.ZERO);
    List<Term> pieces = new ArrayList<>(joints);
    if (inputs.find(CUT_PIECE).isPresent()) pieces.add(inputs.given("c", CUT_PIECE));
    pieces.add(screen);
    pieces.add(sump);
    Term string = Term.sum(pieces).named("S", STRING.label(), STRING.scale());
    Term bottom = string.minus(inputs.given("a", STICK_UP)).named("B", BOTTOM.label(), BOTTOM.scale());
    Term screenBottom = bottom.minus(sump).named("Z", SCREEN_BOTTOM.label(), SCREEN_BOTTOM.scale());
    Term screenTop = screenBottom.minus(screen).named("Y", SCREEN_TOP.label(), SCREEN_TOP.scale());
    return Outcome.empty()
        .with(STRING.name(), string)
        .with(BOTTOM.name(), bottom)
        .with(SCREEN_TOP.name(), screenTop)
        .with(SCREEN_BOTTOM.name(), screenBottom);
  }

  private static List<Term> lengths(List<Quantity> overall, Optional<Quantity> bell) {
    Phrase label = CasingEntries.JOINT_OVERALL.label();
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < overall.size(); i++) {
      Phrase joint = Phrase.of("{0}, joint {1}", "{0}, tubo {1}", label, Integer.toString(i + 1));
      Term term = length("L" + Term.index(i + 1), joint, (Length) overall.get(i));
      terms.add(bell.filter(b -> b.coherent() > 0)
          .map(b -> term.minus(Term.given("b", BELL.label(), Scale.DEPTH, b)))
          .orElse(term));
    }
    return terms;
  }

  private static Term length(String symbol, Phrase label, Length length) {
    return Term.given(symbol, label, Scale.DEPTH, length);
  }

  private static Phrase layingOf(int joint) {
    return Phrase.of("laying length, joint {0}", "longitud útil, tubo {0}", Integer.toString(joint));
  }

  /** Sump, screens without anything between them, and then the rest. */
  private static boolean stackedSimply(CasingString string) {
    boolean passed = false;
    boolean screened = false;
    for (Piece piece : string.pieces()) {
      boolean screen = piece.sort() == Piece.Sort.SCREEN;
      boolean sump = piece.sort() == Piece.Sort.SUMP;
      if (screen && passed || sump && (passed || screened)) return false;
      screened |= screen;
      passed |= !screen && !sump;
    }
    return screened;
  }
}
