package steening.stage.decommissioning;

import java.util.List;
import steening.language.Phrase;

/** Where closing a hole can hurt someone. */
final class PluggingCautions {
  static final List<Phrase> ALL = List.of(
      Phrase.of(
          "An open hole stays covered and marked until the last bag is in (COMAR 26.04.04.16, seen).",
          "El barreno abierto queda tapado y señalado hasta el último saco (COMAR 26.04.04.16, leído)."),
      Phrase.of(
          "Wet cement burns skin and eyes, dust harms lungs: gloves, goggles, mask (29 CFR 1926.55, from memory).",
          "El cemento húmedo quema piel y ojos, el polvo daña: guantes, goggles, mascarilla (29 CFR 1926.55, de"
              + " memoria)."),
      Phrase.of(
          "Pump and casing come out heavy and full of water: power off and locked, nobody under the load (29 CFR"
              + " 1910.147, from memory).",
          "Bomba y ademe salen pesados y llenos de agua: corriente cortada con candado, nadie bajo la carga (29 CFR"
              + " 1910.147, de memoria)."),
      Phrase.of(
          "A flowing or gassy well is not filled before it is controlled (Minn. R. 4725.3450, seen).",
          "Un pozo surgente o con gas no se llena antes de controlarlo (Minn. R. 4725.3450, leído)."));

  private PluggingCautions() {}
}
