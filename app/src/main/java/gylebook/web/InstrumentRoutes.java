package gylebook.web;

import gylebook.journal.Journal;
import gylebook.units.ReadingUnits;
import gylebook.web.Instruments.Dial;
import gylebook.web.Instruments.Looked;
import gylebook.web.Instruments.Tied;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Showing, tying and loosing instruments, and the door for boards that post.
final class InstrumentRoutes {
  /// Where boards post; their token opens this and nothing else.
  static final String READINGS = "/api/readings";

  private final Desk desk;
  private final Instruments instruments;

  InstrumentRoutes(Desk desk, Instruments instruments) {
    this.desk = desk;
    this.instruments = instruments;
  }

  void register(RoutesConfig routes) {
    routes.get(
        "/instruments", context -> context.html(InstrumentPage.list(seen(), dials(), units())));
    routes.get("/instruments/tie/{kind}", Door.ownOnly(this::form));
    routes.get("/instruments/{name}", this::one);
    routes.get("/api/instruments", context -> context.html(InstrumentPage.dials(dials(), units())));
    routes.get("/api/instruments/{name}", this::live);
    routes.post("/api/instruments/tie", Door.ownOnly(this::tie));
    routes.post("/api/instruments/loose", Door.ownOnly(this::loose));
    routes.post("/api/instruments/look", Door.ownOnly(this::look));
    routes.post(READINGS, this::readings);
  }

  private List<Dial> dials() {
    return instruments.dials();
  }

  private ReadingUnits units() {
    return desk.book().units();
  }

  private long seen() {
    return desk.book().seen(Journal.HOUSE);
  }

  private Optional<Dial> dial(Context context) {
    String name = context.pathParam("name");
    Optional<Dial> dial = dials().stream().filter(one -> one.name().equals(name)).findFirst();
    if (dial.isEmpty()) {
      context.status(HttpStatus.NOT_FOUND);
      context.html(
          Html.page(
              "No such instrument",
              "<h1>No such instrument</h1><p>It is not tied.</p>"
                  + "<p><a href=\"/instruments\">All instruments</a></p>"));
    }
    return dial;
  }

  private void one(Context context) {
    dial(context).ifPresent(dial -> context.html(InstrumentPage.one(seen(), dial, units())));
  }

  private void live(Context context) {
    dial(context).ifPresent(dial -> context.html(InstrumentPage.arrivals(dial, units())));
  }

  private void form(Context context) {
    Optional<TieFields> kind = TieFields.of(context.pathParam("kind"));
    if (kind.isEmpty()) {
      context.redirect("/instruments");
      return;
    }
    List<String> boards =
        desk.book().tied().stream()
            .filter(tied -> tied.document().contains("tokenDigest"))
            .map(tied -> tied.name())
            .toList();
    context.html(TiePage.html(kind.get(), seen(), boards));
  }

  /// The form as it was sent, with what it measures taken apart.
  private static Map<String, String> asked(Context context) {
    Map<String, String> form = new HashMap<>(Said.words(context));
    String[] measures = form.getOrDefault("measures", "").split(" ", 2);
    form.remove("measures");
    if (measures.length == 2) {
      form.put("quantity", measures[0]);
      form.put("unit", measures[1]);
    }
    return form;
  }

  private void tie(Context context) {
    Map<String, String> form = asked(context);
    switch (instruments.tie(form, Said.seen(context), Said.once(context))) {
      case Tied.Answered(Desk.Answer answer, Optional<String> token) ->
          Said.answer(
              context,
              answer,
              _ ->
                  Map.of("name", form.getOrDefault("name", "").strip(), "token", token.orElse("")));
      case Tied.Unfit(String field, String value, String maybe) ->
          unfit(context, field, value, maybe);
    }
  }

  private static void unfit(Context context, String field, String value, String maybe) {
    Said.json(
        context,
        HttpStatus.UNPROCESSABLE_CONTENT,
        Map.of("what", "This does not fit.", "field", field, "value", value, "maybe", maybe));
  }

  private void loose(Context context) {
    String name = Said.words(context).getOrDefault("name", "");
    Desk.Answer answer = instruments.loose(name, Said.seen(context), Said.once(context));
    Said.answer(context, answer, _ -> Map.of());
  }

  private void look(Context context) {
    switch (instruments.look(asked(context))) {
      case Looked.Seen(String lineSays, List<Instruments.Sight> sights) ->
          Said.json(
              context, HttpStatus.OK, Map.of("sights", InstrumentPage.sights(lineSays, sights)));
      case Looked.Unfit(String field, String value, String maybe) ->
          unfit(context, field, value, maybe);
    }
  }

  private void readings(Context context) {
    Optional<String> authorization = Optional.ofNullable(context.header("Authorization"));
    Instruments.Taken taken = instruments.post(authorization, context.bodyAsBytes());
    context.status(taken.status());
    if (!taken.words().isEmpty()) {
      context.result(taken.words());
    }
  }
}
