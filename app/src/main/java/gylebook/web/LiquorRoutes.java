package gylebook.web;

import gylebook.brewday.Command;
import gylebook.brewday.Gyle;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.simulate.Settings;
import gylebook.telling.Filled;
import gylebook.telling.LiquorAnswer;
import gylebook.telling.LiquorWish;
import gylebook.units.ReadingUnits;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Finds salts and acid for a wanted liquor, and takes them into the recipe. Asking changes
/// nothing, so what is asked is a plain address.
final class LiquorRoutes {
  /// Only the litres are asked of the plan, not its bands.
  private static final int FEW_DAYS = 20;

  private final Desk desk;
  private final Papers papers;

  LiquorRoutes(Desk desk, Papers papers) {
    this.desk = desk;
    this.papers = papers;
  }

  void register(RoutesConfig routes) {
    routes.get("/gyles/{gyleId}/liquor", this::ask);
    routes.post("/api/gyles/{gyleId}/liquor", this::take);
  }

  private ReadingUnits units() {
    return desk.book().units();
  }

  private void ask(Context context) {
    Said.gyle(desk, context).ifPresent(gyle -> context.html(page(gyle, fields(context))));
  }

  private static Map<String, String> fields(Context context) {
    Map<String, String> fields = new HashMap<>();
    context.queryParamMap().forEach((name, values) -> fields.put(name, values.getLast()));
    return fields;
  }

  private String page(Gyle gyle, Map<String, String> fields) {
    Recipe recipe = papers.recipe(gyle.recipe().document());
    boolean asked = !fields.isEmpty();
    LiquorForm form = asked ? LiquorForm.of(fields) : LiquorForm.first(recipe);
    LiquorPage page = new LiquorPage(gyle, form);
    Optional<Settings> settings = settings(gyle);
    if (settings.isEmpty()) {
      return page.impossible(
          "The beer cannot be brewed as wanted, so its litres are not known; the gyle's page says"
              + " what stands in the way.");
    }
    List<String> now = LiquorAnswer.now(recipe, settings.get(), units());
    if (!asked) {
      return page.asked(now);
    }
    return switch (form.wish()) {
      case Filled.Unclear<LiquorWish> unclear -> page.unclear(unclear, now);
      case Filled.Done<LiquorWish>(LiquorWish wish) ->
          page.found(LiquorAnswer.of(recipe, settings.get(), wish, units()), now);
    };
  }

  private Optional<Settings> settings(Gyle gyle) {
    Recipe recipe = papers.recipe(gyle.recipe().document());
    Rig rig = papers.rig(gyle.rig().document());
    Planned planned = Planner.plan(recipe, rig, FEW_DAYS, Planner.USUAL_SEED, () -> false, _ -> {});
    return planned instanceof Planned.Feasible(Plan plan)
        ? Optional.of(plan.settings())
        : Optional.empty();
  }

  private void take(Context context) {
    Optional<Gyle> found = Said.gyle(desk, context);
    if (found.isEmpty()) {
      return;
    }
    Gyle gyle = found.get();
    Optional<Settings> settings = settings(gyle);
    if (settings.isEmpty()) {
      Said.json(
          context,
          HttpStatus.UNPROCESSABLE_CONTENT,
          Map.of("what", "The beer cannot be brewed as wanted.", "maybe", "Look at its page."));
      return;
    }
    Recipe recipe = papers.recipe(gyle.recipe().document());
    switch (LiquorForm.of(Said.words(context)).wish()) {
      case Filled.Unclear<LiquorWish> unclear -> Said.unclear(context, unclear);
      case Filled.Done<LiquorWish>(LiquorWish wish) -> {
        LiquorAnswer answer = LiquorAnswer.of(recipe, settings.get(), wish, units());
        Command keep =
            new Command.KeepRecipe(
                papers.document(answer.recipe()), "salts and acid for a wanted liquor");
        Said.answer(
            context,
            desk.write(gyle.gyleId(), Said.seen(context), keep, Said.once(context)),
            book -> GylePage.changed(book, gyle.gyleId(), papers));
      }
    }
  }
}
