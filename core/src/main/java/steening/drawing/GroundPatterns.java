package steening.drawing;

import steening.well.Material;

/**
 * How each material is drawn: grains for sand, larger the coarser; stones for gravel; dashes for clay, dash and dots
 * for silt, mixed as the ground is mixed. The drawings are our own, in the common practice of geologic sections; which
 * number of FGDC-STD-013-2006 each stands for is in {@link Material#pattern()}.
 */
final class GroundPatterns {
  private static final int[] FINE = {
    42, 1, 22, 2, 30, 2, 2, 3, 37, 3, 11, 4, 18, 5, 26, 6, 32, 7, 38, 9, 15, 10, 25, 12, 5, 13, 36, 14, 32, 16,
    42, 16, 13, 17, 7, 19, 27, 19, 2, 21, 35, 21, 21, 22, 16, 23, 6, 25, 42, 25, 28, 28, 11, 29, 36, 30, 42, 30,
    3, 32, 18, 32, 13, 34, 27, 35, 40, 36, 7, 38, 17, 38
  };
  private static final int[] MEDIUM = {
    35, 2, 12, 4, 24, 6, 45, 7, 2, 8, 33, 10, 22, 12, 14, 14, 6, 15, 39, 16, 21, 19, 15, 20, 3, 21, 9, 21, 44, 22,
    33, 25, 5, 30, 23, 30, 41, 34, 14, 35, 6, 36, 21, 36, 29, 38, 39, 41, 19, 42, 7, 44
  };
  private static final int[] COARSE = {
    51, 8, 15, 9, 32, 9, 3, 10, 9, 16, 20, 18, 35, 18, 54, 21, 44, 22, 16, 29, 48, 31, 33, 33, 55, 35, 21, 38, 8,
    39, 28, 43, 43, 43, 17, 45, 3, 48, 11, 51, 30, 51, 42, 5, 24, 3, 26, 27, 7, 27, 38, 26
  };
  private static final int[] SILTY = {
    21, 5, 29, 9, 36, 4, 6, 15, 15, 16, 24, 17, 35, 16, 4, 24, 14, 25, 8, 30, 20, 31, 38, 29, 28, 30
  };
  private static final int[] BETWEEN_STONES = {
    56, 2, 26, 4, 54, 11, 28, 14, 56, 18, 38, 20, 45, 23, 14, 25, 55, 25, 4, 28, 36, 38, 26, 40, 33, 46, 3, 47, 22,
    48, 43, 48
  };

  private GroundPatterns() {}

