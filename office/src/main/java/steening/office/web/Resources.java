package steening.office.web;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32C;

/**
 * Files that travel with the program: {@code /style.css} is {@code /public/style.css} of the class path, and what is
 * below {@code /phone/} has the same name in both.
 */
final class Resources {
  private static final String PHONE = "/phone/";
  private static final Map<String, String> TYPES =
      Map.ofEntries(
          Map.entry("css", "text/css; charset=utf-8"),
          Map.entry("html", "text/html; charset=utf-8"),
          Map.entry("ico", "image/x-icon"),
          Map.entry("js", "text/javascript; charset=utf-8"),
          Map.entry("json", "application/json; charset=utf-8"),
          Map.entry("png", "image/png"),
          Map.entry("svg", "image/svg+xml; charset=utf-8"),
          Map.entry("txt", "text/plain; charset=utf-8"),
          Map.entry("wasm", "application/wasm"),
          Map.entry("webmanifest", "application/manifest+json; charset=utf-8"),
          Map.entry("woff2", "font/woff2"));

  private final ConcurrentHashMap<String, Resource> known = new ConcurrentHashMap<>();

  /** A file, its type, and a tag that changes when the file does. */
  record Resource(byte[] bytes, String contentType, String tag) {}

  /** The file under a path, if the program carries one. */
  Optional<Resource> find(String path) {
    Resource resource = known.get(path);
    if (resource != null) return Optional.of(resource);
    Optional<Resource> read = isName(path) ? read(path) : Optional.empty();
    read.ifPresent(found -> known.put(path, found));
    return read;
  }

  private static Optional<Resource> read(String path) {
    String type = TYPES.get(path.substring(path.lastIndexOf('.') + 1));
    if (type == null) return Optional.empty();
    String name = path.startsWith(PHONE) ? path : "/public" + path;
    try (InputStream in = Resources.class.getResourceAsStream(name)) {
      if (in == null) return Optional.empty();
      byte[] bytes = in.readAllBytes();
      CRC32C sum = new CRC32C();
      sum.update(bytes);
      return Optional.of(new Resource(bytes, type, "W/\"" + Long.toHexString(sum.getValue()) + "\""));
    } catch (IOException e) {
      throw new IllegalStateException(name + " in the program itself cannot be read", e);
    }
  }

  /** Plain names with an ending, so that no path can climb out of the folder. */
  private static boolean isName(String path) {
    return path.matches("(/[A-Za-z0-9_-][A-Za-z0-9._-]*)+\\.[a-z0-9]+");
  }
}
