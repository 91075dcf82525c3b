package steening.field;

import java.util.List;

/** A field that offers answers to choose from. */
public interface Offering {
  List<ChoiceField.Option> offered();

  /** How many of them, the usual ones, are to be seen from the start. */
  int atOnce();

  /** Whether an answer may also be typed. */
  boolean takesWords();
}
