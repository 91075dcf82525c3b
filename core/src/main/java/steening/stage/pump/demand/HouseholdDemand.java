package steening.stage.pump.demand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Water a household asks for: at the peak by the several rules that are met, and in a day.
 *
 * <p>Peak: 1 gpm an outlet (well information sheet, 2003; seen); or the seven minutes of the worst peak by bathrooms,
 * 98
 * gal at two (seen), 45, 75 and 122 gal at one, one and a half and three to four (memory). Day: 110 gal a bedroom (New
 * York State Department of Health, Fact Sheet 2; seen); 100 gal a person, the upper end of 50 to 100 (memory); what
 * animals, a garden or a heat pump take beside. Range: dwellings. Accuracy: rules of thumb, a factor of two.
 */
public final class HouseholdDemand {
  static final CountField OUTLETS =
      CountField.of("fixtures", Phrase.of("outlets of water", "salidas de agua"), 1, 500).usuallyUpTo(40).optional();
  static final ChoiceField BATHROOMS = ChoiceField.of(
      "bathrooms", Phrase.of("bathrooms", "baños"), ChoiceField.option("2", "2", "2"),
      ChoiceField.option("1", "1", "1"), ChoiceField.option("1.5", "1 1/2", "1 1/2"),
      ChoiceField.option("3-4", "3 to 4", "3 a 4")).optional();
  static final CountField BEDROOMS =
      CountField.of("bedrooms", Phrase.of("bedrooms", "dormitorios"), 1, 200).usuallyUpTo(8).optional();
  static final CountField PEOPLE =
      CountField.of("people", Phrase.of("people", "personas"), 1, 2000).usuallyUpTo(12).optional();
  static final QuantityField BESIDE = QuantityField.of(
          "daily-beside", Scale.LIQUID,
          Phrase.of("animals, garden, heat pump, in a day", "animales, jardín, bomba de calor, al día"), "100 gal",
          "400 L")
      .between("0 gal", "1000000 gal").usually("0 gal", "5000 gal").optional();

  static final Answer BY_OUTLETS = new Answer(
      "rate-by-fixtures", Phrase.of("peak by outlets", "máximo por salidas"), Scale.FLOW);
  static final Answer SEVEN = new Answer(
      "seven-minute-volume", Phrase.of("seven minutes of the peak", "siete minutos del máximo"), Scale.LIQUID);
  static final Answer BY_BATHROOMS = new Answer(
      "rate-by-bathrooms", Phrase.of("peak by bathrooms", "máximo por baños"), Scale.FLOW);
  static final Answer BEDROOM_DAY = new Answer(
      "day-by-bedrooms", Phrase.of("a day by bedrooms", "un día por dormitorios"), Scale.LIQUID);
  static final Answer PEOPLE_DAY = new Answer(
      "day-by-people", Phrase.of("a day by people", "un día por personas"), Scale.LIQUID);
  static final Answer DAY = new Answer("day", Phrase.of("demand of a day", "demanda de un día"), Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "household-demand",
      "pump",
      Phrase.of("Water a household asks for", "Demanda de agua de una vivienda"),
      List.of(OUTLETS, BATHROOMS, BEDROOMS, PEOPLE, BESIDE),
      List.of(BY_OUTLETS, SEVEN, BY_BATHROOMS, BEDROOM_DAY, PEOPLE_DAY, DAY),
      Source.seen(
          "Outlets and two bathrooms: a well information sheet, 2003. Bedrooms: New York State Department of Health, "
              + "Fact Sheet 2. Other bathrooms and people: memory.",
          "Salidas y dos baños: hoja informativa de pozos, 2003. Dormitorios: New York State Department of Health, "
              + "Fact Sheet 2. Otros baños y personas: de memoria."),
      List.of(
          Phrase.of("Dwellings. The rules differ; local code goes first.",
              "Viviendas. Las reglas difieren; vale antes el reglamento local."),
          Phrase.of("Irrigation and animals are what they are said to take: ask.",
              "Riego y animales cuentan por lo que se diga: pregunte.")),
      HouseholdDemand::reckon);

  private static final Quantity OUTLET = new FlowRate(Unit.GALLON_PER_MINUTE.toCoherent(1));
  private static final Quantity BEDROOM = Volume.of(110, Unit.GALLON);
  private static final Quantity PERSON = Volume.of(100, Unit.GALLON);
  private static final Quantity SEVEN_MINUTES = Measure.of(7, Unit.MINUTE);

  private HouseholdDemand() {}

  private static Outcome reckon(Inputs inputs) {
    Outcome outcome = Outcome.empty();
    if (inputs.find(OUTLETS).isPresent()) {
      Term one = Term.given("g", Phrase.of("rate of one outlet", "gasto de una salida"), Scale.FLOW, OUTLET);
      outcome = outcome.with(BY_OUTLETS.name(),
          inputs.given("n", OUTLETS).times(one).named("G", BY_OUTLETS.label(), BY_OUTLETS.scale()));
    }
    if (inputs.find(BATHROOMS).isPresent()) outcome = bathrooms(outcome, inputs.value(BATHROOMS).code());
    List<Term> days = new ArrayList<>();
    Optional<Term> bedrooms = day(inputs, BEDROOMS, BEDROOM, "b", BEDROOM_DAY);
    Optional<Term> people = day(inputs, PEOPLE, PERSON, "p", PEOPLE_DAY);
    bedrooms.ifPresent(days::add);
    people.ifPresent(days::add);
    if (bedrooms.isPresent()) outcome = outcome.with(BEDROOM_DAY.name(), bedrooms.get());
    if (people.isPresent()) outcome = outcome.with(PEOPLE_DAY.name(), people.get());
    if (!days.isEmpty()) {
      Term most = days.size() == 2 ? days.get(0).most(days.get(1)) : days.get(0);
      if (inputs.find(BESIDE).isPresent()) most = most.plus(inputs.given("a", BESIDE));
      outcome = outcome.with(DAY.name(), most.named("D", DAY.label(), DAY.scale()));
    }
    if (!outcome.answers().isEmpty()) return outcome;
    throw new NotReckonable(
        "Give outlets, bathrooms, bedrooms or people: one of them at least.",
        "Dé salidas, baños, dormitorios o personas: al menos uno.");
  }

  private static Outcome bathrooms(Outcome outcome, String code) {
    double gallons = switch (code) {
      case "1" -> 45;
      case "1.5" -> 75;
      case "2" -> 98;
      default -> 122;
    };
    Term volume = Term.given("S", SEVEN.label(), SEVEN.scale(), Volume.of(gallons, Unit.GALLON));
    Term minutes = Term.given("t", Phrase.of("seven minutes", "siete minutos"), Scale.MINUTES, SEVEN_MINUTES);
    Term rate = Coefficient.giving(Scale.FLOW, 1).of(Scale.LIQUID).of(Scale.MINUTES, -1).term()
        .times(volume).over(minutes)
        .named("B", BY_BATHROOMS.label(), BY_BATHROOMS.scale());
    return outcome.with(SEVEN.name(), volume).with(BY_BATHROOMS.name(), rate);
  }

  private static Optional<Term> day(Inputs inputs, CountField count, Quantity each, String symbol, Answer answer) {
    if (inputs.find(count).isEmpty()) return Optional.empty();
    Term one = Term.given(symbol + "₁", Phrase.of("each, in a day", "cada uno, al día"), Scale.LIQUID, each);
    return Optional.of(inputs.given(symbol, count).times(one).named(symbol + "₂", answer.label(), answer.scale()));
  }
}
