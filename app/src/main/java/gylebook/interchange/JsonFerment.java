package gylebook.interchange;

import gylebook.recipe.Ferment;
import gylebook.recipe.Pack;
import gylebook.recipe.Rest;
import gylebook.recipe.Yeast;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;

/// Rests, ferment, yeast and package out of the open JSON standard.
@AnyUnit("bare numbers of the standard")
final class JsonFerment {
  private static final Unit CELSIUS = Unit.known(Quantity.TEMPERATURE, "°C");
  private static final Unit DAY = Unit.known(Quantity.TIME, "d");

  private JsonFerment() {}

  static List<Rest> rests(JsonThing recipe) {
    List<Rest> rests = new ArrayList<>();
    recipe.thing("mash").ifPresent(mash -> mash.noted("name"));
    List<JsonThing> steps = recipe.thing("mash").map(m -> m.things("mash_steps")).orElse(List.of());
    for (JsonThing step : steps) {
      String type = step.words("type");
      if (!type.matches("infusion|temperature|decoction|")) {
        step.says("", "'" + Refusal.shortened(type) + "' is no rest here; it is left out.");
        step.keepWhole();
        continue;
      }
      if (type.equals("decoction")) {
        step.says("type", "A decoction is taken as a rest at its temperature; nothing is boiled.");
      }
      Optional<Entered> targetC = step.amount("step_temperature", Quantity.TEMPERATURE);
      if (targetC.isEmpty()) {
        step.says("step_temperature", "Is not there; the step is left out.");
        step.keepWhole();
        continue;
      }
      Optional<Entered> holdSec = step.amount("step_time", Quantity.TIME);
      if (holdSec.isEmpty()) {
        step.says("step_time", "Is not there; taken as 0, to be filled in.");
      }
      Optional<Entered> rampSec =
          step.amount("ramp_time", Quantity.TIME).filter(ramp -> ramp.inside() > 0);
      if (rests.isEmpty() && rampSec.isPresent()) {
        step.says("ramp_time", RecipeReader.STRUCK);
      }
      rests.add(
          new Rest(
              step.words("name"),
              targetC.get(),
              holdSec.orElseGet(() -> Entered.of(0, DAY)),
              rampSec));
    }
    return rests;
  }

  static FermentCourse ferment(JsonThing recipe) {
    List<Ferment.Step> steps = new ArrayList<>();
    recipe.thing("fermentation").ifPresent(ferment -> ferment.noted("name"));
    List<JsonThing> found =
        recipe.thing("fermentation").map(f -> f.things("fermentation_steps")).orElse(List.of());
    for (JsonThing step : found) {
      Optional<Entered> start = step.amount("start_temperature", Quantity.TEMPERATURE);
      Optional<Entered> end = step.amount("end_temperature", Quantity.TEMPERATURE);
      Optional<Entered> hold = step.amount("step_time", Quantity.TIME);
      Entered startC = start.or(() -> end).orElseGet(() -> usualC(step));
      if (hold.isEmpty()) {
        step.says("step_time", "Is not there; taken as 0 days, to be filled in.");
      }
      steps.add(
          new Ferment.Step(
              step.words("name"),
              startC,
              end.orElse(startC),
              hold.orElseGet(() -> Entered.of(0, DAY)),
              step.flag("free_rise")));
    }
    return new FermentCourse(new Ferment(steps));
  }

  private static Entered usualC(JsonThing step) {
    step.says("", "Says no temperature; 20 °C is assumed, within some 3 °C.");
    return Entered.of(20, CELSIUS);
  }

  static Yeast yeast(List<JsonThing> cultures, JsonThing recipe, Ferment ferment) {
    Entered pitchC =
        ferment.steps().isEmpty() ? Entered.of(20, CELSIUS) : ferment.steps().getFirst().startC();
    if (ferment.steps().isEmpty()) {
      recipe.says("fermentation", "Says nothing; pitching at 20 °C is assumed, within some 3 °C.");
    }
    if (cultures.isEmpty()) {
      recipe.says("ingredients", "Names no yeast; to be filled in.");
      Entered none = Entered.of(0, Unit.known(Quantity.NUMBER, ""));
      return new Yeast("yeast", "", none, Optional.empty(), pitchC);
    }
    for (JsonThing more : cultures.subList(1, cultures.size())) {
      more.says("", "A second culture has no place here.");
      more.keepWhole();
    }
    JsonThing culture = cultures.getFirst();
    culture.whole("type").ifPresent(type -> culture.ledger().note("culture type", type));
    Optional<Entered> amount =
        culture.amount("amount", Quantity.NUMBER, Quantity.MASS, Quantity.VOLUME);
    if (amount.isEmpty()) {
      culture.says("amount", "Is not there; taken as 0, to be filled in.");
    }
    return new Yeast(
        culture.words("name"),
        culture.words("form"),
        amount.orElseGet(() -> Entered.of(0, Unit.known(Quantity.NUMBER, ""))),
        culture.amount("attenuation", Quantity.SHARE),
        pitchC);
  }

  static Pack pack(JsonThing recipe) {
    recipe.thing("packaging").ifPresent(packaging -> packaging.noted("name"));
    List<JsonThing> vessels =
        recipe.thing("packaging").map(p -> p.things("packaging_vessels")).orElse(List.of());
    OptionalDouble inVessel = OptionalDouble.empty();
    Pack.Kind kind = Pack.Kind.KEG;
    for (JsonThing vessel : vessels) {
      if (vessel == vessels.getFirst()) {
        kind = kind(vessel);
        vessel.noted("name");
        inVessel = vessel.number("carbonation");
        drawings(vessel);
      }
    }
    if (vessels.isEmpty()) {
      recipe.says("packaging", "Does not say what the beer goes into; a keg is assumed.");
    }
    OptionalDouble said = recipe.number("carbonation");
    if (said.isPresent() && inVessel.isPresent() && !said.equals(inVessel)) {
      recipe.says("carbonation", "The vessel says " + inVessel.getAsDouble() + "; not used.");
    }
    return new Pack(kind, Carbonation.of(said.isPresent() ? said : inVessel, recipe::says));
  }

  private static Pack.Kind kind(JsonThing vessel) {
    String type = vessel.words("type");
    return switch (type) {
      case "keg" -> Pack.Kind.KEG;
      case "bottle" -> Pack.Kind.BOTTLE;
      case "cask", "firkin" -> Pack.Kind.CASK;
      default -> {
        vessel.says("type", "'" + Refusal.shortened(type) + "' is taken as a keg.");
        yield Pack.Kind.KEG;
      }
    };
  }

  /// One drawing or a list of them: versions differ, so either is kept.
  private static void drawings(JsonThing vessel) {
    Optional<JsonNode> drawings = vessel.take("graphics");
    drawings.ifPresent(
        found -> vessel.ledger().keep(Ledger.path(vessel.path(), "graphics"), found.toString()));
  }
}
