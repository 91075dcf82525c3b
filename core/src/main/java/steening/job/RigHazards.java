package steening.job;

import steening.language.Phrase;

/** What hurts people around a rig: power lines, the turning rod, pits, dust, noise, gas, weather. */
final class RigHazards {
  static final Caution POWER_LINES = Caution.seen(
      Phrase.of(
          "Power lines: keep mast, rods and hoist {0} away up to 50 kV, {1} up to 200 kV, {2} up to 350 kV, {3} up to"
              + " 500 kV, {4} up to 750 kV, {5} up to 1000 kV",
          "Líneas eléctricas: mástil, varillas y malacate a {0} hasta 50 kV, {1} hasta 200 kV, {2} hasta 350 kV, {3}"
              + " hasta 500 kV, {4} hasta 750 kV, {5} hasta 1000 kV",
          new Limit("10 ft", "3.1 m"), new Limit("15 ft", "4.6 m"), new Limit("20 ft", "6.1 m"),
          new Limit("25 ft", "7.7 m"), new Limit("35 ft", "10.7 m"), new Limit("45 ft", "13.8 m")),
      "29 CFR 1926.1408, Table A", "29 CFR 1926.1408, tabla A");

  static final Caution VOLTAGE_UNKNOWN = Caution.seen(
      Phrase.of(
          "Voltage not known: keep {0} away where it can be 350 kV at most, {1} where it can be more",
          "Voltaje desconocido: a {0} donde pueda ser de hasta 350 kV, a {1} donde pueda ser mayor",
          new Limit("20 ft", "6.1 m"), new Limit("50 ft", "15.3 m")),
      "29 CFR 1926.1408 and 1926.1409", "29 CFR 1926.1408 y 1926.1409");

  static final Caution DRILLING_RIGS = Caution.memory(
      Phrase.of(
          "A rig built for drilling may fall under another rule: {0} up to 50 kV, and {1} more for every 10 kV above."
              + " Keep the greater distance",
          "Un equipo hecho para perforar puede regirse por otra norma: {0} hasta 50 kV, y {1} más por cada 10 kV por"
              + " encima. Guarde la distancia mayor",
          new Limit("10 ft", "3.1 m"), new Limit("4 in", "11 cm")),
      "29 CFR 1926.1400(c), 1926.600(a)(6), 1910.333(c)(3)", "29 CFR 1926.1400(c), 1926.600(a)(6), 1910.333(c)(3)");

  static final Caution MAST = Caution.seen(
      Phrase.of(
          "Never move with the mast up. Walk round the rig before raising it, and measure on the level, from the raised"
              + " mast",
          "Nunca se mueva con el mástil arriba. Camine alrededor del equipo antes de izarlo y mida en horizontal, desde"
              + " el mástil izado"),
      "trade articles on electrical safety at the drill site", "artículos del ramo sobre seguridad eléctrica");

  static final Caution ELECTROCUTED = Caution.seen(
      Phrase.of(
          "Power lines kill more of us than anything else: 21 well drillers from 1992 to 2000, 19 of them with a rig or"
              + " a pump hoist in an overhead line",
          "Las líneas eléctricas nos matan más que nada: 21 perforadores de 1992 a 2000, 19 de ellos con el equipo o la"
              + " grúa de bombas en una línea aérea"),
      "a trade article quoting a census of fatal injuries; NIOSH 2006-113",
      "un artículo del ramo que cita un censo de muertes; NIOSH 2006-113");

  static final Caution BURIED_LINES = Caution.memory(
      Phrase.of(
          "Buried lines: call 811 before any digging, two to three working days by state. Usually {0} to {1} beside a"
              + " mark are to be spared. The owner's own lines are not marked: ask",
          "Líneas enterradas: llame al 811 antes de excavar, dos a tres días hábiles según el estado. Suelen respetarse"
              + " {0} a {1} junto a cada marca. Las líneas propias del dueño no se marcan: pregunte",
          new Limit("18 in", "46 cm"), new Limit("24 in", "61 cm")),
      "one-call laws of the states; 29 CFR 1926.651(b)", "leyes estatales de llamada única; 29 CFR 1926.651(b)");

