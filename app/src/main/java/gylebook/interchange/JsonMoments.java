package gylebook.interchange;

import gylebook.recipe.Hop.When;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.units.AnyUnit;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/// When something goes in, as the open JSON standard says it.
///
/// The steps of the boil are: a ramp, if there is a first-wort addition; the boil; then each stand.
@AnyUnit("times are amounts of the recipe")
final class JsonMoments {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private final Recipe recipe;
  private final Ledger lost;
  private final boolean ramp;

  JsonMoments(Recipe recipe, Ledger lost) {
    this.recipe = recipe;
    this.lost = lost;
    this.ramp = firstWort(recipe);
  }

  /// Whether anything goes in before the boil.
  static boolean firstWort(Recipe recipe) {
    return recipe.hops().stream().anyMatch(hop -> hop.when() instanceof When.FirstWort)
        || recipe.others().stream().anyMatch(other -> other.when() instanceof When.FirstWort);
  }

  /// Whether the boil has to be told in steps.
  static boolean steps(Recipe recipe) {
    return firstWort(recipe) || !recipe.stands().isEmpty();
  }

  ObjectNode timing(When when, String name) {
    ObjectNode timing = MAPPER.createObjectNode();
    switch (when) {
      case When.InMash() -> timing.put("use", "add_to_mash");
      case When.FirstWort() -> {
        timing.put("use", "add_to_boil");
        timing.put("step", 1);
      }
      case When.InBoil(var leftSec) -> inBoil(timing, leftSec.inside(), name);
      case When.FlameOut() -> inBoil(timing, 0, name);
      case When.AtStand(int standNumber) -> {
        timing.put("use", "add_to_boil");
        double holdSec = recipe.stands().get(standNumber).holdSec().inside();
        timing.set("time", JsonAmount.time(holdSec, lost, name));
        timing.put("step", boilStep() + 1 + standNumber);
      }
      case When.Dry(var afterSec, var holdSec) -> {
        timing.put("use", "add_to_fermentation");
        timing.set("time", JsonAmount.time(afterSec.inside(), lost, name));
        timing.set("duration", JsonAmount.time(holdSec.inside(), lost, name));
      }
    }
    return timing;
  }

  ObjectNode salt(Liquor.Into into) {
    ObjectNode timing = MAPPER.createObjectNode();
    switch (into) {
      case MASH -> timing.put("use", "add_to_mash");
      case KETTLE -> inBoil(timing, recipe.boil().holdSec().inside(), "liquor");
    }
    return timing;
  }

  private void inBoil(ObjectNode timing, double leftSec, String name) {
    timing.put("use", "add_to_boil");
    timing.set("time", JsonAmount.time(leftSec, lost, name));
    if (steps(recipe)) {
      timing.put("step", boilStep());
    }
  }

  private int boilStep() {
    return ramp ? 2 : 1;
  }
}
