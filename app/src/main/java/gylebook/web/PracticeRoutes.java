package gylebook.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Optional;

/// Beginning a rehearsal, acting in it, and looking on.
final class PracticeRoutes {
  private final Practice practice;

  PracticeRoutes(Practice practice) {
    this.practice = practice;
  }

  void register(RoutesConfig routes) {
    routes.get("/rehearsal", context -> context.html(PracticePage.html(practice)));
    routes.get("/api/rehearsal", context -> context.html(PracticePage.said(practice)));
    routes.post("/api/rehearsal", this::begin);
    routes.post("/api/rehearsal/act", this::act);
  }

  private void begin(Context context) {
    // The door has let in only this machine's own names.
    String address = "http://" + Optional.ofNullable(context.header("Host")).orElse("");
    answer(context, practice.begin(address, Said.words(context)));
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
