package gylebook.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/// Beginning a rehearsal, acting in it, and looking on.
final class PracticeRoutes {
  private final Desk desk;
  private final Practice practice;
  private final Supplier<String> address;

  /// @param address where this machine itself reaches the program, as invented instruments do
  PracticeRoutes(Desk desk, Practice practice, Supplier<String> address) {
    this.desk = desk;
    this.practice = practice;
    this.address = address;
  }

  void register(RoutesConfig routes) {
    routes.get("/rehearsal", context -> context.html(PracticePage.html(practice, desk.book())));
    routes.get("/api/rehearsal", context -> context.html(PracticePage.said(practice)));
    routes.get("/api/rehearsal/newest", context -> context.result(newest()));
    routes.get(
        "/api/rehearsal/said",
        context ->
            Said.json(
                context,
                HttpStatus.OK,
                Map.of("underWay", practice.underWay(), "said", practice.said())));
    routes.post("/api/rehearsal", this::begin);
    routes.post("/api/rehearsal/act", this::act);
  }

  /// What it said last, for whoever stands at its kettle.
  private String newest() {
    List<String> said = practice.said();
    return said.isEmpty() ? "" : said.size() + " " + said.getLast();
  }

  private void begin(Context context) {
    String own = address.get().replaceFirst("/$", "");
    answer(context, practice.begin(own, Said.words(context)));
  }

  private void act(Context context) {
    answer(context, practice.act(Said.words(context).getOrDefault("line", "")));
  }

  private void answer(Context context, Optional<String> refusal) {
    if (refusal.isEmpty()) {
      Map<String, String> at = new HashMap<>();
      practice.notedOn().ifPresent(id -> at.put("kettle", PracticePage.kettle(id)));
      Said.json(context, HttpStatus.OK, at);
    } else {
      Said.json(
          context,
          HttpStatus.UNPROCESSABLE_CONTENT,
          Map.of("what", refusal.get(), "value", "", "maybe", ""));
    }
  }
}
