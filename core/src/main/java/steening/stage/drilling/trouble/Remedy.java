package steening.stage.drilling.trouble;

import steening.language.Phrase;

/** What to try next against lost circulation, in order: the cheapest first. Common practice, no source. */
final class Remedy {
  private static final Phrase SLOWER = Phrase.of(
      "Keep the hole full. First slow the pump, with mud no heavier than the ground needs; then thicken it.",
      "Mantenga lleno el barreno. Primero baje la bomba, con lodo no más pesado de lo necesario; luego espéselo.");
  private static final Phrase THICKER = Phrase.of(
      "Keep the hole full. Thicken the mud next: bentonite for gravel; then material that plugs.",
      "Mantenga lleno el barreno. Ahora espese el lodo: bentonita para grava; después, material obturante.");
  private static final Phrase PLUGGING = Phrase.of(
      "Keep the hole full. Material that plugs comes next, but none that rots where the screen will stand; then let it"
          + " stand with the bit up.",
      "Mantenga lleno el barreno. Ahora material obturante, pero nada que se pudra donde irá la rejilla; luego"
          + " déjelo reposar con la barrena arriba.");
  private static final Phrase WAITING = Phrase.of(
      "Pull the bit above the zone, fill the hole, and let it stand; then come back slowly with thick mud.",
      "Suba la barrena arriba de la zona, llene el barreno y déjelo reposar; luego vuelva despacio con lodo espeso.");
  private static final Phrase SHUT_OFF = Phrase.of(
      "Shut the zone off with cement or casing, or end the hole above it. Ask who pays before going on.",
      "Cierre la zona con cemento o ademe, o termine el barreno arriba. Pregunte quién paga antes de seguir.");
  private static final Phrase ELSEWHERE = Phrase.of(
      "Cement or casing did not hold: seal this hole by the rule and drill elsewhere, if the owner agrees.",
      "Ni cemento ni ademe aguantaron: selle este barreno según la norma y perfore en otro lugar, si el dueño acepta.");

  private Remedy() {}

  /** The next after what was tried last, by its code; the first where nothing was. */
  static Phrase after(String tried) {
    return switch (tried) {
      case "slower" -> THICKER;
      case "thicker" -> PLUGGING;
      case "plugging" -> WAITING;
      case "waiting" -> SHUT_OFF;
      case "cemented" -> ELSEWHERE;
      default -> SLOWER;
    };
  }
}
