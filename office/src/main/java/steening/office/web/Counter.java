package steening.office.web;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Supplier;
import steening.journal.Moment;
import steening.office.FreshIds;
import steening.office.OfficeShelf;
import steening.office.Store;
import steening.office.web.Resources.Resource;
import steening.page.Desk;
import steening.page.Pen;
import steening.page.Reply;
import steening.page.Request;

/** Takes a request to the desk and carries the reply back. What the reply wants stored is on disk before it is sent. */
final class Counter {
  private static final int IDS_FOR_ONE_REQUEST = 8;
  private static final int A_YEAR_IN_SECONDS = 365 * 24 * 3600;

  private final Store store;
  private final OfficeShelf shelf;
  private final FreshIds ids;
  private final Supplier<Moment> clock;
  private final Resources resources = new Resources();
  private final Papers papers;

  Counter(Store store, OfficeShelf shelf, FreshIds ids, Supplier<Moment> clock) {
    this.store = store;
    this.shelf = shelf;
    this.ids = ids;
    this.clock = clock;
    this.papers = new Papers(shelf, clock);
  }

  void answer(Context context) {
    Request request = Asked.of(context);
    if (request.isPost()) send(context, written(request));
    else look(context, request);
  }

  private void look(Context context, Request request) {
    Optional<Resource> resource = resources.find(request.path());
    Optional<byte[]> paper = resource.isPresent() ? Optional.empty() : papers.print(request);
    if (resource.isPresent()) send(context, resource.get());
    else if (paper.isPresent()) send(context, paper.get());
    else send(context, read(request));
  }

  private Reply read(Request request) {
    Reply reply = atTheDesk(request);
    if (!reply.entries().isEmpty()) throw new IllegalStateException("a page that is only looked at wants to store");
    return reply;
  }

  /** One after another: the number of an entry and the journal it was written for must not change meanwhile. */
  private synchronized Reply written(Request request) {
    Reply reply = atTheDesk(request);
    if (!reply.entries().isEmpty()) shelf.append(reply.entries());
    return reply;
  }

  private Reply atTheDesk(Request request) {
    Pen pen = new Pen(store.device(), store.nextSequence(), ids.next(IDS_FOR_ONE_REQUEST));
    return Desk.answer(request, shelf, clock.get(), pen);
  }

  private static void send(Context context, Reply reply) {
    context.status(reply.status()).contentType(reply.contentType());
    // of our own only: what leads elsewhere came from outside
    String location = reply.location();
    if (!location.isEmpty() && (!location.startsWith("/") || location.startsWith("//"))) {
      throw new IllegalStateException("a reply that leads out of the office: " + location);
    }
    if (!location.isEmpty()) context.header("Location", location);
    reply.cookies().forEach((name, value) -> context.res().addHeader("Set-Cookie", cookie(name, value)));
    context.result(reply.body());
  }

  /** Language, units, the name of the hand: no secrets, and the phone's script reads them too. */
  private static String cookie(String name, String value) {
    String encoded = URLEncoder.encode(value, StandardCharsets.UTF_8).replace("+", "%20");
    return name + "=" + encoded + "; Max-Age=" + A_YEAR_IN_SECONDS + "; Path=/; SameSite=Lax";
  }

  /** The browser shows it in a page of its own making, which our rules for pages would leave blank. */
  private static void send(Context context, byte[] paper) {
    context.header("Content-Security-Policy", "frame-ancestors 'none'");
    context.contentType("application/pdf").result(paper);
  }

  private static void send(Context context, Resource resource) {
    context.header("ETag", resource.tag()).contentType(resource.contentType());
    if (resource.tag().equals(context.header("If-None-Match"))) context.status(304);
    else context.result(resource.bytes());
  }
}
