package steening.office.web;

import java.util.Locale;
import java.util.Set;

/**
 * Who may ask. Other people's pages, open in the same browser, must not be able to write here or to read what comes
 * back.
 *
 * @param host what the office was bound to
 */
record Gate(String host) {
  private static final Set<String> OWN_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
  private static final Set<String> OWN_SITE = Set.of("same-origin", "none");

  /**
   * @param asked the {@code Host} header, with the port
   * @param origin the {@code Origin} header, or null
   * @param site the {@code Sec-Fetch-Site} header, or null
   */
  void check(String method, String asked, String origin, String site) {
    // A name of someone else's that was made to lead to this machine would make their page one of ours.
    if (asked == null || !isOurs(name(asked))) {
      throw new Refusal(
          421,
          "This office does not go by that name; open it as http://localhost with its port.",
          "Esta oficina no se llama así; ábrala como http://localhost con su puerto.");
    }
    if (method.equals("GET") || method.equals("HEAD")) return;
    boolean foreign = site != null && !OWN_SITE.contains(site) || origin != null && !isSameHost(origin, asked);
    if (foreign) {
      throw new Refusal(
          403,
          "Nothing was stored: the form was sent from another site's page.",
          "No se guardó nada: el formulario se envió desde la página de otro sitio.");
    }
  }

  /** On the machine itself its own names; on a network also addresses and names that no stranger can register. */
  private boolean isOurs(String name) {
    if (OWN_NAMES.contains(name) || name.equals(host)) return true;
    if (isLoopback()) return false;
    boolean address = name.startsWith("[") || name.matches("[0-9.]+");
    return address || name.indexOf('.') < 0 || name.endsWith(".local") || name.endsWith(".home.arpa");
  }

  boolean isLoopback() {
    return host.equals("localhost") || host.equals("::1") || host.startsWith("127.");
  }

  /** The scheme is left out: a proxy may have turned https into http on the way here. */
  private static boolean isSameHost(String origin, String asked) {
    int start = origin.indexOf("://");
    return start > 0 && origin.substring(start + 3).equalsIgnoreCase(asked);
  }

  private static String name(String asked) {
    int port = asked.lastIndexOf(':');
    boolean withPort = port > asked.lastIndexOf(']');
    return (withPort ? asked.substring(0, port) : asked).toLowerCase(Locale.ROOT);
  }
}
