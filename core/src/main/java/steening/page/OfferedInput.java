package steening.page;

import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.fieldset;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.legend;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.drawing.Swatch;
import steening.field.ChoiceField;
import steening.field.Field;
import steening.field.Offering;
import steening.field.TextField;
import steening.language.Reader;
import steening.well.Colour;
import steening.well.Material;

/**
 * A field with many answers to tap, the usual ones first, each with a piece of what it looks like, and a box for any
 * other word. The box stands before the answers in the page, so that an answer that was tapped is sent last and counts.
 */
final class OfferedInput {
  private OfferedInput() {}

  static DomContent of(Field field, Offering offering, String typed, List<DomContent> trouble, Reader reader) {
    List<ChoiceField.Option> offered = offering.offered();
    int first = Math.min(offering.atOnce(), offered.size());
    boolean known = offered.stream().anyMatch(option -> option.code().equals(typed));
    List<ChoiceField.Option> rest = offered.subList(first, offered.size());
    boolean restOpen = rest.stream().anyMatch(option -> option.code().equals(typed));
    List<DomContent> parts = new ArrayList<>();
    parts.add(legend(FieldInput.head(field, reader)));
    parts.add(word(field, known ? "" : typed, !trouble.isEmpty(), reader));
    parts.add(each(offered.subList(0, first), option -> tile(field, option, typed, reader)));
    if (!rest.isEmpty()) {
      DomContent more = each(rest, option -> tile(field, option, typed, reader));
      parts.add(details(summary(Words.OTHERS.shownTo(reader)), div(more).withClass("tiles")).withCondOpen(restOpen));
    }
    parts.addAll(trouble);
    return fieldset(parts.toArray(DomContent[]::new))
        .withClass("field tiles" + (trouble.isEmpty() ? "" : " trouble"));
  }

  private static DomContent word(Field field, String typed, boolean isTrouble, Reader reader) {
    return label(
            span(Words.OWN_WORD.shownTo(reader)),
            input().withType("text").withName(field.name()).withId(field.name()).withValue(typed)
                .withPlaceholder(field instanceof TextField ? field.example(reader) : "").attr("autocomplete", "off").attr("autocapitalize", "off")
                .condAttr(isTrouble, "aria-invalid", "true"))
        .withClass("own-word");
  }

  private static DomContent tile(Field field, ChoiceField.Option option, String typed, Reader reader) {
    return label(
            input().withType("radio").withName(field.name()).withValue(option.code())
                .withCondChecked(option.code().equals(typed)),
            swatch(option).<DomContent>map(svg -> rawHtml(svg)).orElse(text("")),
            span(option.label().shownTo(reader)))
        .withClass("tile");
  }

  private static Optional<String> swatch(ChoiceField.Option option) {
    Optional<Material> material =
        Stream.of(Material.values()).filter(known -> known.code().equals(option.code())).findFirst();
    return material.map(Swatch::of).or(() -> Colour.of(option.code()).map(colour -> Swatch.of(colour.onScreen())));
  }
}
