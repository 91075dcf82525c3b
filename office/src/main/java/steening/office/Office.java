package steening.office;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import steening.journal.Entry;
import steening.office.web.OfficeServer;

/** An office that is open: its database, its shelf, its address. */
public final class Office implements AutoCloseable {
  private final Store store;
  private final OfficeServer server;

  private Office(Store store, OfficeServer server) {
    this.store = store;
    this.server = server;
  }

  /**
   * @param first entries to be there from the start
   * @throws StoreTrouble when the database cannot be relied on
   * @throws steening.office.web.PortTaken when it cannot open at that address
   */
  public static Office open(Path database, String host, int port, List<Entry> first, PrintStream notes) {
    FreshIds ids = new FreshIds();
    Store store = Store.open(database, ids);
    try {
      OfficeShelf shelf = new OfficeShelf(store);
      if (!first.isEmpty()) shelf.append(first);
      return new Office(store, OfficeServer.open(host, port, store, shelf, ids, new OfficeClock(), notes));
    } catch (RuntimeException e) {
      store.close();
      throw e;
    }
  }

  public String address() {
    return server.address();
  }

  /** Finishes what is under way, then closes the database. */
  @Override
  public void close() {
    server.close();
    store.close();
  }
}
