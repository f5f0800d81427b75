package gylebook.web;

import gylebook.brewday.AsRead;
import gylebook.brewday.Book;
import gylebook.brewday.Command;
import gylebook.brewday.Followed;
import gylebook.brewday.Follower;
import gylebook.brewday.Gyle;
import gylebook.brewday.PlanChange;
import gylebook.brewday.Sighting;
import gylebook.estimate.Instrument;
import gylebook.estimate.LiveGuard;
import gylebook.journal.Event;
import gylebook.telling.Shown;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseClient;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// The day beside the brewer: what is noted, how it stands, live on every screen.
final class KettleRoutes {
  private static final Duration FRESH = Duration.ofSeconds(5);
  // What is seen of the loop has no place of its own in the rig.
  private static final String PLACE = "KETTLE";

  private final Desk desk;
  private final Streams streams;
  private final Practice practice;
  private final Followers followers;
  private final ForecastKeeper keeper;
  private final Map<String, Told> last = new ConcurrentHashMap<>();

  /// How one page stood a moment ago.
  private record Told(
      long seq, ReadingUnits units, Instant at, String html, List<LiveGuard> guards) {}

  KettleRoutes(
      Desk desk, Followers followers, ForecastKeeper keeper, Streams streams, Practice practice) {
    this.practice = practice;
    this.desk = desk;
    this.followers = followers;
    this.keeper = keeper;
    this.streams = streams;
  }

  void register(RoutesConfig routes) {
    routes.get("/gyles/{gyleId}/kettle", this::page);
    routes.get("/api/gyles/{gyleId}/kettle", this::now);
    routes.get("/api/gyles/{gyleId}/levers", this::levers);
    routes.post("/api/gyles/{gyleId}/day", this::note);
    routes.sse("/api/gyles/{gyleId}/live", this::live);
  }

  private void page(Context context) {
    Said.gyle(desk, context)
        .ifPresent(gyle -> context.html(KettlePage.whole(gyle, now(gyle), inside(gyle))));
  }

  private void now(Context context) {
    Said.gyle(desk, context)
        .ifPresent(gyle -> Said.json(context, HttpStatus.OK, standing(gyle, "")));
  }

  private void levers(Context context) {
    Said.gyle(desk, context)
        .flatMap(this::leverTable)
        .ifPresent(html -> Said.json(context, HttpStatus.OK, Map.of("html", html)));
  }

  private Optional<String> leverTable(Gyle gyle) {
    return follower(gyle)
        .map(
            follower -> {
              Instant now = now(gyle);
              return new LeverTable(new Shown(desk.book().units()), follower)
                  .html(follower.at(gyle.happened(), now), follower.levers(gyle.happened(), now));
            });
  }

  /// What goes wrong now or soon, for whoever reads it without the page.
  private List<Map<String, Object>> guards(Gyle gyle) {
    if (gyle.started().isEmpty()) {
      return List.of();
    }
    Instant began = gyle.started().get().at();
    LivePlates plates = new LivePlates(new Shown(desk.book().units()), began);
    return follower(gyle)
        .map(follower -> told(gyle, desk.book().units(), follower).guards())
        .orElse(List.of())
        .stream()
        .map(plates::told)
        .toList();
  }

  private Map<String, Object> standing(Gyle gyle, String remark) {
    Map<String, Object> said = new LinkedHashMap<>();
    said.put("html", inside(gyle));
    said.put("seq", gyle.lastSeq());
    said.put("now", now(gyle).toEpochMilli());
    said.put("remark", remark);
    said.put("guards", guards(gyle));
    return said;
  }

  private String inside(Gyle gyle) {
    ReadingUnits units = desk.book().units();
    Optional<Follower> follower = follower(gyle);
    if (gyle.started().isEmpty()) {
      return KettlePage.before(gyle);
    }
    if (follower.isEmpty()) {
      return KettlePage.lost();
    }
    return told(gyle, units, follower.get()).html();
  }

