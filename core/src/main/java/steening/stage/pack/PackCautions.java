package steening.stage.pack;

import java.util.List;
import steening.language.Phrase;

/** Where the work can hurt someone. Local codes, the bag's label and the licensed driller go before these lines. */
final class PackCautions {
  static final List<Phrase> ALL = List.of(
      Phrase.of(
          "Sand dust: silica, at most 50 µg/m³ over a shift (29 CFR 1926.1153, seen). Pour down wind, wear a mask"
              + " that fits.",
          "Polvo de arena: sílice, a lo más 50 µg/m³ por turno (29 CFR 1926.1153, leído). Vierta a favor del viento,"
              + " con mascarilla ajustada."),
      Phrase.of(
          "Lift bags with two hands and straight back; keep the hole covered whenever work stops (COMAR 26.04.04.16,"
              + " seen).",
          "Levante los sacos con las dos manos y la espalda recta; tape el barreno al parar (COMAR 26.04.04.16,"
              + " leído)."),
      Phrase.of(
          "Sand for a drinking-water well is disinfected: sources ask 50 to 200 mg/L of chlorine (Montana 36.21.662,"
              + " TM 5-813-1, seen);"
              + " never with acid or ammonia. Your local rule and the label decide.",
          "La arena de un pozo de agua potable se desinfecta: las fuentes piden 50 a 200 mg/L de cloro (Montana"
              + " 36.21.662, TM 5-813-1,"
              + " leído); nunca con ácido ni amoníaco. Deciden la norma local y la etiqueta."));

  private PackCautions() {}
}
