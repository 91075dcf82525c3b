package steening.stage.seal.placing;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * Whether a tremie passes the bells of the casing: g = (D − b) / 2 all round, w = D − b at the widest where the casing
 * leans on the wall; c = g − t and e = w − t are left beside the tremie. D hole, b outside diameter of the bell, t of
 * the tremie.
 *
 * <p>Source: geometry. A bell that was not measured is taken as 7/6 of the pipe, 5 1/4 in on 4 1/2 in (from memory).
 * Rules met: a hole 2 7/8 in over the nominal casing for a tremie outside it, Mich. R 325.1633a; 1 1/2 in of clearance
 * and 3 in over the casing, a Virginia county (both seen). Range: a straight hole of the drilled size.
 */
public final class TremieFit {
  public static final QuantityField HOLE = Plan.HOLE.named("hole");
  public static final QuantityField CASING = Plan.CASING_OUTSIDE.named("casing");
  public static final QuantityField BELL = QuantityField.of(
          "bell", Scale.DIAMETER, Phrase.of("outside of the casing at a bell", "exterior del ademe en la campana"),
          "5 1/4 in", "133 mm")
      .between("1 in", "40 in").usually("2 in", "15 in").optional();
  public static final QuantityField OUTSIDE = QuantityField.of(
          "outside", Scale.DIAMETER, Phrase.of("outside of the tremie", "exterior de la tremie"), "1.66 in", "42 mm")
      .between("0.3 in", "10 in").usually("0.8 in", "4.6 in");

  static final Answer AT_BELL = new Answer(
      "bell-outside", Phrase.of("outside of the bell", "exterior de la campana"), Scale.DIAMETER);
  static final Answer GAP =
      new Answer("gap", Phrase.of("gap at the bells, casing centred", "claro en las campanas, ademe centrado"),
          Scale.DIAMETER);
  static final Answer WIDEST =
      new Answer("widest", Phrase.of("the same, casing against the wall", "el mismo, ademe contra la pared"),
          Scale.DIAMETER);
  static final Answer LEFT =
      new Answer("left", Phrase.of("left beside the tremie, centred", "sobra junto a la tremie, centrado"),
          Scale.DIAMETER);
  static final Answer LEFT_WIDEST =
      new Answer(
          "left-widest", Phrase.of("left beside it, against the wall", "sobra junto a ella, contra la pared"),
          Scale.DIAMETER);

  public static final Reckoning RECKONING = new Reckoning(
      "tremie-fit",
      "seal",
      Phrase.of("Room for the tremie", "Espacio para la tremie"),
      List.of(HOLE, CASING, BELL, OUTSIDE),
      List.of(AT_BELL, GAP, WIDEST, LEFT, LEFT_WIDEST),
      Source.derived(
          "Geometry. A bell not measured: 7/6 of the pipe, 5 1/4 in on 4 1/2 in (from memory, not re-read).",
          "Geometría. Campana sin medir: 7/6 del tubo, 133 mm en 114 mm (de memoria, sin releer)."),
      List.of(
          Phrase.of("A straight hole of the drilled size.", "Un barreno recto del diámetro perforado."),
          Phrase.of(
              "With the tremie outside: a hole 2 7/8 in over the nominal casing (Mich. R 325.1633a); 3 in over the"
                  + " casing and 1 1/2 in of clearance (a Virginia county). Yours decides.",
              "Con la tremie por fuera: barreno 73 mm mayor que el ademe nominal (Mich. R 325.1633a); 76 mm mayor que"
                  + " el ademe y 38 mm de claro (un condado de Virginia). Decide su norma.")),
      TremieFit::reckon);

  private TremieFit() {}

  private static Outcome reckon(Inputs inputs) {
    return of(
        inputs.length(HOLE), inputs.length(CASING), inputs.find(BELL).map(q -> (Length) q), inputs.length(OUTSIDE));
  }

  /** @throws NotReckonable where the casing is larger than the hole, or than its own bell */
  static Outcome of(Length hole, Length casing, Optional<Length> bell, Length outside) {
    if (!hole.isMoreThan(casing)) {
      throw new NotReckonable("The casing does not go into this hole.", "El ademe no cabe en este barreno.");
    }
    if (bell.filter(casing::isMoreThan).isPresent()) {
      throw new NotReckonable("The bell is smaller than the casing.", "La campana es menor que el ademe.");
    }
    Term pipe = Term.given("d", CASING.label(), Scale.DIAMETER, casing);
    Term across = bell
        .map(b -> Term.given("b₀", BELL.label(), Scale.DIAMETER, b))
        .orElseGet(() -> Term.number(7).over(6).times(pipe))
        .named("b", AT_BELL.label(), Scale.DIAMETER);
    Term tremie = Term.given("t", OUTSIDE.label(), Scale.DIAMETER, outside);
    Term widest = Term.given("D", HOLE.label(), Scale.DIAMETER, hole).minus(across)
        .named("w", WIDEST.label(), Scale.DIAMETER);
    Term gap = widest.over(2).named("g", GAP.label(), Scale.DIAMETER);
    Outcome outcome = Outcome.empty()
        .with(AT_BELL.name(), across)
        .with(GAP.name(), gap)
        .with(WIDEST.name(), widest)
        .with(LEFT.name(), gap.minus(tremie).named("c", LEFT.label(), Scale.DIAMETER))
        .with(LEFT_WIDEST.name(), widest.minus(tremie).named("e", LEFT_WIDEST.label(), Scale.DIAMETER));
    return bell.isPresent() ? outcome : outcome.remarking(Phrase.of(
        "The bell was not measured: 7/6 of the pipe (from memory). Put a caliper on one.",
        "La campana no se midió: 7/6 del tubo (de memoria). Mida una con calibrador."));
  }
}
