package steening.office;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** HTTP by hand, so that a test can send what no well-behaved client would. */
record Wire(int port) {
  /** An answer taken apart. */
  record Answer(int status, String head, String body) {
    /** The value of a header, or an empty text. */
    String header(String name) {
      for (String line : head.split("\r\n")) {
        if (line.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT) + ":")) {
          return line.substring(name.length() + 1).trim();
        }
      }
      return "";
    }
  }

  Answer get(String path, String... headers) throws IOException {
    return ask("GET", path, "", headers);
  }

  Answer post(String path, String form, String... headers) throws IOException {
    String[] more = new String[headers.length + 1];
    System.arraycopy(headers, 0, more, 0, headers.length);
    more[headers.length] = "Content-Type: application/x-www-form-urlencoded";
    return ask("POST", path, form, more);
  }

  Answer ask(String method, String path, String body, String... headers) throws IOException {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    StringBuilder text = new StringBuilder(method + " " + path + " HTTP/1.1\r\nConnection: close\r\n");
    if (String.join("\n", headers).indexOf("Host:") < 0) text.append("Host: localhost:").append(port).append("\r\n");
    for (String header : headers) text.append(header).append("\r\n");
    if (bytes.length > 0) text.append("Content-Length: ").append(bytes.length).append("\r\n");
    try (Socket socket = new Socket("127.0.0.1", port)) {
      socket.getOutputStream().write((text + "\r\n").getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().write(bytes);
      socket.getOutputStream().flush();
      // as bytes: a body may be packed
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
      int end = answer.indexOf("\r\n\r\n");
      String utf8 = new String(answer.substring(end + 4).getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
      return new Answer(Integer.parseInt(answer.substring(9, 12)), answer.substring(0, end), utf8);
    }
  }
}
