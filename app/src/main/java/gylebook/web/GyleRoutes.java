package gylebook.web;

import gylebook.brewday.Book;
import gylebook.brewday.Command;
import gylebook.brewday.Gyle;
import gylebook.journal.Journal;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.simulate.Engine;
import gylebook.telling.Filled;
import gylebook.telling.Filling;
import gylebook.telling.Finish;
import gylebook.telling.Report;
import gylebook.telling.WallSheet;
import gylebook.units.ReadingUnits;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;

/// Reading and changing one gyle.
final class GyleRoutes {
  private static final List<Integer> BOTH = List.of(Forecasts.FIRST_DAYS, Planner.USUAL_DAYS);

  /// "Saved" may wait so long for the look that comes along with it: nobody notices.
  private static final Duration AS_GOOD_AS_THERE = Duration.ofMillis(40);

  /// A look that takes longer than anybody types at one value.
  private static final Duration WORTH_HOLDING = Duration.ofSeconds(10);

  private final Desk desk;
  private final Papers papers;
  private final Forecasts forecasts = new Forecasts();
  private final Map<String, Told> told = new ConcurrentHashMap<>();

  /// A forecast as it was last told.
  record Told(Planned planned, ReadingUnits units, String expect, String html) {}

  GyleRoutes(Desk desk, Papers papers) {
    this.desk = desk;
    this.papers = papers;
  }

  void register(RoutesConfig routes) {
    routes.get("/", this::first);
    routes.get("/gyles", context -> context.html(GylePage.list(desk.book(), papers)));
    routes.get("/gyles/{gyleId}", this::page);
    routes.get("/gyles/{gyleId}/forecast", this::whole);
    routes.get("/gyles/{gyleId}/plan", this::fixed);
    routes.get("/gyles/{gyleId}/sheet", this::sheet);
    routes.get("/api/gyles/{gyleId}/forecast", this::stream);
    routes.get("/api/gyles/{gyleId}/ahead", this::ahead);
    routes.post("/api/gyles/{gyleId}/fill", this::fill);
    routes.post("/api/gyles/{gyleId}/undo", context -> write(context, new Command.Undo()));
    routes.post("/api/gyles/{gyleId}/fix", this::fix);
    routes.post("/api/units", this::units);
  }

  private Optional<Gyle> found(Context context) {
    return Said.gyle(desk, context);
  }

  /// Who has no gyle yet sees an invented one with its forecast; who has, the list.
  private void first(Context context) {
    Book book = desk.book();
    boolean own =
        book.gyles().stream().anyMatch(gyle -> !gyle.invented() || gyle.practice().isPresent());
    Optional<Gyle> shown = own ? Optional.empty() : book.gyles().stream().findFirst();
    context.html(
        shown.isPresent() ? GylePage.gyle(book, shown.get(), papers) : GylePage.list(book, papers));
  }

  private void page(Context context) {
    found(context).ifPresent(gyle -> context.html(GylePage.gyle(desk.book(), gyle, papers)));
  }

  /// The forecast as a page of its own, for a browser without scripts.
  private void whole(Context context) {
    found(context)
        .ifPresent(
            gyle -> {
              String html = Pages.forecast(now(gyle), desk.book().units());
              context.html(
                  Html.page(gyle.name(), "<h1>" + Html.escaped(gyle.name()) + "</h1>" + html));
            });
  }

  private void sheet(Context context) {
    found(context)
        .ifPresent(
            gyle -> {
              if (now(gyle) instanceof Planned.Feasible(Plan plan)) {
                // The sheet brings its own style along, because it is also a file to carry away.
                context.header("Content-Security-Policy", Door.SHEET);
                context.html(WallSheet.html(plan, desk.book().units()));
              } else {
                context.status(HttpStatus.UNPROCESSABLE_CONTENT);
                context.html(
                    Html.page(
                        gyle.name(),
                        "<h1>No sheet</h1><p>It cannot be brewed as wanted; the gyle's page says what"
                            + " stands in the way.</p>"));
              }
            });
  }

