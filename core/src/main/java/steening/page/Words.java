package steening.page;

import steening.language.Phrase;

/** What the pages themselves say. */
final class Words {
  static final Phrase WELLS = Phrase.of("Wells", "Pozos");
  static final Phrase RECKON = Phrase.of("Reckoner", "Cálculos");
  static final Phrase NEW_WELL = Phrase.of("New well", "Pozo nuevo");
  static final Phrase NEXT = Phrase.of("Next", "Sigue");
  static final Phrase EXPECT = Phrase.of("Expect", "Se espera");
  static final Phrase GIVE_OR_TAKE = Phrase.of("give or take {0}", "más o menos {0}");
  static final Phrase LEFT = Phrase.of("{0} left", "quedan {0}");
  static final Phrase PAST = Phrase.of("past by {0}", "pasó hace {0}");
  static final Phrase MEASURED = Phrase.of("Measured", "Medido");
  static final Phrase EXPECTED = Phrase.of("Expected", "Esperado");
  static final Phrase CAUSE = Phrase.of("Likely", "Probable");
  static final Phrase DO_NOW = Phrase.of("Do now", "Haga ahora");
  static final Phrase WORKING = Phrase.of("Working", "Desarrollo");
  static final Phrase SOURCE = Phrase.of("Source", "Fuente");
  static final Phrase HOLDS_FOR = Phrase.of("Holds for", "Vale para");
  static final Phrase FROM_MEMORY = Phrase.of("from memory, not re-read", "de memoria, sin releer");
  static final Phrase GIVEN = Phrase.of("given", "dato");
  static final Phrase TAKE_DOWN = Phrase.of("Take it down", "Anotar");
  static final Phrase TAKEN_DOWN = Phrase.of("Taken down.", "Anotado.");
  static final Phrase MAY_STAY_EMPTY = Phrase.of("may stay empty", "puede quedar vacío");
  static final Phrase CHOOSE = Phrase.of("choose", "elija");
  static final Phrase OTHERS = Phrase.of("others", "otros");
  static final Phrase OWN_WORD = Phrase.of("or in another word", "o con otra palabra");
  static final Phrase IT_MEANS = Phrase.of("It means", "Significa");
  static final Phrase AS_TYPED = Phrase.of("{0}, as typed", "{0}, como se escribió");
  static final Phrase MORE = Phrase.of("More to say", "Algo más");
  static final Phrase WHEN = Phrase.of("when it happened, if not now", "cuándo ocurrió, si no es ahora");
  static final Phrase HAND = Phrase.of("who writes", "quién anota");
  static final Phrase HAND_MISSING = Phrase.of("Who writes? Example: Ada.", "¿Quién anota? Ejemplo: Ada.");
  static final Phrase WHEN_UNREADABLE = Phrase.of(
      "The time \"{0}\" is not understood. Example: 2026-05-06T14:05.",
      "No se entiende la hora «{0}». Ejemplo: 2026-05-06T14:05.");
  static final Phrase WHEN_AHEAD = Phrase.of(
      "{0} has not come yet. When did it happen?", "{0} aún no llega. ¿Cuándo ocurrió?");
  static final Phrase NOT_TAKEN = Phrase.of(
      "Not taken down yet: see the marked lines. What you typed is kept.",
      "Aún no se anotó: vea las líneas marcadas. Lo escrito se conserva.");
  static final Phrase ALSO_HERE = Phrase.of("Also in this stage", "También en esta etapa");
  static final Phrase STAGE_OF = Phrase.of("{0} of {1}", "{0} de {1}");
  static final Phrase ALL_DONE = Phrase.of(
      "Every stage is done. What comes later can still be taken down.",
      "Todas las etapas están hechas. Lo que venga aún puede anotarse.");
  static final Phrase DONE = Phrase.of("done", "hecho");
  static final Phrase UNDER_WAY = Phrase.of("under way", "en curso");
  static final Phrase NOT_BEGUN = Phrase.of("not begun", "sin empezar");
  static final Phrase NOT_NEEDED = Phrase.of("not needed", "no hace falta");
  static final Phrase SECTION = Phrase.of("Section", "Corte del pozo");
  static final Phrase FINDINGS = Phrase.of("Findings", "Hallazgos");
  static final Phrase MORE_LIKE_THIS = Phrase.of("And {0} more like this.", "Y {0} más como este.");
  static final Phrase JOURNAL = Phrase.of("Journal", "Bitácora");
  static final Phrase OLDER = Phrase.of("Older entries", "Registros anteriores");
  static final Phrase NEWEST = Phrase.of("Newest entries", "Registros más recientes");
  static final Phrase OF_ALL = Phrase.of("Entries {0} to {1} of {2}", "Registros {0} a {1} de {2}");
  static final Phrase SO_FAR = Phrase.of("So far", "Hasta ahora");
  static final Phrase REPORT = Phrase.of("Completion report (PDF)", "Informe de terminación (PDF)");
  static final Phrase LOAD_LIST = Phrase.of("Load list", "Lista de carga");
  static final Phrase EARLIER_WELLS = Phrase.of("Earlier wells", "Pozos anteriores");
  static final Phrase NO_EARLIER_WELLS = Phrase.of(
      "No other well of the firm is packed, sounded and grouted yet.",
      "Ningún otro pozo de la empresa tiene aún filtro sondeado y lechada.");
  static final Phrase RECKON_WITH =
      Phrase.of("Reckon with {0} times the drilled size, give or take {1}",
          "Cuente con {0} veces lo perforado, más o menos {1}");
  static final Phrase WELLS_OF_SAME_GROUND = Phrase.of(
      "From the wells whose pack stands in the same ground ({0}), few of them drawn toward the usual.",
      "De los pozos con el filtro en el mismo terreno ({0}); si son pocos, acercado a lo usual.");
  static final Phrase ALL_EARLIER_WELLS = Phrase.of(
      "From all of them ({0}), in whatever ground; few of them drawn toward the usual.",
      "De todos ({0}), en cualquier terreno; si son pocos, acercado a lo usual.");
  static final Phrase TAILGATE = Phrase.of("Tailgate sheet", "Plática de seguridad");
  static final Phrase TALK_FIRST = Phrase.of(
      "Talk it through before the work, with everybody on site.", "Háblenlo antes del trabajo, con todos en el sitio.");
  static final Phrase CORRECT = Phrase.of("Correct", "Corregir");
  static final Phrase WITHDRAW = Phrase.of("Withdraw", "Retirar");
  static final Phrase WHY = Phrase.of("why", "por qué");
  static final Phrase WITHDRAWN = Phrase.of("withdrawn", "retirado");
  static final Phrase CORRECTED = Phrase.of("corrected", "corregido");
  static final Phrase CORRECTION = Phrase.of("correction", "corrección");
  static final Phrase WAITING = Phrase.of("waiting for the entry it corrects", "espera el registro que corrige");
  static final Phrase RECKON_IT = Phrase.of("Reckon", "Calcular");
  static final Phrase NOTHING_HERE = Phrase.of("There is nothing at this address.", "No hay nada en esta dirección.");
  static final Phrase NO_WELLS = Phrase.of("No wells yet.", "Aún no hay pozos.");
  static final Phrase UNITS = Phrase.of("Units", "Unidades");
  static final Phrase US_UNITS = Phrase.of("feet, gallons", "pies, galones");
  static final Phrase METRIC_UNITS = Phrase.of("metres, litres", "metros, litros");
  static final Phrase LANGUAGE = Phrase.of("Language", "Idioma");
  static final Phrase NOTHING_WRONG = Phrase.of("Nothing stands out.", "Nada llama la atención.");
  static final Phrase WHAT = Phrase.of("What", "Qué");
  static final Phrase HOW_MUCH = Phrase.of("How much", "Cuánto");
  static final Phrase PLAN_FIRST = Phrase.of("Make the plan first.", "Haga primero el plan.");
  static final Phrase SKIP = Phrase.of("To the page", "Al contenido");

  private Words() {}
}
