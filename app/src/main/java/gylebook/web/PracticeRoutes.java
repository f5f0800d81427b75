package gylebook.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/// Beginning a rehearsal, acting in it, and looking on.
final class PracticeRoutes {
  private final Practice practice;
  private final Supplier<String> address;

  /// @param address where this machine itself reaches the program, as invented instruments do
  PracticeRoutes(Practice practice, Supplier<String> address) {
    this.practice = practice;
    this.address = address;
  }

  void register(RoutesConfig routes) {
    routes.get("/rehearsal", context -> context.html(PracticePage.html(practice)));
    routes.get("/api/rehearsal", context -> context.html(PracticePage.said(practice)));
    routes.post("/api/rehearsal", this::begin);
    routes.post("/api/rehearsal/act", this::act);
  }

  private void begin(Context context) {
    String own = address.get().replaceFirst("/$", "");
    answer(context, practice.begin(own, Said.words(context)));
  }

  private void act(Context context) {
    String line = Said.words(context).getOrDefault("line", "");
    boolean underWay = practice.underWay();
    if (underWay) {
      practice.act(line);
    }
    answer(context, underWay ? Optional.empty() : Optional.of("No rehearsal is under way."));
  }

  private static void answer(Context context, Optional<String> refusal) {
    if (refusal.isEmpty()) {
      Said.json(context, HttpStatus.OK, Map.of());
    } else {
      Said.json(
          context,
          HttpStatus.UNPROCESSABLE_CONTENT,
          Map.of("what", refusal.get(), "value", "", "maybe", ""));
    }
  }
}