  /// Every screen asks at the same moment, so what one was told is told to the next as well.
  private Told told(Gyle gyle, ReadingUnits units, Follower follower) {
    Instant now = now(gyle);
    return last.compute(
        gyle.gyleId(),
        (_, told) -> {
          boolean fresh =
              told != null
                  && told.seq() == gyle.lastSeq()
                  && told.units().equals(units)
                  && Duration.between(told.at(), now).abs().compareTo(FRESH) < 0;
          return fresh ? told : telling(gyle, units, follower, now);
        });
  }

  private Told telling(Gyle gyle, ReadingUnits units, Follower follower, Instant now) {
    Set<String> sending = sending(gyle, follower);
    Followed followed = follower.at(gyle.happened(), now, sending);
    String html =
        PracticeBanner.html(gyle, practice)
            + keeper.trouble(gyle.gyleId()).map(KettlePage::notKept).orElse("")
            + new KettlePage(units, follower, gyle, now, tied(gyle, sending))
                .during(followed, PracticeBanner.byEye(gyle, practice, byEye(gyle, follower)));
    return new Told(gyle.lastSeq(), units, now, html, followed.guards());
  }

  /// The time by the clock of a gyle's day.
  private Instant now(Gyle gyle) {
    return gyle.now(desk.now());
  }

  /// Instruments of a day that are tied, so should send by themselves.
  private Set<String> sending(Gyle gyle, Follower follower) {
    Set<String> tied = desk.book().tiedByName().keySet();
    return follower.instruments().stream()
        .map(Instrument::name)
        .filter(name -> tied.contains(gyle.tiedAs(name)))
        .collect(Collectors.toSet());
  }

  /// Those, and the controller's duty where it is tied.
  private Set<String> tied(Gyle gyle, Set<String> sending) {
    Set<String> tied = desk.book().tiedByName().keySet();
    return Stream.concat(
            sending.stream(),
            Stream.of(Sighting.values())
                .map(Sighting::says)
                .filter(name -> tied.contains(gyle.tiedAs(name))))
        .collect(Collectors.toSet());
  }

  private List<String> byEye(Gyle gyle, Follower follower) {
    Set<String> sending = sending(gyle, follower);
    return follower.instruments().stream()
        .filter(one -> one.role() != Instrument.Role.STEERS)
        .map(Instrument::name)
        .filter(name -> !sending.contains(name))
        .toList();
  }

  private Optional<Follower> follower(Gyle gyle) {
    return followers.of(gyle);
  }

  private void note(Context context) {
    Optional<Gyle> found = Said.gyle(desk, context);
    if (found.isEmpty()) {
      return;
    }
    Gyle gyle = found.get();
    String once = Said.once(context);
    if (desk.has(once)) {
      Said.answer(context, new Desk.Answer.Written(desk.book()), book -> standing(gyle, ""));
      return;
    }
    Map<String, String> said = Said.words(context);
    Optional<Instant> at;
    try {
      at = Optional.ofNullable(said.get("at")).filter(w -> !w.isBlank()).map(Instant::parse);
    } catch (DateTimeException _) {
      unclear(context, "The time is not clear.", said.getOrDefault("at", ""), "Type it as 10:32.");
      return;
    }
    switch (command(gyle, said)) {
      case Asked.Clear(Command command) -> {
        Desk.Answer answer = desk.note(gyle.gyleId(), command, once, at);
        Said.answer(context, answer, book -> standing(again(book, gyle), ""));
      }
      case Asked.Unclear(String what, String value, String maybe) ->
          unclear(context, what, value, maybe);
    }
  }

  private static Gyle again(Book book, Gyle gyle) {
    return book.gyle(gyle.gyleId()).orElse(gyle);
  }

  private static void unclear(Context context, String what, String value, String maybe) {
    Said.json(
        context,
        HttpStatus.UNPROCESSABLE_CONTENT,
        Map.of("what", what, "value", value, "maybe", maybe));
  }

  /// What somebody wants to note, or what is not clear about it.
  private sealed interface Asked {
    record Clear(Command command) implements Asked {}

    record Unclear(String what, String value, String maybe) implements Asked {}
  }