  private Planned now(Gyle gyle) {
    String gyleId = gyle.gyleId();
    return forecasts.planned(
        gyleId,
        forecasts.begin(gyleId),
        papers.recipe(gyle.recipe().document()),
        papers.rig(gyle.rig().document()),
        Planner.USUAL_DAYS,
        _ -> {});
  }

  /// A line a report: how far it is, a first forecast, the whole one. A page asks for the whole one
  /// by itself when it has painted the first, so that the two do not wait for each other.
  private void stream(Context context) {
    Optional<Gyle> found = found(context);
    if (found.isEmpty()) {
      return;
    }
    Gyle gyle = found.get();
    String gyleId = gyle.gyleId();
    Recipe recipe = papers.recipe(gyle.recipe().document());
    Rig rig = papers.rig(gyle.rig().document());
    long number = forecasts.begin(gyleId);
    Lines lines = new Lines(context, () -> forecasts.leave(gyleId, number));
    try {
      for (int days : looks(context)) {
        Planned planned =
            forecasts.planned(
                gyleId, number, recipe, rig, days, done -> lines.progress(done, days));
        Told now = told(gyleId, planned, recipe);
        lines.forecast(Lines.forecast(gyle.lastSeq(), days, days == Planner.USUAL_DAYS, now));
      }
    } catch (CancellationException _) {
      lines.overtaken();
    }
  }

  private static List<Integer> looks(Context context) {
    return switch (Optional.ofNullable(context.queryParam("look")).orElse("")) {
      case "first" -> BOTH.subList(0, 1);
      case "whole" -> BOTH.subList(1, 2);
      default -> BOTH;
    };
  }

  private Told told(String gyleId, Planned planned, Recipe recipe) {
    ReadingUnits units = desk.book().units();
    Told last = told.get(gyleId);
    if (last != null && last.planned().equals(planned) && last.units().equals(units)) {
      return last;
    }
    String begin = Finish.says(planned, recipe);
    String expect =
        Pages.expect(planned, units) + (begin.isEmpty() ? "" : " " + Html.escaped(begin));
    Told now = new Told(planned, units, expect, Pages.forecast(planned, units));
    told.put(gyleId, now);
    return now;
  }

  /// A change as it was understood: one of the two papers is new.
  private record Change(Recipe recipe, Rig rig, boolean ofRig) {}

  private Filled<Change> understood(Gyle gyle, String of, String slot, String typed) {
    Recipe recipe = papers.recipe(gyle.recipe().document());
    Rig rig = papers.rig(gyle.rig().document());
    ReadingUnits units = desk.book().units();
    return of.equals("rig")
        ? Filling.rig(rig, slot, typed, units).map(thing -> new Change(recipe, thing, true))
        : Filling.recipe(recipe, slot, typed, units).map(thing -> new Change(thing, rig, false));
  }

  /// Somebody is typing: what they have typed so far may be what they want to see next, so the page
  /// holds the first look at it ready. Nothing is written.
  private void ahead(Context context) {
    context.status(HttpStatus.NO_CONTENT);
    Optional<Gyle> found = found(context);
    if (found.isEmpty()) {
      return;
    }
    Gyle gyle = found.get();
    Filled<Change> change =
        understood(gyle, asked(context, "of"), asked(context, "slot"), asked(context, "typed"));
    if (change instanceof Filled.Done<Change>(Change thing)) {
      lookedAhead(gyle, thing.recipe(), thing.rig(), WORTH_HOLDING)
          .ifPresent(look -> Said.json(context, HttpStatus.OK, Map.of("look", look)));
    }
  }

  private static String asked(Context context, String name) {
    return Optional.ofNullable(context.queryParam(name)).orElse("");
  }

  private void fill(Context context) {
    Optional<Gyle> found = found(context);
    if (found.isEmpty()) {
      return;
    }
    Map<String, String> said = Said.words(context);
    String slot = said.getOrDefault("slot", "");
    String typed = said.getOrDefault("typed", "");
    switch (understood(found.get(), said.getOrDefault("of", ""), slot, typed)) {
      case Filled.Done<Change>(Change thing) -> {
        lookAhead(found.get().gyleId(), thing.recipe(), thing.rig());
        write(
            context,
            thing.ofRig()
                ? new Command.KeepRig(papers.document(thing.rig()), because(said))
                : new Command.KeepRecipe(papers.document(thing.recipe()), because(said)));
      }
      case Filled.Unclear<Change> unclear -> Said.unclear(context, unclear);
    }
  }

