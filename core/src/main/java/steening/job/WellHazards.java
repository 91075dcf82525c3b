package steening.job;

import steening.language.Phrase;

/** What hurts people who build, clean and equip a well: vapour, loads, air, acid, current, bad air, chlorine. */
final class WellHazards {
  static final Caution CEMENT_VAPOUR = Caution.memory(
      Phrase.of(
          "Primer and solvent cement burn, and their vapour harms (THF, MEK, cyclohexanone): open air, no flame",
          "El primario y el cemento solvente arden y su vapor daña (THF, MEK, ciclohexanona): aire libre, sin llama"),
      "safety data sheets of such products", "hojas de seguridad de esos productos");

  static final Caution HOISTING = Caution.memory(
      Phrase.of(
          "Hoisting: know what the string weighs, in air and in mud; clamp it in the middle; mind the sling angle;"
              + " nobody under the load",
          "Izaje: sepa cuánto pesa la columna, en aire y en lodo; sujétela al centro; cuide el ángulo de la eslinga;"
              + " nadie bajo la carga"),
      "29 CFR 1926, subparts CC and H", "29 CFR 1926, subpartes CC y H");

  static final Caution AIR_HOSES = Caution.memory(
      Phrase.of(
          "Air hoses of more than 1/2 in inside: a safety device at the source, couplings pinned and tied against"
              + " whipping, a relief valve",
          "Mangueras de aire de más de 1/2 in por dentro: dispositivo de seguridad en la fuente, coples con pasador y"
              + " cable contra latigazo, válvula de alivio"),
      "29 CFR 1926.302(b)(1) and (7)", "29 CFR 1926.302(b)(1) y (7)");

  static final Caution AIR_CLEANING = Caution.seen(
      Phrase.of(
          "Cleaning with air: below {0} when the nozzle is blocked, with goggles and a guard; never on people",
          "Limpieza con aire: menos de {0} con la boquilla tapada, con goggles y guarda; nunca sobre personas",
          new Limit("30 psi", "206 kPa")),
      "29 CFR 1910.242(b) and its interpretation of 1978; 29 CFR 1917.154",
      "29 CFR 1910.242(b) y su interpretación de 1978; 29 CFR 1917.154");

  static final Caution AIR_IN_PLASTIC = Caution.memory(
      Phrase.of(
          "Air in plastic casing: never above the rating of the pipe; top open; stand clear of the discharge",
          "Aire en ademe de plástico: nunca más de lo que aguanta el tubo; boca abierta; lejos de la descarga"),
      "good practice", "buena práctica");

  static final Caution ACID = Caution.memory(
      Phrase.of(
          "Acid: pour it into water, never the other way; never in one step with chlorine; let the gas out",
          "Ácido: viértalo en el agua, nunca al revés; nunca en el mismo paso que el cloro; deje salir el gas"),
      "guides to well rehabilitation", "guías de rehabilitación de pozos");

  static final Caution CURRENT = Caution.memory(
      Phrase.of(
          "Pump wiring: switch off, lock, tag, and test that it is dead; ground-fault breaker; ground wire",
          "Cableado de la bomba: corte, candado, etiqueta y prueba de que no hay voltaje; interruptor de falla a"
              + " tierra; conductor de tierra"),
      "29 CFR 1910.147, 1910.333, 1926.404", "29 CFR 1910.147, 1910.333, 1926.404");

  static final Caution BAD_AIR = Caution.memory(
      Phrase.of(
          "Well pits and tanks: test the air before you go in (oxygen 19.5 to 23.5 %, below 10 % of the explosive"
              + " limit, hydrogen sulphide below 10 ppm), ventilate, and leave one person outside",
          "Fosas de pozo y tanques: mida el aire antes de entrar (oxígeno 19.5 a 23.5 %, menos de 10 % del límite"
              + " explosivo, sulfuro de hidrógeno menos de 10 ppm), ventile y deje a alguien afuera"),
      "29 CFR 1910.146; 29 CFR 1926, subpart AA", "29 CFR 1910.146; 29 CFR 1926, subparte AA");

  static final Caution DRY_CHLORINE = Caution.seen(
      Phrase.of(
          "Dry hypochlorite: keep it away from fuel, oil and grease, which it sets on fire",
          "Hipoclorito seco: lejos de combustible, aceite y grasa, que enciende"),
      "a county health sheet; Alberta's Working Well, module 6",
      "una hoja de salud de un condado; Working Well de Alberta, módulo 6");

  private WellHazards() {}
}
