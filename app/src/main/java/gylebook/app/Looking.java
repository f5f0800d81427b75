package gylebook.app;

import gylebook.device.Line;
import gylebook.device.Look;
import gylebook.device.Panel;
import gylebook.device.Seen;
import gylebook.device.Unfit;
import gylebook.web.Instruments.Looked;
import gylebook.web.Instruments.Sight;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/// The one look that is open: the page asks each second, and when it asks no more the look ends.
final class Looking {
  private static final Duration IDLE = Duration.ofSeconds(15);

  private final InstantSource clock;
  private final Path oneWireRoot;
  private final Panel panel;
  private Optional<Open> open = Optional.empty();

  private record Open(Map<String, String> form, Look look, Instant used) {}

  Looking(InstantSource clock, Path oneWireRoot, Panel panel) {
    this.panel = panel;
    this.clock = clock;
    this.oneWireRoot = oneWireRoot;
  }

  synchronized Looked look(Map<String, String> form) throws Unfit {
    Map<String, String> where = new HashMap<>(form);
    List.of("name", "place", "measures").forEach(where::remove);
    Optional<List<Seen>> overheard = panel.overheard(where);
    if (overheard.isPresent()) {
      return new Looked.Seen("", overheard.get().stream().map(Looking::sight).toList());
    }
    if (open.filter(one -> one.form().equals(where)).isEmpty()) {
      stop();
    }
    Look look = open.isPresent() ? open.get().look() : new Look(where, clock, oneWireRoot);
    open = Optional.of(new Open(where, look, clock.instant()));
    CompletableFuture.delayedExecutor(IDLE.toMillis() + 1, TimeUnit.MILLISECONDS)
        .execute(this::stopIdle);
    try {
      List<Sight> sights = look.seen().stream().map(Looking::sight).toList();
      return new Looked.Seen(look.line() instanceof Line.Down down ? down.why() : "", sights);
    } catch (IOException nobody) {
      return new Looked.Seen(String.valueOf(nobody.getMessage()), List.of());
    }
  }

  private static Sight sight(Seen seen) {
    return new Sight(seen.group(), seen.where(), seen.says(), seen.fits(), seen.fill());
  }

  private synchronized void stopIdle() {
    Instant now = clock.instant();
    if (open.filter(one -> Duration.between(one.used(), now).compareTo(IDLE) >= 0).isPresent()) {
      stop();
    }
  }

  synchronized void stop() {
    open.ifPresent(one -> one.look().close());
    open = Optional.empty();
  }
}
