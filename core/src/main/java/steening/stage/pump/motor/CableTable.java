package steening.stage.pump.motor;

import java.util.List;
import steening.field.ChoiceField;
import steening.language.Phrase;

/**
 * Longest copper cable of single-phase motors, in feet one way, for a drop of 5 %: drop-wire table of a pump supplier
 * (seen); nothing where the size is not allowed.
 */
enum CableTable {
  HALF_115("1/2-115", 100, 160, 250, 390, 620, 960, 1460),
  HALF_230("1/2-230", 400, 650, 1020, 1610, 2510, 3880, 5880),
  THREE_QUARTERS("3/4-230", 300, 480, 760, 1200, 1870, 2890, 4370),
  ONE("1-230", 250, 400, 630, 990, 1540, 2380, 3610),
  ONE_AND_HALF("1.5-230", 190, 310, 480, 770, 1200, 1870, 2850),
  TWO("2-230", 150, 250, 390, 620, 970, 1530, 2360),
  THREE("3-230", 120, 190, 300, 470, 750, 1190, 1850),
  FIVE("5-230", 0, 0, 180, 280, 450, 710, 1110),
  SEVEN_AND_HALF("7.5-230", 0, 0, 0, 200, 310, 490, 750);

  static final ChoiceField FIELD = ChoiceField.of(
      "motor", Phrase.of("motor and voltage", "motor y tensión"),
      THREE.option, ONE.option, HALF_115.option, HALF_230.option,
      THREE_QUARTERS.option, ONE_AND_HALF.option, TWO.option, FIVE.option, SEVEN_AND_HALF.option);

  private final ChoiceField.Option option;
  private final int[] feet;

  CableTable(String code, int... feet) {
    String words = code.replace("-", " hp, ") + " V";
    this.option = ChoiceField.option(code, words, words);
    this.feet = feet;
  }

  static CableTable of(ChoiceField.Option option) {
    return List.of(values()).stream().filter(m -> m.option.equals(option)).findFirst().orElseThrow();
  }

  /** In feet; 0 where this size is not allowed. */
  int longest(WireSize size) {
    return feet[size.ordinal()];
  }

  Phrase label() {
    return option.label();
  }
}