  private static String because(Map<String, String> said) {
    return said.getOrDefault("hint", said.getOrDefault("slot", ""))
        + " to "
        + said.getOrDefault("typed", "");
  }

  private void fix(Context context) {
    found(context)
        .ifPresent(
            gyle -> {
              String report = Report.text(now(gyle), desk.book().units());
              write(
                  context,
                  new Command.FixPlan(
                      Engine.REVISION, Planner.USUAL_SEED, Planner.USUAL_DAYS, report));
            });
  }

  /// What the plan of the day said when it was fixed, whatever was changed since.
  private void fixed(Context context) {
    found(context)
        .flatMap(Gyle::plan)
        .ifPresentOrElse(
            plan ->
                context.html(
                    Html.page(
                        "The plan of the day",
                        "<h1>The plan of the day</h1><p>Fixed at %s with engine %s, from %d days.</p><pre>%s</pre>"
                            .formatted(
                                plan.at().truncatedTo(ChronoUnit.MINUTES),
                                Html.escaped(plan.engine()),
                                plan.days(),
                                Html.escaped(plan.report())))),
            () -> {
              context.status(HttpStatus.NOT_FOUND);
              context.result("No plan of the day has been fixed for this gyle.");
            });
  }

  private void units(Context context) {
    Map<String, String> said = Said.words(context);
    Command command =
        new Command.ChooseUnits(said.getOrDefault("quantity", ""), said.getOrDefault("symbol", ""));
    Desk.Answer answer =
        desk.write(Journal.HOUSE, desk.book().seen(Journal.HOUSE), command, Said.once(context));
    Said.answer(context, answer, _ -> Map.of());
  }

  private void write(Context context, Command command) {
    String gyleId = context.pathParam("gyleId");
    long seen = Said.seen(context);
    // Who sends again because an answer was lost has not seen what stands in the book.
    Optional<Gyle> stood = desk.book().gyle(gyleId).filter(gyle -> gyle.lastSeq() == seen);
    Desk.Answer answer = desk.write(gyleId, seen, command, Said.once(context));
    if (answer instanceof Desk.Answer.Written(Book book)) {
      Map<String, Object> changed = GylePage.changed(book, gyleId, stood, papers);
      book.gyle(gyleId).flatMap(this::lookedAhead).ifPresent(look -> changed.put("look", look));
      Said.json(context, HttpStatus.OK, changed);
    } else {
      Said.answer(context, answer, book -> GylePage.changed(book, gyleId, papers));
    }
  }

  /// The first look at what was written, when it is as good as there; else the page asks for it.
  private Optional<Map<String, Object>> lookedAhead(Gyle gyle) {
    // Whatever was being forecast for the page as it was is of no use any more.
    var _ = forecasts.begin(gyle.gyleId());
    Recipe recipe = papers.recipe(gyle.recipe().document());
    Rig rig = papers.rig(gyle.rig().document());
    return lookedAhead(gyle, recipe, rig, AS_GOOD_AS_THERE);
  }

  private Optional<Map<String, Object>> lookedAhead(
      Gyle gyle, Recipe recipe, Rig rig, Duration patience) {
    String gyleId = gyle.gyleId();
    lookAhead(gyleId, recipe, rig);
    return forecasts
        .soon(gyleId, recipe, rig, patience)
        .map(planned -> told(gyleId, planned, recipe))
        .map(now -> Lines.forecast(gyle.lastSeq(), Forecasts.FIRST_DAYS, false, now));
  }

  private void lookAhead(String gyleId, Recipe recipe, Rig rig) {
    forecasts.lookAhead(gyleId, recipe, rig, planned -> told(gyleId, planned, recipe));
  }

  static void notThere(Context context) {
    context.status(HttpStatus.NOT_FOUND);
    context.result("There is no gyle of that name. The list of gyles is at /gyles.");
  }
}
