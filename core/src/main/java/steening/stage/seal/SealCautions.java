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
          "Bentonite slurry is not for every ground: some rules keep it to loose ground, or from salty or acid water"
              + " (Minn. 4725.3050,"
              + " COMAR 26.04.04, seen).",
          "La lechada de bentonita no es para todo terreno: algunas normas la limitan a material suelto, o la"
              + " excluyen con agua salada o"
              + " ácida (Minn. 4725.3050, COMAR 26.04.04, leído)."));

  private SealCautions() {}
}
