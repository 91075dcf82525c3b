package steening.office.web;

import java.util.Map;

/** What every reply carries, so that a page of ours does nothing but what it came with. */
final class Headers {
  /** The phone's half is WebAssembly, which browsers count as evaluating; styles stand in the drawings. */
  private static final String CONTENT =
      "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'unsafe-inline'; "
          + "img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

  /** Name to value. */
  static final Map<String, String> ALL =
      Map.of(
          "Content-Security-Policy", CONTENT,
          "X-Content-Type-Options", "nosniff",
          // not "no-referrer": with it browsers send "Origin: null" with our own forms, and the gate would refuse them
          "Referrer-Policy", "same-origin",
          "Cross-Origin-Opener-Policy", "same-origin",
          "Cross-Origin-Resource-Policy", "same-origin",
          "Cache-Control", "no-cache");

  private Headers() {}
}
