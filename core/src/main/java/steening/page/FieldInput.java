package steening.page;

import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.fieldset;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.legend;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;

import j2html.tags.DomContent;
import j2html.tags.specialized.InputTag;
import java.util.ArrayList;
import java.util.List;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.DateField;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Offering;
import steening.field.QuantityField;
import steening.field.Reading;
import steening.language.Reader;
import steening.quantity.Scale;

/** One field of a form: label, unit, input, and what was wrong with it. */
final class FieldInput {
  /** As many options as fit under a thumb; more go into a list. */
  private static final int BUTTONS = 4;

  private FieldInput() {}

  /**
   * @param typed what stands in it
   * @param reading what became of it; null before anything was sent
   * @param sure the names of fields confirmed so far
   */
  static DomContent of(Field field, String typed, Reading reading, String sure, Reader reader) {
    List<DomContent> parts = new ArrayList<>();
    if (field instanceof ChoiceField choice && choice.options().size() <= BUTTONS) {
      return radios(choice, typed, reading, reader);
    }
    if (field instanceof Offering offering && offering.takesWords() && !offering.offered().isEmpty()) {
      return OfferedInput.of(field, offering, typed, trouble(field, reading, sure, reader), reader);
    }
    parts.add(label(head(field, reader)).withFor(field.name()));
    parts.add(field instanceof ChoiceField choice ? list(choice, typed, reader) : box(field, typed, reading, reader));
    parts.addAll(trouble(field, reading, sure, reader));
    return div(parts.toArray(DomContent[]::new)).withClass("field" + (isTrouble(reading) ? " trouble" : ""));
  }

  static DomContent[] head(Field field, Reader reader) {
    List<DomContent> head = new ArrayList<>();
    head.add(span(field.label().shownTo(reader)));
    if (field instanceof QuantityField amount) head.add(span(amount.scale().of(reader).printed()).withClass("unit"));
    if (!field.isRequired()) head.add(span(Words.MAY_STAY_EMPTY.shownTo(reader)).withClass("unit"));
    return head.toArray(DomContent[]::new);
  }

  private static InputTag box(Field field, String typed, Reading reading, Reader reader) {
    InputTag box = input().withType("text").withName(field.name()).withId(field.name()).withValue(typed)
        .withPlaceholder(field.example(reader)).attr("autocomplete", "off").attr("autocapitalize", "off");
    if (field instanceof CountField) box = box.attr("inputmode", "numeric");
    // Fractions of an inch and feet with inches need more keys than a decimal pad has.
    boolean decimal = field instanceof QuantityField amount && amount.scale() != Scale.DIAMETER;
    if (decimal) box = box.attr("inputmode", "decimal");
    if (field instanceof DateField && typed.isEmpty()) box = box.withType("date");
    if (isTrouble(reading)) {
      box = box.attr("aria-invalid", "true")
          .attr("aria-describedby", field.name() + "-trouble")
          .withCondAutofocus(true);
    }
    return box;
  }

  private static DomContent list(ChoiceField field, String typed, Reader reader) {
    return select(
            option(Words.CHOOSE.shownTo(reader)).withValue(""),
            each(field.options(), o -> option(o.label().shownTo(reader))
                .withValue(o.code()).withCondSelected(o.code().equals(typed))))
        .withName(field.name())
        .withId(field.name());
  }

  private static DomContent radios(ChoiceField field, String typed, Reading reading, Reader reader) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(legend(head(field, reader)));
    for (ChoiceField.Option option : field.options()) {
      String id = field.name() + "-" + option.code();
      InputTag radio = input().withType("radio").withName(field.name()).withId(id).withValue(option.code())
          .withCondChecked(option.code().equals(typed));
      parts.add(label(radio, span(option.label().shownTo(reader))).withFor(id));
    }
    parts.addAll(trouble(field, reading, "", reader));
    String names = "field choices" + (isTrouble(reading) ? " trouble" : "");
    return fieldset(parts.toArray(DomContent[]::new)).withClass(names);
  }

  private static boolean isTrouble(Reading reading) {
    return reading instanceof Reading.Refused || reading instanceof Reading.Asked;
  }

  private static List<DomContent> trouble(Field field, Reading reading, String sure, Reader reader) {
    if (reading instanceof Reading.Refused refused) {
      return List.of(p(refused.sentence().shownTo(reader)).withId(field.name() + "-trouble").withClass("sentence"));
    }
    if (!(reading instanceof Reading.Asked asked)) return List.of();
    List<DomContent> parts = new ArrayList<>();
    parts.add(p(asked.question().shownTo(reader)).withId(field.name() + "-trouble").withClass("sentence"));
    List<DomContent> answers = new ArrayList<>();
    for (String meaning : asked.meanings()) answers.add(meaning(field, meaning, sure, reader));
    parts.add(div(answers.toArray(DomContent[]::new)).withClass("meanings"));
    return parts;
  }

  /**
   * A button for each meaning. It stands after the box, so its text is the one that is sent last and counts; the one as
   * typed says that the hand is sure.
   */
  private static DomContent meaning(Field field, String meaning, String sure, Reader reader) {
    boolean usual = !(field.read(meaning, reader, false) instanceof Reading.Asked);
    if (usual) return button(meaning).withName(field.name()).withValue(meaning);
    String confirmed = (sure + " " + field.name()).trim();
    return button(Words.AS_TYPED.about(meaning).shownTo(reader)).withName(Kind.SURE.name()).withValue(confirmed);
  }
}
