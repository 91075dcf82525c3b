package steening.page;

import java.util.List;

/**
 * What a shell lends so that entries can be written: the core makes no ids and reads no clock.
 *
 * @param device the device's id
 * @param nextSequence the number the device's next entry will have
 * @param ids fresh ids, UUIDs of version 7, as many as one request may need
 */
public record Pen(String device, long nextSequence, List<String> ids) {
  public Pen {
    ids = List.copyOf(ids);
  }
}
