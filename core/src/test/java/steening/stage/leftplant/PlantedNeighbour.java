package steening.stage.leftplant;

import steening.stage.rightplant.PlantedThing;

/** A room that knows its neighbour, so that the test of the arrows has something to find. */
public final class PlantedNeighbour {
  PlantedThing borrowed() {
    return new PlantedThing();
  }
}
