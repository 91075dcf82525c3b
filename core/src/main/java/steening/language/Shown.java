package steening.language;

/** Something that can be written for a reader, in the reader's language and units. */
public interface Shown {
  String shownTo(Reader reader);
}
