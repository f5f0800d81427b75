package gylebook.interchange;

import gylebook.recipe.Boil;
import gylebook.recipe.Ferment;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// Mash, boil and ferment of a recipe in the open JSON standard.
@AnyUnit("amounts carry their unit")
final class JsonCourse {
  private static final double BOILING_C = 100;
  private static final double GRAIN_C = 20;
  private static final double RAMP_FROM_C = 65;

  private final Recipe recipe;
  private final ObjectNode out;
  private final Ledger lost;

  private JsonCourse(Recipe recipe, ObjectNode out, Ledger lost) {
    this.recipe = recipe;
    this.out = out;
    this.lost = lost;
  }

  static void write(Recipe recipe, ObjectNode out, Ledger lost) {
    JsonCourse course = new JsonCourse(recipe, out, lost);
    course.mash();
    course.boil();
    course.ferment();
  }

  private void mash() {
    if (recipe.rests().isEmpty()) {
      return;
    }
    ObjectNode mash = out.putObject("mash");
    mash.put("name", "mash");
    mash.set("grain_temperature", celsius(GRAIN_C));
    lost.says("mash", "The grain's temperature has to be written; 20 °C is assumed.");
    ArrayNode steps = mash.putArray("mash_steps");
    for (Rest rest : recipe.rests()) {
      ObjectNode step = steps.addObject();
      step.put("name", rest.name());
      step.put("type", steps.size() == 1 ? "infusion" : "temperature");
      step.set("step_temperature", JsonAmount.of(rest.targetC(), lost, "mash"));
      step.set("step_time", JsonAmount.of(rest.holdSec(), lost, "mash"));
      rest.rampSec().ifPresent(ramp -> step.set("ramp_time", JsonAmount.of(ramp, lost, "mash")));
    }
  }

  private void boil() {
    ObjectNode boil = out.putObject("boil");
    boil.set("boil_time", JsonAmount.of(recipe.boil().holdSec(), lost, "boil"));
    if (recipe.elsewhere().preBoilL().isPresent()) {
      boil.set("pre_boil_size", JsonAmount.node(recipe.elsewhere().preBoilL().getAsDouble(), "l"));
    }
    if (recipe.boil().evaporationLPerSec().isPresent() || recipe.boil().dutyFrac().isPresent()) {
      lost.says("boil", "How hard it boils has no place in the standard.");
    }
    if (recipe.boil().lid() == Boil.Lid.ON) {
      lost.says("boil", "That it boils under the lid has no place in the standard.");
    }
    if (!JsonMoments.steps(recipe)) {
      return;
    }
    lost.says("boil", "The boiling point has to be written in its steps; 100 °C is assumed.");
    ArrayNode steps = boil.putArray("boil_steps");
    if (JsonMoments.firstWort(recipe)) {
      ObjectNode ramp = steps.addObject();
      ramp.put("name", "first wort");
      ramp.set("start_temperature", rampFrom());
      ramp.set("end_temperature", celsius(BOILING_C));
      lost.says("boil", "How long the first wort heats is worked out here and not written.");
    }
    ObjectNode rolling = steps.addObject();
    rolling.put("name", "boil");
    rolling.set("start_temperature", celsius(BOILING_C));
    rolling.set("end_temperature", celsius(BOILING_C));
    rolling.set("step_time", JsonAmount.of(recipe.boil().holdSec(), lost, "boil"));
    for (Stand stand : recipe.stands()) {
      ObjectNode step = steps.addObject();
      step.put("name", "stand");
      if (stand.targetC().inside() < JsonBoil.CHILLED_C) {
        lost.says(
            "stand", "A stand this cool is read as chilling; its hops come back at flame-out.");
      }
      step.set("end_temperature", JsonAmount.of(stand.targetC(), lost, "stand"));
      step.set("step_time", JsonAmount.of(stand.holdSec(), lost, "stand"));
    }
  }

  private ObjectNode rampFrom() {
    return recipe.rests().isEmpty()
        ? celsius(RAMP_FROM_C)
        : JsonAmount.of(recipe.rests().getLast().targetC(), lost, "boil");
  }

  private void ferment() {
    if (recipe.ferment().steps().isEmpty()) {
      lost.says("yeast", "The temperature at pitching is not written without a ferment.");
      return;
    }
    ObjectNode ferment = out.putObject("fermentation");
    ferment.put("name", "ferment");
    ArrayNode steps = ferment.putArray("fermentation_steps");
    for (Ferment.Step step : recipe.ferment().steps()) {
      ObjectNode to = steps.addObject();
      to.put("name", step.name());
      to.set("start_temperature", JsonAmount.of(step.startC(), lost, "ferment"));
      to.set("end_temperature", JsonAmount.of(step.endC(), lost, "ferment"));
      to.set("step_time", JsonAmount.of(step.holdSec(), lost, "ferment"));
      to.put("free_rise", step.freeRise());
    }
    Entered startC = recipe.ferment().steps().getFirst().startC();
    if (startC.inside() != recipe.yeast().pitchC().inside()) {
      lost.says("yeast", "Pitching at " + recipe.yeast().pitchC().asTyped() + " is not written.");
    }
  }

  private static ObjectNode celsius(double celsius) {
    String word = ForeignUnits.word(Unit.known(Quantity.TEMPERATURE, "°C")).orElseThrow();
    return JsonAmount.node(celsius, word);
  }
}
