package steening.stage.seal;

import steening.language.Phrase;
import steening.quantity.Figure;

/** What to do, in order, when grout runs out before the annulus is full. */
final class ShortGrout {
  private ShortGrout() {}

  /**
   * The steps.
   *
   * @param water to have for the bags that are sent for
   */
  static Phrase inOrder(Figure water) {
    return Phrase.of(
        "In order: send for the bags, and for {0} of water in all; sound with the pump off, to know a washout from a"
            + " loss; keep the casing full of water. If the last bag is in before they come, lift the tremie clear and"
            + " rinse it. Back within the working time: fill it with fresh grout, lower it in, go on. Later: let it"
            + " set, sound it, and start the next lift on top. Nothing else goes in: no mud, no cuttings (Ohio"
            + " 3745-9-07).",
        "En orden: mande por los sacos, y {0} de agua en total; sondee con la bomba parada, para distinguir socavación"
            + " de pérdida; mantenga lleno de agua el ademe. Si el último saco entra antes de que lleguen, levante la"
            + " tremie y enjuáguela. De vuelta en el tiempo de trabajo: llénela de lechada fresca, métala y siga. Más"
            + " tarde: deje fraguar, sondee y empiece otra etapa encima. Nada más entra: ni lodo ni recortes (Ohio"
            + " 3745-9-07).",
        water);
  }
}
