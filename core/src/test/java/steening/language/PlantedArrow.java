package steening.language;

import java.io.StringReader;
import java.util.concurrent.atomic.AtomicInteger;
import org.hipparchus.util.FastMath;
import steening.page.Reply;

/** Sees what its package may not, so that the test of the arrows has something to find. */
public final class PlantedArrow {
  final AtomicInteger counter = new AtomicInteger();

  Reply upward() {
    return Reply.page("");
  }

  StringReader closed() {
    return new StringReader("");
  }

  double borrowed() {
    return FastMath.exp(1);
  }
}
