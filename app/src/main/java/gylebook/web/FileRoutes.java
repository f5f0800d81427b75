package gylebook.web;

import gylebook.brewday.Command;
import gylebook.brewday.Gyle;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/// Files brought in and carried away.
final class FileRoutes {
  private final Desk desk;
  private final Papers papers;

  FileRoutes(Desk desk, Papers papers) {
    this.desk = desk;
    this.papers = papers;
  }

  void register(RoutesConfig routes) {
    routes.get("/gyles/{gyleId}/recipe.json", context -> own(context, "recipe"));
    routes.get("/gyles/{gyleId}/rig.json", context -> own(context, "rig"));
    routes.get("/gyles/{gyleId}/standard", this::standard);
    routes.get("/gyles/{gyleId}/standard.json", this::standardFile);
    routes.post("/api/recipes/look", context -> recipe(context, false));
    routes.post("/api/recipes/keep", context -> recipe(context, true));
    routes.post("/api/gyles/{gyleId}/rig", this::rig);
  }

  private void own(Context context, String what) {
    Said.gyle(desk, context)
        .ifPresent(
            gyle ->
                file(
                    context,
                    gyle.gyleId() + "." + what + ".json",
                    what.equals("rig") ? gyle.rig().document() : gyle.recipe().document()));
  }

  /// Says what the standard has no place for, before the file is taken.
  private void standard(Context context) {
    Said.gyle(desk, context)
        .ifPresent(
            gyle -> {
              Papers.Carried carried = carried(gyle);
              context.html(
                  Html.page(
                      gyle.name(),
                      "<h1>"
                          + Html.escaped(gyle.name())
                          + ", by the open standard</h1>"
                          + (carried.lost().isEmpty()
                              ? "<p>The file holds everything this recipe says.</p>"
                              : Html.list("The file will not hold:", carried.lost()))
                          + "<p><a href=\"/gyles/%s/standard.json\" download>Take the file</a></p>"
                              .formatted(Html.escaped(gyle.gyleId()))
                          + "<p><a href=\"/gyles/%s\">Back to the gyle</a></p>"
                              .formatted(Html.escaped(gyle.gyleId()))));
            });
  }

  private void standardFile(Context context) {
    Said.gyle(desk, context)
        .ifPresent(gyle -> file(context, gyle.gyleId() + ".json", carried(gyle).text()));
  }

  private Papers.Carried carried(Gyle gyle) {
    return papers.standard(papers.recipe(gyle.recipe().document()));
  }

  private static void file(Context context, String name, String text) {
    context.contentType("application/json; charset=utf-8");
    context.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
    context.result(text);
  }

  private void recipe(Context context, boolean keep) {
    String name = Optional.ofNullable(context.queryParam("name")).orElse("recipe");
    switch (papers.recipeFile(context.bodyAsBytes(), name)) {
      case Papers.Brought.NotUnderstood<Recipe>(String sentence) ->
          Said.json(
              context,
              HttpStatus.UNPROCESSABLE_CONTENT,
              Map.of("what", sentence, "value", name, "maybe", "Nothing of it was taken."));
      case Papers.Brought.Understood<Recipe>(Recipe recipe, List<String> remarks) -> {
        if (keep) {
          open(context, recipe);
        } else {
          look(context, recipe, remarks);
        }
      }
    }
  }

  private void look(Context context, Recipe recipe, List<String> remarks) {
    String html =
        "<h3>"
            + Html.escaped(recipe.name())
            + "</h3>"
            + (remarks.isEmpty()
                ? "<p>Everything in the file was understood.</p>"
                : Html.list("To know before it is kept:", remarks))
            + "<p><button type=\"button\" id=\"keep\">Keep it as a new gyle</button></p>";
    Said.json(context, HttpStatus.OK, Map.of("preview", html));
  }

  private void open(Context context, Recipe recipe) {
    String rigOf = Optional.ofNullable(context.queryParam("rigOf")).orElse("");
    Optional<Gyle> lender = desk.book().gyle(rigOf);
    if (lender.isEmpty()) {
      Said.json(
          context,
          HttpStatus.UNPROCESSABLE_CONTENT,
          Map.of(
              "what",
              "There is no gyle '" + rigOf + "' to take the rig of.",
              "value",
              rigOf,
              "maybe",
              "Choose another one."));
      return;
    }
    String gyleId = freeId(recipe.name());
    Command open =
        new Command.OpenGyle(
            recipe.name(), false, papers.document(recipe), lender.get().rig().document());
    Said.answer(
        context,
        desk.write(gyleId, 0, open, Said.once(context)),
        _ -> new HashMap<>(Map.of("gyle", gyleId)));
  }

  /// A name for addresses: the letters and digits of the gyle's own name, and a number if taken.
  private String freeId(String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    String base = plain.isEmpty() ? "gyle" : plain.substring(0, Math.min(40, plain.length()));
    String free = base;
    for (int i = 2; desk.book().gyle(free).isPresent(); i++) {
      free = base + "-" + i;
    }
    return free;
  }

  private void rig(Context context) {
    String name = Optional.ofNullable(context.queryParam("name")).orElse("rig");
    switch (papers.rigFile(context.bodyAsBytes(), name)) {
      case Papers.Brought.NotUnderstood<Rig>(String sentence) ->
          Said.json(
              context,
              HttpStatus.UNPROCESSABLE_CONTENT,
              Map.of("what", sentence, "value", name, "maybe", "Nothing of it was taken."));
      case Papers.Brought.Understood<Rig>(Rig rig, _) -> {
        String gyleId = context.pathParam("gyleId");
        Command keep = new Command.KeepRig(papers.document(rig), "rig from " + name);
        Said.answer(
            context,
            desk.write(gyleId, Said.seen(context), keep, Said.once(context)),
            book -> GylePage.changed(book, gyleId, papers));
      }
    }
  }
}
