package steening.stage.seal;

import java.util.List;
import steening.language.Phrase;

/** Where the work can hurt someone. Local codes, labels and the licensed driller go before these lines. */
final class SealCautions {
  static final List<Phrase> ALL = List.of(
      Phrase.of(
          "Wet cement burns skin and eyes (pH 12 to 13, from memory): gloves, goggles, rinse at once.",
          "El cemento húmedo quema piel y ojos (pH 12 a 13, de memoria): guantes, goggles, enjuague enseguida."),
      Phrase.of(
          "Cement and bentonite dust: wear a mask that fits (29 CFR 1926.55, from memory), open bags down wind.",
          "Polvo de cemento y bentonita: mascarilla ajustada (29 CFR 1926.55, de memoria), abra los sacos a favor del"
              + " viento."),
      Phrase.of(
          "Grout hoses hold pressure: stop the pump and let it off before a coupling is opened; stand clear of the"
              + " discharge (common"
              + " practice, no source).",
          "Las mangueras guardan presión: pare la bomba y descárguela antes de abrir un cople; lejos de la descarga"
              + " (práctica común, sin"
              + " fuente)."),
      Phrase.of(
          "Plastic casing is anchored while it is grouted (trade article, seen); no quick-setting cement with it"
              + " (Minn. 4725.3050,"
              + " seen). Set times, mixes and methods: your local code.",
          "El ademe plástico se sujeta al cementar (artículo técnico, leído); sin cemento rápido (Minn. 4725.3050,"
              + " leído). Tiempos de"
              + " fraguado, mezclas y métodos: su norma local."),
      Phrase.of(
          "Bentonite slurry is not for every ground: not in rock (Minn. 4725.3050); not at pH below 4 or over 1000"
              + " mg/L dissolved (COMAR 26.04.04), nor over 4000 mg/L chloride or 700 mg/L calcium (Alberta); above the"
              + " water table it dries and does not swell again (trade article); all seen.",
          "La lechada de bentonita no es para todo terreno: no en roca (Minn. 4725.3050); no con pH menor de 4 ni más"
              + " de 1000 mg/L disueltos (COMAR 26.04.04), ni más de 4000 mg/L de cloruro o 700 mg/L de calcio "
              + "(Alberta);"
              + " sobre el nivel del agua se seca y no vuelve a hincharse (artículo técnico); todo leído."));

  private SealCautions() {}
}