  static final Caution SILICA = Caution.seen(
      Phrase.of(
          "Silica dust: at most 50 µg/m³ over a shift, and act from 25. Drill with water",
          "Polvo de sílice: a lo más 50 µg/m³ por turno, y actúe desde 25. Perfore con agua"),
      "29 CFR 1926.1153", "29 CFR 1926.1153");

  static final Caution ROTATION = Caution.memory(
      Phrase.of(
          "Turning rod: no loose clothing, no hand on it, wrench off before it turns, guards on. Try the emergency stop"
              + " every shift",
          "Varilla en giro: sin ropa suelta, sin manos encima, llave fuera antes de girar, guardas puestas. Pruebe el"
              + " paro de emergencia cada turno"),
      "29 CFR 1926.300(b), 1910.219; a state's drilling safety manual",
      "29 CFR 1926.300(b), 1910.219; un manual estatal de seguridad");

  static final Caution NOISE = Caution.seen(
      Phrase.of(
          "A rig makes 90 dBA and more, as much as is allowed over a shift; action is due from 85. Protect your ears,"
              + " stand {0} to {1} off",
          "Un equipo hace 90 dBA o más, lo permitido por turno; desde 85 hay que actuar. Proteja los oídos, párese a"
              + " {0} a {1}",
          new Limit("6 ft", "1.9 m"), new Limit("12 ft", "3.7 m")),
      "NIOSH 2006-113", "NIOSH 2006-113");

  static final Caution PITS = Caution.memory(
      Phrase.of(
          "Pits and trenches: fence them; from {0} deep a ladder within {1}; from {2} deep sides that cannot fall in",
          "Fosas y zanjas: cérquelas; desde {0} de hondo, escalera a menos de {1}; desde {2}, paredes que no se"
              + " derrumben",
          new Limit("4 ft", "1.2 m"), new Limit("25 ft", "7.6 m"), new Limit("5 ft", "1.5 m")),
      "29 CFR 1926.651 and 652", "29 CFR 1926.651 y 652");

  static final Caution FLOWING = Caution.seen(
      Phrase.of(
          "Flowing water: do not drill into it before it is planned how to hold it. Up to {0} and {1} it can be grouted"
              + " simply; beyond that the well is built in another way",
          "Agua surgente: no la perfore sin tener un plan para contenerla. Hasta {0} y {1} puede cementarse de modo"
              + " simple; más allá, el pozo se construye de otra forma",
          new Limit("70 gpm", "4.4 L/s"), new Limit("10 psi", "68 kPa")),
      "Minn. Rules 4725.3450", "Minn. Rules 4725.3450");

  static final Caution GAS = Caution.memory(
      Phrase.of(
          "Gas: methane burns at 5 to 15 % of the air; hydrogen sulphide has a ceiling of 20 ppm and is deadly at 100."
              + " No flame, no spark; vent the casing",
          "Gas: el metano arde con 5 a 15 % en el aire; el sulfuro de hidrógeno tiene un tope de 20 ppm y es mortal a"
              + " 100. Ni llama ni chispa; ventile el ademe"),
      "NIOSH; 29 CFR 1910.1000, Table Z-2", "NIOSH; 29 CFR 1910.1000, tabla Z-2");

  static final Caution OPEN_HOLE = Caution.seen(
      Phrase.of(
          "Cover and cap the hole whenever work stops", "Tape y asegure el barreno cada vez que pare el trabajo"),
      "COMAR 26.04.04.16 A(2)", "COMAR 26.04.04.16 A(2)");

  static final Caution WEATHER = Caution.memory(
      Phrase.of(
          "Traffic, heat, slips: plan the site. Stop while lightning is within {0}, and 30 minutes after the thunder",
          "Tránsito, calor, resbalones: planee el sitio. Pare con rayos a menos de {0}, hasta 30"
              + " minutos tras el trueno",
          new Limit("10 mi", "17 km")),
      "NOAA; good practice", "NOAA; buena práctica");

  private RigHazards() {}
}
