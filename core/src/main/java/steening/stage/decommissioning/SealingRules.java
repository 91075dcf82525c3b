package steening.stage.decommissioning;

import java.util.List;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Mass;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Source;

/** What rules say of closing a hole, each with where it stands. They differ; the local code is the one that counts. */
enum SealingRules {
  BY_TREMIE(
      Phrase.of(
          "Cement, concrete and slurry go through a tremie from the bottom, its end kept in the grout.",
          "Cemento, concreto y lechada van por tremie desde el fondo, con la punta dentro de la lechada."),
      Source.seen(
          "Mich. Rule 164; Alberta's Working Well, module 9", "Mich. Rule 164; Working Well de Alberta, módulo 9")),
  SLOWLY(
      Phrase.of(
          "Chips are poured slowly, a bag of {0} in no less than 3 to 5 minutes, and sounded often.",
          "Los pellets se vierten despacio, un saco de {0} en no menos de 3 a 5 minutos, sondeando seguido.",
          new Figure(Mass.of(50, Unit.POUND), Scale.WEIGHT)),
      Source.memory("makers' and state guidance", "guías de fabricantes y estados")),
  NO_FINES(
      Phrase.of(
          "Fines stay out of the hole; granular bentonite never through water.",
          "Los finos quedan fuera; la bentonita granular nunca a través de agua."),
      Source.seen("trade article; Mich. R 325.1633a(5)", "artículo técnico; Mich. R 325.1633a(5)")),
  NOT_A_SEAL(
      Phrase.of(
          "Sand, gravel and drilling mud do not seal. Some rules allow fill between two seals.",
          "Arena, grava y lodo no sellan. Algunas normas permiten relleno entre dos sellos."),
      Source.seen("Alberta's Working Well, module 9; Maryland", "Working Well de Alberta, módulo 9; Maryland")),
  CASING_OFF(
      Phrase.of(
          "The casing comes off at least {0} below ground.", "El ademe se corta al menos {0} bajo el terreno.",
          new Figure(Plugging.BELOW_GROUND, Scale.DEPTH)),
      Source.seen("Ohio 3745-9-10(C)(2)(a)", "Ohio 3745-9-10(C)(2)(a)")),
  CHLORINE(
      Phrase.of(
          "At least 50 mg/L of chlorine first, where there is slime.",
          "Primero al menos 50 mg/L de cloro, donde haya limo bacteriano."),
      Source.seen("Ohio 3745-9-10(C)(3)", "Ohio 3745-9-10(C)(3)")),
  NO_BENTONITE(
      Phrase.of(
          "Bentonite does not swell above 4000 mg/L of chloride or 700 of calcium, and is not allowed below pH 4 or"
              + " above 1000 mg/L dissolved.",
          "La bentonita no hincha con más de 4000 mg/L de cloruro o 700 de calcio, y no se permite bajo pH 4 o sobre"
              + " 1000 mg/L disueltos."),
      Source.seen(
          "Alberta's Working Well, module 9; COMAR 26.04.04.19 C(2)(b)",
          "Working Well de Alberta, módulo 9; COMAR 26.04.04.19 C(2)(b)")),
  CONCRETE(
      Phrase.of(
          "Concrete: a sack of {0} for every {1}, which is five to the cubic yard.",
          "Concreto: un saco de {0} por cada {1}.",
          new Figure(Mass.of(94, Unit.POUND), Scale.WEIGHT),
          new Figure(Volume.of(27.0 / 5, Unit.CUBIC_FOOT), Scale.VOLUME)),
      Source.seen("COMAR 26.04.04.35", "COMAR 26.04.04.35")),
  NOTICE(
      Phrase.of(
          "Tell the authority before: a notice in Minnesota, 24 hours in North Carolina.",
          "Avise antes a la autoridad: notificación en Minnesota, 24 horas en Carolina del Norte."),
      Source.seen("Minn. R. 4725.1832; 15A NCAC 02C .0301(b)(3)", "Minn. R. 4725.1832; 15A NCAC 02C .0301(b)(3)"));

  private final Phrase what;
  private final Source source;

  SealingRules(Phrase what, Source source) {
    this.what = what;
    this.source = source;
  }

  Phrase what() {
    return what;
  }

  /** Where it stands, and whether that was read. */
  Phrase source() {
    return source.read() == Source.Read.SEEN
        ? Phrase.of("{0}, seen", "{0}, leído", source.publication())
        : Phrase.of("{0}, from memory", "{0}, de memoria", source.publication());
  }

  /** What it says and where it stands, and that the local code goes before it: the next step of a finding. */
  Phrase cited() {
    return Phrase.of(
        "{0} ({1}) Your local code decides.", "{0} ({1}) Decide su norma local.", what, source());
  }

  static List<SealingRules> all() {
    return List.of(values());
  }
}
