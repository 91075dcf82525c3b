package steening.phone;

import com.eclipsesource.json.Json;
import org.teavm.jso.JSExport;
import steening.page.Desk;

/**
 * The core as the script of a browser sees it: one text in, one text out. Nothing here knows that it is in a browser;
 * storing, fetching and the clock are the script's.
 */
public final class Phone {
  private Phone() {}

  /** The compiler wants a main class; there is nothing to start. */
  public static void main(String[] arguments) {}

  /**
   * Answers one request.
   *
   * @param asked JSON, as {@link Asked} reads it
   * @return JSON, as {@link Answered} writes it
   */
  @JSExport
  public static String handle(String asked) {
    Asked question = Asked.read(Json.parse(asked).asObject());
    return Answered.write(Desk.answer(question.request(), question.shelf(), question.now(), question.pen()));
  }
}
