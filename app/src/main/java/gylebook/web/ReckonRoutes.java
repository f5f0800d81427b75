package gylebook.web;

import gylebook.reckon.Asked;
import gylebook.reckon.Calculation;
import gylebook.reckon.Input;
import gylebook.reckon.Question;
import gylebook.reckon.Reckoner;
import gylebook.reckon.Search;
import gylebook.reckon.Taken;
import gylebook.units.ReadingUnits;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Single calculations asked for in plain words or by a form, and the science behind them. Nothing
/// here changes anything, so everything is a plain address that can be kept and sent.
final class ReckonRoutes {
  /// A picture brings its own style, and nothing else.
  private static final String PICTURE = "default-src 'none'; style-src 'unsafe-inline'";

  private final Desk desk;

  ReckonRoutes(Desk desk) {
    this.desk = desk;
  }

  void register(RoutesConfig routes) {
    routes.get("/reckon", this::ask);
    routes.get("/reckon/all", context -> page(context, "Every calculation", ReckonPage.all()));
    routes.get("/reckon/{name}", this::one);
    routes.get("/science", context -> page(context, "The science", ReckonPage.science()));
    routes.get(
        "/science/sources",
        context -> page(context, "Sources", ReckonPage.back() + ScienceText.sources()));
    routes.get("/science/pictures/{file}", ReckonRoutes::picture);
    routes.get("/science/{page}", ReckonRoutes::text);
  }

  private ReadingUnits units() {
    return desk.book().units();
  }

  private void ask(Context context) {
    String line = Optional.ofNullable(context.queryParam("q")).orElse("");
    ReckonPage page = new ReckonPage(line, units());
    if (line.isBlank()) {
      page(context, "Reckoner", page.empty());
      return;
    }
    switch (Question.read(line, units())) {
      case Asked.Unclear unclear -> page(context, "Reckoner", page.unclear(unclear));
      case Asked.Meant meant -> page(context, meant.calculation().name(), page.meant(meant));
    }
  }

  private void one(Context context) {
    String name = context.pathParam("name");
    switch (Reckoner.find(name)) {
      case Search.Miss miss -> {
        context.status(HttpStatus.NOT_FOUND);
        page(
            context,
            "Reckoner",
            new ReckonPage("", units()).unclear(new Asked.Unclear(miss.sentence(), List.of())));
      }
      case Search.Hit(Calculation calculation) -> {
        List<Taken> taken = taken(context, calculation);
        Asked.Meant meant = new Asked.Meant(calculation, taken, List.of(), List.of(), "");
        boolean asked = !context.queryParamMap().isEmpty();
        ReckonPage page = new ReckonPage("", units());
        page(context, name, asked ? page.meant(meant) : page.explained(meant));
      }
    }
  }

  /// What stands in the fields; a field that still holds its usual value counts as not typed.
  private List<Taken> taken(Context context, Calculation calculation) {
    List<Taken> taken = new ArrayList<>();
    for (Input input : calculation.inputs()) {
      String typed = Optional.ofNullable(context.queryParam(input.key())).orElse("").strip();
      if (!typed.isEmpty() && !typed.equals(input.usualTyped(units()))) {
        taken.add(new Taken(input, typed, typed, ""));
      }
    }
    return taken;
  }

  private static void text(Context context) {
    String page = context.pathParam("page");
    Optional<String> html = ScienceText.text().html(page);
    if (html.isEmpty()) {
      context.status(HttpStatus.NOT_FOUND);
      page(context, "The science", ReckonPage.science());
      return;
    }
    page(
        context,
        ScienceText.text().title(page),
        ReckonPage.back() + "<article class=\"science\">" + html.get() + "</article>");
  }

  private static void picture(Context context) {
    String file = context.pathParam("file");
    Optional<String> svg = ScienceText.picture(file.replaceFirst("\\.svg$", ""));
    if (svg.isEmpty()) {
      context.status(HttpStatus.NOT_FOUND);
      return;
    }
    context.header("Content-Security-Policy", PICTURE);
    context.contentType("image/svg+xml; charset=utf-8");
    context.result(svg.get());
  }

  private static void page(Context context, String title, String body) {
    context.html(Html.page(title, body));
  }
}