  static Tile of(Material material) {
    return switch (material) {
      case TOPSOIL ->
          Tile.of(18, 13).lines("M3 1.5v3.5M7.5 2.5l-1.5 3M12 1l1.2 3.5M16.5 4v3.5")
              .lines("M10 6.5l-1 3.5M4.5 8l1.5 3M14 9.5l-1.5 2.5M1 7l.8 2").onEarth();
      case CLAY -> Tile.of(16, 9).lines("M1.5 2.5h8M9.5 7h6.5M0 7h1.5").onEarth();
      case SANDY_CLAY ->
          Tile.of(20, 11).lines("M1.5 3h8M11.5 8.5h7.5").grains(1.7, 27, 6, 34, 7, 5, 17, 14, 16).onEarth();
      case SILT -> Tile.of(14, 8).lines("M1 2h4.5M8 6h4.5").grains(1.3, 16, 4, 22, 4, 3, 12, 9, 12).onEarth();
      case SILTY_SAND ->
          Tile.of(20, 16).lines("M2 4h5.5M12 12h5.5")
              .grains(1.3, SILTY);
      case FINE_SAND -> Tile.of(22, 20).grains(1.15, FINE);
      case MEDIUM_SAND -> Tile.of(25, 23).grains(1.75, MEDIUM);
      case COARSE_SAND -> Tile.of(30, 27).grains(2.5, COARSE);
      case SAND_AND_GRAVEL ->
          Tile.of(30, 26).pebble(6, 6, 4, 3).pebble(21, 5, 3, 2.3).pebble(14, 14, 3.4, 2.6).pebble(25, 18, 4, 3)
              .pebble(6, 20, 3, 2.4).grains(1.7, BETWEEN_STONES);
      case GRAVEL ->
          Tile.of(28, 24).pebble(5, 5, 4.2, 3.2).pebble(15, 4.2, 3.4, 2.6).pebble(23, 7, 3.8, 4.4)
              .pebble(10.5, 12, 4, 3)
              .pebble(3.6, 17.5, 2.8, 3.4).pebble(18, 15, 2.6, 2.2).pebble(12.5, 20, 4.4, 2.8).pebble(23, 19, 4, 3.2);
      case CLAYEY_SAND -> Tile.of(20, 16).lines("M2 4h5.5M12 12h5.5").grains(1.9, SILTY).onEarth();
      case CLAYEY_GRAVEL ->
          Tile.of(28, 18).pebble(6, 5, 4.2, 3.2).pebble(21, 13, 4, 3).lines("M13 4h11M2 14h9").onEarth();
      case BOULDERS ->
          Tile.of(40, 32).pebble(10, 9, 8.5, 6.5).pebble(29, 8, 7, 5.5).pebble(20, 23, 9, 6.5).pebble(36, 24, 3, 5);
      case CONGLOMERATE ->
          Tile.of(28, 24).pebble(5, 6, 4, 3).pebble(16, 5, 3.4, 2.6).pebble(22, 17, 4.2, 3.2).pebble(9, 18, 3.6, 2.8)
              .lines("M0 .5h28M0 12.2h28");
      case SHELLS ->
          Tile.of(24, 18).lines("M2 7q4-7 8 0ZM6 7v-3.5M4 7l.8-2.6M8 7l-.8-2.6M14 16q4-7 8 0ZM18 16v-3.5M16 16l.8-2.6")
              .grains(1.5, 30, 8, 40, 12, 6, 26, 18, 30);
      case LOESS -> Tile.of(14, 14).lines("M3 2v4M10 9v4").grains(1.3, 18, 5, 24, 10, 4, 20, 10, 25).onEarth();
      case MARL -> Tile.of(22, 14).lines("M0 .5h22M5.5 .5v7M2 7.5h7M13 7.5h7M13 11h-7").onEarth();
      case CALICHE ->
          Tile.of(22, 14).lines("M0 .5h22M16.5 .5l-1.5 6.5M5 7.5l1.5 6").grains(1.3, 10, 6, 18, 9, 30, 20, 38, 24);
      case CHERT -> Tile.of(24, 14).lines("M2 7l4-4 4 4-4 4ZM14 12l3-3 3 3M14 .5l3 3 3-3M0 13.5h24");
      case COAL -> Tile.of(14, 8).lines("M0 1.5h14M0 3.5h14M0 5.5h6");
      case FILL -> Tile.of(22, 18).lines("M3 3l5 5M8 3l-5 5M14 12h5v4h-5ZM14 5l4-2").onEarth();
      case PEAT ->
          Tile.of(20, 11).lines("M1 4.5h8M3 4.5l-1.5-3M5 4.5v-3.5M7 4.5l1.5-3")
              .lines("M11 10h8M13 10l-1.5-3M15 10v-3.5M17 10l1.5-3").onEarth();
      case TILL ->
          Tile.of(26, 20).lines("M7 2l3.5 6h-7ZM20 11l3 5h-6ZM15 4.5h6M3.5 14h6")
              .grains(1.7, 26, 17, 47, 4, 23, 32, 4, 36)
              .onEarth();
      case LIMESTONE -> Tile.of(22, 14).lines("M0 .5h22M0 7.5h22M5.5 .5v7M16.5 7.5v6.5");
      case SANDSTONE ->
          Tile.of(18, 18).lines("M0 .5h18M0 9.5h18")
              .grains(1.5, 5, 8, 16, 11, 27, 7, 34, 12, 9, 28, 19, 25, 29, 30, 2, 24);
      case SHALE -> Tile.of(24, 8).lines("M0 2h15M18 2h6M0 6h4M7 6h17").onEarth();
      case GRANITE ->
          Tile.of(20, 20).lines("M2.5 5h6M5.5 2v6M12.5 12.5l4.5 4.5M17 12.5l-4.5 4.5M13 4l3 1.5M4 14.5l2.5 2");
    };
  }
}
