package steening.office.web;

import steening.language.Phrase;
import steening.language.Reader;

/** The office cannot open where it was told to. */
public final class PortTaken extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Phrase phrase;

  PortTaken(String host, int port) {
    this(
        Phrase.of(
            "Port {0} on {1} cannot be had, probably another program has it; name another one, for example --port {2}.",
            "No se puede usar el puerto {0} de {1}, quizá lo tiene otro programa; indique otro, como --port {2}.",
            port,
            host,
            port + 1));
  }

  private PortTaken(Phrase phrase) {
    super(phrase.shownTo(Reader.US_ENGLISH));
    this.phrase = phrase;
  }

  public Phrase phrase() {
    return phrase;
  }
}
