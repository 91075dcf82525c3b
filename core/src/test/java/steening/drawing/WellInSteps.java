package steening.drawing;

import java.util.List;
import java.util.Optional;
import steening.bore.Bore;
import steening.bore.Reach;
import steening.journal.Body;
import steening.journal.Moment;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Pressure;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.well.CasingString;
import steening.well.DepthFrom;
import steening.well.Fill;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Levels;
import steening.well.Looks;
import steening.well.Material;
import steening.well.Part;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.PumpSet;
import steening.well.Stratum;
import steening.well.Well;

/** Invented wells for the drawing's tests, built step by step in feet and inches. */
record WellInSteps(Well well) {
  private static final Moment NOON = new Moment(0, 0);

  static WellInSteps nothing() {
    return new WellInSteps(Well.named("w1"));
  }

  /** The everyday well: 142 ft of hole, screen 125 to 135 ft. */
  static WellInSteps everydayPlan() {
    return nothing().plan("hole-diameter", "7.875 in", "hole-depth", "142 ft", "casing-outside", "4.5 in",
        "casing-wall", "0.214 in",
        "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft", "sump", "2 ft", "slot", "20 slot",
        "pack-top", "115 ft", "chips-top", "110 ft", "grout-top", "0 ft", "rate", "12 gpm");
  }

  static WellInSteps everydayHalfDrilled() {
    return everydayPlan().drilled(0, 70, 7.875)
        .log(0, 3, Material.TOPSOIL, "dark, roots", false)
        .log(3, 38, Material.SANDY_CLAY, "brown, stiff", false)
        .log(38, 61, Material.CLAY, "blue, sticky", false)
        .log(61, 70, Material.SILTY_SAND, "grey, fine", false);
  }

  static WellInSteps everydayDrilled() {
    return everydayPlan().drilled(0, 142, 7.875)
        .log(0, 3, Material.TOPSOIL, "dark, roots", false)
        .log(3, 38, Material.SANDY_CLAY, "brown, stiff", false)
        .log(38, 61, Material.CLAY, "blue, sticky", false)
        .log(61, 78, Material.SILTY_SAND, "grey, fine", false)
        .log(78, 118, Material.CLAY, "grey, firm", false)
        .log(118, 138, Material.COARSE_SAND, "clean, medium to coarse", true)
        .log(138, 142, Material.CLAY, "grey, hard", false);
  }

  static WellInSteps everydayStringSet() {
    WellInSteps well = everydayDrilled().piece(Piece.Sort.SUMP, 2).piece(Piece.Sort.SCREEN, 10)
        .piece(Piece.Sort.CUT_PIECE, 6.5);
    for (double joint : new double[] {19.98, 20.02, 20.01, 19.97, 20.03, 19.99}) {
      well = well.piece(Piece.Sort.JOINT, joint);
    }
    return well.set(1.5);
  }

  static WellInSteps everydayFinished() {
    return everydayStringSet().poured(Fill.PACK, 14, 7).sounded(Fill.PACK, 115.2)
        .poured(Fill.CHIPS, 2, 1.38).sounded(Fill.CHIPS, 109.4).poured(Fill.GROUT, 8, 27.5).sounded(Fill.GROUT, 0)
        .atRest(29.5).pumping(41.9).pump(85);
  }

  /** The pack hangs in a bridge: nine bags in, the tape finds sand 6.5 ft above where it should be. */
  static WellInSteps bridged() {
    return nothing()
        .plan("hole-diameter", "7.875 in", "hole-depth", "97 ft", "casing-outside", "4.5 in", "casing-wall", "0.214 in",
            "stick-up", "1.5 ft", "screen-top", "84 ft", "screen-bottom", "94 ft", "sump", "2 ft", "pack-top", "74 ft",
            "chips-top", "69 ft", "grout-top", "0 ft")
        .drilled(0, 97, 7.875)
        .log(0, 4, Material.TOPSOIL, "", false).log(4, 30, Material.TILL, "stones", false)
        .log(30, 52, Material.SILT, "", false).log(52, 80, Material.CLAY, "blue", false)
        .log(80, 97, Material.SAND_AND_GRAVEL, "clean", true)
        .piece(Piece.Sort.SUMP, 2).piece(Piece.Sort.SCREEN, 10)
        .piece(Piece.Sort.JOINT, 20).piece(Piece.Sort.JOINT, 20).piece(Piece.Sort.JOINT, 20).piece(Piece.Sort.JOINT, 20)
        .piece(Piece.Sort.CUT_PIECE, 5.5).set(1.5)
        .poured(Fill.PACK, 3, 1.5).sounded(Fill.PACK, 91.1).poured(Fill.PACK, 3, 1.5).sounded(Fill.PACK, 84.6)
        .poured(Fill.PACK, 3, 1.5).sounded(Fill.PACK, 71.2);
  }

