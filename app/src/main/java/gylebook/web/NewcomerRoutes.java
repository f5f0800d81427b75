package gylebook.web;

import gylebook.brewday.Command;
import gylebook.rig.Newcomer;
import gylebook.telling.Filled;
import gylebook.telling.Filling;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import tools.jackson.core.JacksonException;

/// A newcomer describes a rig. Nothing is kept before they say so: the page holds the answers.
final class NewcomerRoutes {
  private final Desk desk;
  private final Papers papers;

  NewcomerRoutes(Desk desk, Papers papers) {
    this.desk = desk;
    this.papers = papers;
  }

  void register(RoutesConfig routes) {
    routes.post("/api/newcomer", this::fill);
    routes.post("/api/gyles/{gyleId}/newcomer", this::use);
  }

  private static Newcomer answers(Map<String, String> said) {
    try {
      return Said.JSON.readValue(said.getOrDefault("answers", ""), Newcomer.class);
    } catch (JacksonException failure) {
      throw new BadRequestResponse("The answers cannot be read: " + failure.getOriginalMessage());
    }
  }

  private void fill(Context context) {
    Map<String, String> said = Said.words(context);
    Newcomer before = answers(said);
    String slot = said.getOrDefault("slot", "");
    String typed = said.getOrDefault("typed", "");
    switch (Filling.newcomer(before, slot, typed, desk.book().units())) {
      case Filled.Done<Newcomer>(Newcomer after) ->
          Said.json(
              context,
              HttpStatus.OK,
              Map.of(
                  "answers",
                  Said.JSON.writeValueAsString(after),
                  "words",
                  GylePage.newcomer(after, desk.book().units())));
      case Filled.Unclear<Newcomer> unclear -> Said.unclear(context, unclear);
    }
  }

  private void use(Context context) {
    Newcomer newcomer = answers(Said.words(context));
    String gyleId = context.pathParam("gyleId");
    Command keep =
        new Command.KeepRig(papers.document(newcomer.rig()), "your rig: " + newcomer.name());
    Said.answer(
        context,
        desk.write(gyleId, Said.seen(context), keep, Said.once(context)),
        book -> GylePage.changed(book, gyleId, papers));
  }
}
