package steening.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

/** What becomes of something typed by one hand or another. */
public final class Hands {
  public static final Reader US = Reader.US_ENGLISH;
  public static final Reader METRIC = new Reader(Language.ENGLISH, UnitSystem.METRIC);
  public static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  private Hands() {}

  public static String taken(Field field, String typed, Reader reader) {
    Reading reading = field.read(typed, reader, false);
    assertThat(reading).as("%s: %s", field.name(), typed).isInstanceOf(Reading.Taken.class);
    return ((Reading.Taken) reading).text();
  }

  public static String taken(Field field, String typed) {
    return taken(field, typed, US);
  }

  public static Reading.Asked asked(Field field, String typed, Reader reader) {
    Reading reading = field.read(typed, reader, false);
    assertThat(reading).as("%s: %s", field.name(), typed).isInstanceOf(Reading.Asked.class);
    return (Reading.Asked) reading;
  }

  /** The meanings offered. */
  public static List<String> asked(Field field, String typed) {
    return asked(field, typed, US).meanings();
  }

  public static String refused(Field field, String typed, Reader reader) {
    Reading reading = field.read(typed, reader, false);
    assertThat(reading).as("%s: %s", field.name(), typed).isInstanceOf(Reading.Refused.class);
    return ((Reading.Refused) reading).sentence().shownTo(reader);
  }

  public static String refused(Field field, String typed) {
    return refused(field, typed, US);
  }
}