  /** Six bags are in and sounded, three more are poured and not sounded. */
  static WellInSteps packHalfPoured() {
    return bridged().with(Fill.PACK, Fill.PACK.empty()).poured(Fill.PACK, 6, 3).sounded(Fill.PACK, 84.6)
        .poured(Fill.PACK, 3, 1.5);
  }

  WellInSteps plan(String... namesAndTexts) {
    return with(Plan.PART, new Plan(Body.of(namesAndTexts)));
  }

  WellInSteps drilled(double from, double to, double inches) {
    Bore bore = well.get(Hole.PART).bore().with(new Reach(feet(from), feet(to), Length.of(inches, Unit.INCH)));
    return with(Hole.PART, new Hole(bore, Optional.of(NOON)));
  }

  WellInSteps log(double from, double to, Material material, String description, boolean water) {
    return with(GroundLog.PART, well.get(GroundLog.PART)
        .with(new Stratum(feet(from), feet(to), material, new Looks(List.of(), description), water, "e")));
  }

  WellInSteps piece(Piece.Sort sort, double feet) {
    return with(CasingString.PART, well.get(CasingString.PART).with(new Piece(sort, feet(feet), "e")));
  }

  WellInSteps set(double stickUp) {
    CasingString string = well.get(CasingString.PART).of(Length.of(4.5, Unit.INCH), Length.of(4.072, Unit.INCH));
    return with(CasingString.PART, string.set(feet(stickUp)));
  }

  WellInSteps poured(Part<Fill> part, int bags, double cubicFeet) {
    Volume volume = Volume.of(cubicFeet, Unit.CUBIC_FOOT);
    return with(part, well.get(part).with(new Fill.Pour(bags, volume, NOON, "e")));
  }

  WellInSteps sounded(Part<Fill> part, double depth) {
    return with(part, well.get(part).tagged(feet(depth), DepthFrom.GROUND, NOON, "e"));
  }

  WellInSteps atRest(double depth) {
    return with(Levels.PART, well.get(Levels.PART).rest(level(depth, 0)));
  }

  WellInSteps pumping(double depth) {
    return with(Levels.PART, well.get(Levels.PART).pumping(level(depth, 12)));
  }

  WellInSteps pump(double intake) {
    Volume tank = Volume.of(86, Unit.GALLON);
    Pressure on = Pressure.of(40, Unit.PSI);
    Pressure off = Pressure.of(60, Unit.PSI);
    return with(PumpSet.PART, Optional.of(new PumpSet(
        "pump", Optional.empty(), Measure.of(1, Unit.HORSEPOWER), feet(intake), FlowRate.of(10, Unit.GALLON_PER_MINUTE),
        new PumpSet.Tank(tank, on, off, Optional.empty()),
        PumpSet.DropPipe.UNKNOWN, PumpSet.Lift.UNKNOWN, "e")));
  }

  <T> WellInSteps with(Part<T> part, T value) {
    return new WellInSteps(well.with(part, value));
  }

  private static Levels.Level level(double depth, double rate) {
    return new Levels.Level(feet(depth), DepthFrom.GROUND, FlowRate.of(rate, Unit.GALLON_PER_MINUTE), NOON, "e");
  }

  private static Length feet(double feet) {
    return Length.of(feet, Unit.FOOT);
  }
}
