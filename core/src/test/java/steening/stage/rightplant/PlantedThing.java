package steening.stage.rightplant;

/** What the room next door should not see. */
public final class PlantedThing {}
