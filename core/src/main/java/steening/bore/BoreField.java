package steening.bore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.field.Reading;
import steening.field.Valued;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Figure;
import steening.quantity.Length;

/**
 * A hole by its diameters: {@code 7 7/8 in}, or from the ground down
 * {@code 7 7/8 in to 57 ft; 11.2 in to 63 ft; 7 7/8 in to 142 ft}. The last may go on without an end.
 */
public final class BoreField extends Valued<Bore> {
  private static final List<String> JOINTS = List.of(" to ", " hasta ", " a ");

  private final QuantityField diameter;
  private final QuantityField depth;

  private BoreField(String name, Phrase label, boolean required, QuantityField diameter, QuantityField depth) {
    super(name, label, required);
    this.diameter = diameter;
    this.depth = depth;
  }

  /**
   * A bore under the label of its diameter.
   *
   * @param diameter how a diameter is read, and its bounds
   * @param depth how the depth of a lower end is read, and its bounds
   */
  public static BoreField of(String name, QuantityField diameter, QuantityField depth) {
    return new BoreField(name, diameter.label(), true, diameter, depth);
  }

  @Override
  public BoreField optional() {
    return new BoreField(name(), label(), false, diameter, depth);
  }

  @Override
  public Optional<Bore> in(Body body) {
    return text(body).map(this::bore);
  }

  @Override
  public String holds() {
    return "bore";
  }

  @Override
  public String example(Reader reader) {
    return diameter.example(reader);
  }

  @Override
  protected Reading understand(String text, Reader reader, boolean sure) {
    List<String> pieces = pieces(text);
    if (pieces.isEmpty()) return refused(text, reader);
    Length above = Length.ZERO;
    for (int i = 0; i < pieces.size(); i++) {
      Reading reading = field(i).read(pieces.get(i), reader, sure);
      if (reading instanceof Reading.Asked asked) return asked(asked, pieces, i);
      if (!(reading instanceof Reading.Taken taken)) return pieces.get(i).isEmpty() ? refused(text, reader) : reading;
      pieces.set(i, taken.text());
      if (field(i) != depth) continue;
      Length end = length(depth, taken.text());
      if (!end.isMoreThan(above)) return notBelow(taken.text(), above);
      above = end;
    }
    boolean asTyped = pieces.equals(pieces(text));
    return new Reading.Taken(asTyped ? text : written(pieces));
  }

  private Reading asked(Reading.Asked asked, List<String> pieces, int unclear) {
    List<String> meanings = new ArrayList<>();
    for (String meaning : asked.meanings()) {
      List<String> meant = new ArrayList<>(pieces);
      meant.set(unclear, meaning);
      meanings.add(written(meant));
    }
    return new Reading.Asked(asked.question(), meanings);
  }

  private Reading notBelow(String end, Length above) {
    return new Reading.Refused(
        Phrase.of(
            "{0}: the reaches go down from the ground, but {1} is not below {2}.",
            "{0}: los tramos van del terreno hacia abajo, pero {1} no está más abajo que {2}.",
            label(), end, new Figure(above, depth.scale())));
  }

  private Bore bore(String taken) {
    List<String> pieces = pieces(taken);
    List<Reach> reaches = new ArrayList<>();
    Length above = Length.ZERO;
    for (int i = 0; i < pieces.size(); i += 2) {
      Length end = i + 1 < pieces.size() ? length(depth, pieces.get(i + 1)) : Bore.ENDLESS;
      reaches.add(new Reach(above, end, length(diameter, pieces.get(i))));
      above = end;
    }
    return new Bore(reaches);
  }

  /** Diameter, lower end, diameter, lower end and so on; an end that is missing in between is an empty piece. */
  private static List<String> pieces(String text) {
    List<String> pieces = new ArrayList<>();
    for (String reach : text.split(";")) {
      if (pieces.size() % 2 == 1) pieces.add("");
      String joint = JOINTS.stream().filter(reach::contains).findFirst().orElse("");
      int end = joint.isEmpty() ? reach.length() : reach.indexOf(joint);
      pieces.add(reach.substring(0, end).trim());
      if (!joint.isEmpty()) pieces.add(reach.substring(end + joint.length()).trim());
    }
    return pieces;
  }

  private static String written(List<String> pieces) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < pieces.size(); i++) {
      text.append(i == 0 ? "" : i % 2 == 0 ? "; " : JOINTS.get(0)).append(pieces.get(i));
    }
    return text.toString();
  }

  private QuantityField field(int piece) {
    return piece % 2 == 0 ? diameter : depth;
  }

  private static Length length(QuantityField field, String text) {
    return field.length(Body.of(field.name(), text)).orElseThrow();
  }
}
