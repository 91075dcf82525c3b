package steening.stage.drilling.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.field.ChoiceField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.field.TextField;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.well.Colour;
import steening.well.GroundWord;
import steening.well.Looks;
import steening.well.Material;

/** The driller's log: what was met from one depth to another. */
public final class LogEntries {
  /** Those that most holes in loose ground meet; the rest are asked for. */
  private static final int USUAL_MATERIALS = 10;
  private static final int USUAL_COLOURS = 6;

  public static final QuantityField FROM = depth("from", "from", "desde");
  public static final QuantityField TO = depth("to", "to", "hasta");
  public static final ChoiceField MATERIAL = ChoiceField
      .of("material", Phrase.of("material", "material"),
          options(Stream.of(Material.values())).toArray(ChoiceField.Option[]::new))
      .showing(USUAL_MATERIALS)
      .guessing(LogEntries::guess);
  public static final ChoiceField WATER = ChoiceField.of(
          "water", Phrase.of("water-bearing", "con agua"), ChoiceField.option("yes", "yes", "sí"),
          ChoiceField.option("no", "no", "no"))
      .optional();
  public static final TextField COLOUR =
      TextField.of("colour", Phrase.of("colour, moist", "color, húmedo"), "10YR 5/4")
          .refusing(text -> Colour.isMeantAsNotation(text) && !Colour.isNotation(text))
          .offering(USUAL_COLOURS, Stream.of(Colour.values())
              .map(colour -> new ChoiceField.Option(colour.code(), colour.label())).toList())
          .optional();
  public static final ChoiceField MOISTURE = ChoiceField.of(
          "moisture", Phrase.of("moisture", "humedad"), ChoiceField.option("dry", "dry", "seco"),
          ChoiceField.option("moist", "moist", "húmedo"), ChoiceField.option("wet", "wet", "mojado"))
      .optional();
  /** Sand by Wentworth's grades. */
  public static final ChoiceField GRAIN = ChoiceField.of(
          "grain", Phrase.of("grain of the sand", "grano de la arena"),
          ChoiceField.option("very-fine", "very fine", "muy fino"), ChoiceField.option("fine", "fine", "fino"),
          ChoiceField.option("medium", "medium", "medio"), ChoiceField.option("coarse", "coarse", "grueso"),
          ChoiceField.option("very-coarse", "very coarse", "muy grueso"))
      .optional();
  public static final TextField DESCRIPTION =
      TextField.of("description", Phrase.of("in your own words", "en sus palabras"), "clean, washed three times")
          .optional();

  public static final Kind LOG = Kind
      .of("log", Phrase.of("Driller's log", "Registro de perforación"), FROM, TO, MATERIAL, WATER, COLOUR, MOISTURE,
          GRAIN, DESCRIPTION)
      .seldom(MOISTURE, GRAIN);

  private LogEntries() {}

  /** How the interval of an entry looked. */
  public static Looks looks(Body body) {
    List<Phrase> said = new ArrayList<>();
    COLOUR.text(body).ifPresent(text -> said.add(Colour.of(text).map(Colour::label).orElse(Phrase.same(text))));
    for (ChoiceField field : List.of(MOISTURE, GRAIN)) field.in(body).ifPresent(option -> said.add(option.label()));
    return new Looks(said, DESCRIPTION.text(body).orElse(""));
  }

  private static Optional<ChoiceField.Guess> guess(String typed) {
    return GroundWord.of(typed)
        .map(word -> new ChoiceField.Guess(options(word.materials().stream()), word.note()));
  }

  private static List<ChoiceField.Option> options(Stream<Material> materials) {
    return materials.map(material -> new ChoiceField.Option(material.code(), material.label())).toList();
  }

  private static QuantityField depth(String name, String english, String spanish) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), "142 ft", "43 m")
        .between("0 ft", "6000 ft").usually("0 ft", "600 ft");
  }
}
