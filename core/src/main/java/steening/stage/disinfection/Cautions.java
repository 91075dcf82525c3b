package steening.stage.disinfection;

import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;

/**
 * What must be said wherever chlorine is reckoned. Sources: a county health sheet and Alberta's Working Well module 6
 * (mixing, goggles, rinsing), Minnesota Department of Health on well disinfectants (product), all seen.
 */
final class Cautions {
  static final List<Phrase> ALL = List.of(
      Phrase.of(
          "Never mix chlorine with acid or ammonia: poison gas.",
          "Nunca mezcle cloro con ácido o amoniaco: gas venenoso."),
      Phrase.of(
          "Goggles and gloves. Add the product to water, in open air; rinse skin at once.",
          "Gafas y guantes. Añada el producto al agua, al aire libre; enjuague la piel de inmediato."),
      Phrase.of(
          "Unscented product for drinking water only (NSF/ANSI 60, or registered for it): no perfume, no algaecide.",
          "Solo producto sin aroma para agua potable (NSF/ANSI 60, o registrado): sin perfume, sin alguicida."),
      Phrase.of(
          "The label and the local code come first. Nobody drinks until the chlorine is flushed and a sample is clean.",
          "La etiqueta y el reglamento local mandan. Nadie bebe hasta purgar el cloro y tener una muestra limpia."));

  private Cautions() {}

  /** What holds for one product, and the cautions. */
  static List<Phrase> and(Phrase... own) {
    List<Phrase> all = new ArrayList<>(List.of(own));
    all.addAll(ALL);
    return all;
  }
}
