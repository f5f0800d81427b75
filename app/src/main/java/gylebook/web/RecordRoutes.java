package gylebook.web;

import gylebook.brewday.Book;
import gylebook.brewday.DayJudged;
import gylebook.brewday.FixedPlan;
import gylebook.brewday.Follower;
import gylebook.brewday.Gyle;
import gylebook.brewday.HouseRecord;
import gylebook.rig.Rig;
import gylebook.telling.Shown;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What was forecast and what came: of one gyle, and of all of them.
final class RecordRoutes {
  private final Desk desk;
  private final Papers papers;

  RecordRoutes(Desk desk, Papers papers) {
    this.desk = desk;
    this.papers = papers;
  }

  void register(RoutesConfig routes) {
    routes.get("/gyles/{gyleId}/forecasts", this::ofGyle);
    routes.get("/record", this::ofAll);
  }

  private void ofGyle(Context context) {
    Said.gyle(desk, context)
        .ifPresent(
            gyle -> {
              RecordPage page = new RecordPage(new Shown(desk.book().units()));
              Optional<FixedPlan> plan = gyle.brewedBy();
              String html =
                  plan.isEmpty()
                      ? page.notBegun(gyle)
                      : page.day(
                          gyle,
                          judged(desk.book(), gyle, rig(plan.get())),
                          papers.recipe(plan.get().recipe()),
                          rig(plan.get()));
              context.html(html);
            });
  }

  private Rig rig(FixedPlan plan) {
    return papers.rig(plan.rig());
  }

  private static Optional<DayJudged> judged(Book book, Gyle gyle, Rig rig) {
    return DayJudged.of(gyle, book.forecasts(), Follower.instruments(rig));
  }

  /// Whether a gyle's day counts: what is hidden or invented is no household's.
  static boolean counts(Gyle gyle) {
    return gyle.practice().isEmpty() && !gyle.invented();
  }

  private void ofAll(Context context) {
    Book book = desk.book();
    List<HouseRecord.OnRig> days = new ArrayList<>();
    int leftOut = 0;
    for (Gyle gyle : book.gyles()) {
      Optional<HouseRecord.OnRig> day =
          gyle.brewedBy()
              .map(this::rig)
              .flatMap(
                  rig ->
                      judged(book, gyle, rig).map(one -> new HouseRecord.OnRig(rig.name(), one)));
      if (counts(gyle)) {
        day.ifPresent(days::add);
      } else {
        leftOut += day.isPresent() ? 1 : 0;
      }
    }
    RecordPage page = new RecordPage(new Shown(book.units()));
    context.html(page.all(HouseRecord.of(days), leftOut));
  }
}
