package steening.office.web;

import io.javalin.http.Context;
import jakarta.servlet.http.Cookie;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import steening.page.Desk;
import steening.page.Request;

/** From HTTP to the core's own idea of a request. */
final class Asked {
  /** A form of the longest tally is a few kilobytes. */
  static final int LARGEST_BODY = 1 << 20;

  private Asked() {}

  static Request of(Context context) {
    String method = context.req().getMethod();
    boolean post = method.equals("POST");
    if (!post && !method.equals("GET") && !method.equals("HEAD")) {
      throw new Refusal(405, "Only GET and POST are understood here.", "Aquí solo se entienden GET y POST.");
    }
    try {
      Map<String, String> values = Form.read(context.queryString());
      if (post) values.putAll(body(context));
      return new Request(post ? "POST" : "GET", path(context.req().getRequestURI()), values, cookies(context));
    } catch (IllegalArgumentException e) {
      throw new Refusal(400, "The address is not well formed.", "La dirección no está bien formada.");
    }
  }

  /** Decoded, and with single slashes. */
  private static String path(String address) {
    // in a path, unlike in a form, a plus is a plus
    return Form.decoded(address.replace("+", "%2B")).replaceAll("/{2,}", "/");
  }

  private static Map<String, String> body(Context context) {
    String type = context.contentType() == null ? "" : context.contentType();
    String text = text(context);
    if (type.startsWith("application/x-www-form-urlencoded")) return Form.read(text);
    if (type.startsWith("application/json")) return Map.of(Desk.RAW_BODY, text);
    if (text.isEmpty()) return Map.of();
    throw new Refusal(
        415, "Send a form or JSON, nothing else is read.", "Envíe un formulario o JSON; no se lee otra cosa.");
  }

  private static String text(Context context) {
    try {
      byte[] bytes = context.req().getInputStream().readNBytes(LARGEST_BODY + 1);
      if (bytes.length <= LARGEST_BODY) return new String(bytes, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new Refusal(400, "Not all of the form arrived; send it again.", "El formulario no llegó completo; repita.");
    }
    throw new Refusal(
        413,
        "That is more than one entry can hold; nothing was stored.",
        "Es demasiado para un registro; no se guardó nada.");
  }

  private static Map<String, String> cookies(Context context) {
    Map<String, String> cookies = new LinkedHashMap<>();
    // until somebody chooses, the language the browser is set to
    String preferred = context.header("Accept-Language");
    if (preferred != null && preferred.length() >= 2) cookies.put(Request.LANGUAGE, preferred.substring(0, 2));
    Cookie[] sent = context.req().getCookies();
    if (sent == null) return cookies;
    for (Cookie cookie : sent) {
      try {
        cookies.put(cookie.getName(), Form.decoded(cookie.getValue()));
      } catch (IllegalArgumentException e) {
        // another program on this machine set it; it is none of ours
      }
    }
    return cookies;
  }
}
