package gylebook.web;

import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;

/// The event streams that are open, so that a screen that is turned out is out at once, and that
/// nobody writes into one when the server has ended.
final class Streams {
  /// Under which the streams of the machine itself are held.
  private static final String OWN = "";

  private final Map<String, Set<SseClient>> held = new ConcurrentHashMap<>();
  private final Predicate<String> isIn;

  /// @param isIn whether the screen of this id is let in
  Streams(Predicate<String> isIn) {
    this.isIn = isIn;
  }

  /// Remembers a stream for as long as it is open.
  ///
  /// @param then what else is to be done when it ends
  void hold(SseClient client, Runnable then) {
    Optional<String> screen = Optional.ofNullable(client.ctx().attribute(Door.SCREEN));
    String of = screen.orElse(OWN);
    held.compute(
        of,
        (_, known) -> {
          Set<SseClient> clients = known == null ? ConcurrentHashMap.newKeySet() : known;
          clients.add(client);
          return clients;
        });
    client.onClose(
        () -> {
          drop(of, client);
          then.run();
        });
    client.keepAlive();
    // It may have been turned out between the door and here.
    screen.filter(isIn.negate()).ifPresent(this::end);
  }

  private void drop(String screenId, SseClient client) {
    held.computeIfPresent(
        screenId,
        (_, clients) -> {
          clients.remove(client);
          return clients.isEmpty() ? null : clients;
        });
  }

  /// Ends every stream.
  void end() {
    List.copyOf(held.keySet()).forEach(this::end);
  }

  /// Ends every stream of a screen.
  void end(String screenId) {
    Set<SseClient> clients = held.remove(screenId);
    if (clients != null) {
      clients.forEach(SseClient::close);
    }
  }
}
