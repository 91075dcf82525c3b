package steening.drawing;

import steening.language.Reader;
import steening.well.Well;

/** The section of a well to scale. */
public final class Section {
  private Section() {}

  public static String draw(Well well, Reader reader) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\"/>";
  }
}
