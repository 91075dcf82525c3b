package steening.office.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import steening.journal.Codec;
import steening.journal.Entry;

/** The invented firm with its wells, for looking around and for tests. Nobody in it exists. */
public final class DemoFirm {
  public static final String NAME = "Marsh & Daughter, wells";
  private static final List<String> WELLS =
      List.of(
          "everyday-well", "bridged-pack", "washed-out-hole", "lost-hole", "clay-for-sand", "waiting-for-the-ticket",
          "first-call");

  private DemoFirm() {}

  /** All entries of all wells. */
  public static List<Entry> entries() {
    return WELLS.stream().flatMap(name -> well(name).stream()).toList();
  }

  /** The entries of one well, in the order they were written. */
  public static List<Entry> well(String name) {
    try (InputStream in = DemoFirm.class.getResourceAsStream("/demo/" + name + ".jsonl")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).map(Codec::read).toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the demo firm's journal of " + name + " is missing", e);
    }
  }
}