  private Asked command(Gyle gyle, Map<String, String> said) {
    String what = said.getOrDefault("what", "");
    String value = said.getOrDefault("value", "");
    return switch (said.getOrDefault("do", "")) {
      case "start" -> new Asked.Clear(new Command.StartDay());
      case "reach" -> new Asked.Clear(new Command.Reach(what));
      case "switch" -> new Asked.Clear(new Command.Switch(what, value.strip()));
      case "here" -> new Asked.Clear(new Command.TakeKettle(what, value));
      case "say" -> new Asked.Clear(new Command.Say(what, value));
      case "take" -> taking(gyle, value);
      case "strike" ->
          what.matches("[0-9]{1,18}")
              ? new Asked.Clear(new Command.Strike(Long.parseLong(what)))
              : new Asked.Unclear("No entry has this number.", what, "Look at the list.");
      case "read" -> reading(gyle, said, what, value);
      default ->
          new Asked.Unclear("This cannot be done.", said.getOrDefault("do", ""), "Use the page.");
    };
  }

  private Asked taking(Gyle gyle, String document) {
    Optional<PlanChange> change = PlanChange.read(document);
    if (change.isEmpty()) {
      return new Asked.Unclear("That is no way to put a day right.", "", "Use the page.");
    }
    String says = LeverTable.says(new Shown(desk.book().units()), change.get());
    boolean possible =
        follower(gyle)
            .map(one -> one.canTake(gyle.happened(), now(gyle), change.get()))
            .orElse(false);
    return possible
        ? new Asked.Clear(new Command.ChangePlan(says, document))
        : new Asked.Unclear("It is too late for that.", says, "Look at what could be done now.");
  }

  private Asked reading(Gyle gyle, Map<String, String> said, String name, String typed) {
    if (gyle.started().isEmpty()) {
      return new Asked.Unclear("The day has not begun.", "", "Start the day first.");
    }
    Optional<Instrument> instrument =
        follower(gyle).stream()
            .flatMap(follower -> follower.instruments().stream())
            .filter(one -> one.name().equals(name))
            .findFirst();
    ReadingUnits units = desk.book().units();
    Optional<Sighting> sighting = Sighting.of(name);
    if (sighting.isPresent()) {
      Typed read = sighting.get().typed(typed, units);
      return asked(read, typed, name, new Event.ReadingTaken(name, PLACE, true, "", ""));
    }
    if (instrument.isEmpty()) {
      return new Asked.Unclear("There is no such instrument here.", name, "Choose from the list.");
    }
    String sample = said.getOrDefault("sample", "").strip();
    String sampleWhole = "";
    if (!sample.isEmpty()) {
      switch (Typed.parse(sample, units.unit(Quantity.TEMPERATURE))) {
        case Typed.Read(Entered entered) -> sampleWhole = AsRead.whole(entered);
        case Typed.Unclear unclear -> {
          return new Asked.Unclear(unclear.what(), sample, unclear.maybe());
        }
      }
    }
    String place = said.getOrDefault("place", "");
    String at = place.isEmpty() ? instrument.get().place().name() : place;
    boolean mixed = !said.getOrDefault("mixed", "yes").equals("no");
    return asked(
        AsRead.typed(instrument.get(), typed, units),
        typed,
        name,
        new Event.ReadingTaken(name, at, mixed, "", sampleWhole));
  }

  private static Asked asked(Typed read, String typed, String name, Event.ReadingTaken how) {
    return switch (read) {
      case Typed.Read(Entered entered) ->
          new Asked.Clear(
              new Command.Note(
                  new Event.ReadingTaken(
                      name, how.place(), how.mixed(), AsRead.whole(entered), how.sampleAsRead())));
      case Typed.Unclear unclear -> new Asked.Unclear(unclear.what(), typed, unclear.maybe());
    };
  }

  /// Tells a screen that something was written; what it is, the screen asks for itself.
  private void live(SseClient client) {
    String gyleId = client.ctx().pathParam("gyleId");
    Runnable end =
        desk.listen(
            written -> {
              if (written.equals(gyleId)) {
                client.sendEvent("written", gyleId);
              }
            });
    streams.hold(client, end);
    client.sendEvent("there", gyleId);
  }
}
