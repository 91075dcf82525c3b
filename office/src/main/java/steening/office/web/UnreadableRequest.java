package steening.office.web;

import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import steening.language.Phrase;

/** For what the server refuses before it reaches us: an address or a header that is not HTTP. */
final class UnreadableRequest implements Request.Handler {
  private static final Phrase SENTENCE =
      Phrase.of(
          "That request could not be read; nothing was stored.", "No se pudo leer esa solicitud; no se guardó nada.");

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    response.getHeaders().put("Content-Type", "text/html; charset=utf-8");
    Headers.ALL.forEach(response.getHeaders()::put);
    Content.Sink.write(response, true, TroublePage.of(SENTENCE), callback);
    return true;
  }
}
