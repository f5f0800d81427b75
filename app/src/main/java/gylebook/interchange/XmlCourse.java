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
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/// Rests, boil, ferment, yeast and package out of the open XML standard.
@AnyUnit("the standard fixes the unit of each tag")
final class XmlCourse {
  private static final Unit CELSIUS = Unit.known(Quantity.TEMPERATURE, "°C");
  private static final Unit MINUTE = Unit.known(Quantity.TIME, "min");
  private static final Unit DAY = Unit.known(Quantity.TIME, "d");
  private static final Unit KG = Unit.known(Quantity.MASS, "kg");
  private static final Unit LITRE = Unit.known(Quantity.VOLUME, "L");
  private static final Unit PERCENT = Unit.known(Quantity.SHARE, "%");

  private XmlCourse() {}

  /// The mash stands in MASH; some files put it in a set, spelled in either way.
  static List<Rest> rests(XmlThing recipe) {
    recipe.noted("TYPE");
    Optional<XmlThing> mash = recipe.thing("MASH");
    for (String set : new String[] {"MASHS", "MASHES"}) {
      if (mash.isEmpty()) {
        mash = recipe.things(set, "MASH").stream().findFirst();
      }
    }
    if (mash.isEmpty()) {
      if (!recipe.words("TYPE").equals("Extract")) {
        recipe.says("MASH", "Is not there, though there is a mash; to be filled in.");
      }
      return List.of();
    }
    mash.get().version();
    mash.get().noted("NAME");
    List<Rest> rests = new ArrayList<>();
    for (XmlThing step : mash.get().things("MASH_STEPS", "MASH_STEP")) {
      step.version();
      if (step.words("TYPE").equals("Decoction")) {
        step.says("TYPE", "A decoction is taken as a rest at its temperature; nothing is boiled.");
      }
      Optional<Entered> targetC = step.amount("STEP_TEMP", CELSIUS, CELSIUS);
      if (targetC.isEmpty()) {
        step.says("STEP_TEMP", "Is not there; the step is left out.");
        continue;
      }
      Entered holdSec =
          step.amount("STEP_TIME", MINUTE, MINUTE).orElseGet(() -> Entered.of(0, MINUTE));
      Optional<Entered> rampSec =
          step.amount("RAMP_TIME", MINUTE, MINUTE).filter(ramp -> ramp.inside() > 0);
      if (rests.isEmpty() && rampSec.isPresent()) {
        step.says("RAMP_TIME", RecipeReader.STRUCK);
      }
      rests.add(new Rest(step.words("NAME"), targetC.get(), holdSec, rampSec));
    }
    return rests;
  }

  static Entered boil(XmlThing recipe) {
    return recipe
        .amount("BOIL_TIME", MINUTE, MINUTE)
        .orElseGet(
            () -> {
              recipe.says("BOIL_TIME", "Is not there; 60 min are assumed, as is common practice.");
              return Entered.of(60, MINUTE);
            });
  }

  static FermentCourse ferment(XmlThing recipe) {
    List<Ferment.Step> steps = new ArrayList<>();
    for (String stage : new String[] {"PRIMARY", "SECONDARY", "TERTIARY"}) {
      Optional<Entered> hold = recipe.amount(stage + "_AGE", DAY, DAY);
      Optional<Entered> temperature = recipe.amount(stage + "_TEMP", CELSIUS, CELSIUS);
      if (hold.isPresent() && hold.get().inside() > 0) {
        if (temperature.isEmpty()) {
          recipe.says(stage + "_TEMP", "Is not there; 20 °C is assumed, within some 3 °C.");
        }
        Entered atC = temperature.orElseGet(() -> Entered.of(20, CELSIUS));
        steps.add(new Ferment.Step(stage.toLowerCase(Locale.ROOT), atC, atC, hold.get(), false));
      }
    }
    OptionalDouble stages = recipe.number("FERMENTATION_STAGES", false);
    if (stages.isPresent() && stages.getAsDouble() != steps.size()) {
      recipe.says(
          "FERMENTATION_STAGES",
          "Says "
              + XmlThing.digits(stages.getAsDouble())
              + ", but "
              + steps.size()
              + " have a length; those are taken.");
    }
    return new FermentCourse(new Ferment(steps));
  }

  static Yeast yeast(XmlThing recipe, FermentCourse ferment) {
    List<Ferment.Step> steps = ferment.ferment().steps();
    Entered pitchC = steps.isEmpty() ? Entered.of(20, CELSIUS) : steps.getFirst().startC();
    if (steps.isEmpty()) {
      recipe.says("PRIMARY_TEMP", "Is not there; pitching at 20 °C is assumed, within some 3 °C.");
    }
    List<XmlThing> yeasts = recipe.things("YEASTS", "YEAST");
    if (yeasts.isEmpty()) {
      recipe.says("YEASTS", "Names no yeast; to be filled in.");
      return new Yeast(
          "yeast", "", Entered.of(0, Unit.known(Quantity.NUMBER, "")), Optional.empty(), pitchC);
    }
    if (yeasts.size() > 1) {
      recipe.says("YEASTS", "Names " + yeasts.size() + " yeasts; the first is taken.");
    }
    XmlThing yeast = yeasts.getFirst();
    yeast.version();
    String type = yeast.words("TYPE").toLowerCase(Locale.ROOT);
    if (type.matches("ale|lager|wheat|wine|champagne")) {
      yeast.ledger().note("culture type", "\"" + type + "\"");
    }
    boolean weighed = yeast.flag("AMOUNT_IS_WEIGHT").orElse(false);
    Entered amount =
        (weighed ? yeast.amount("AMOUNT", KG, KG) : yeast.amount("AMOUNT", LITRE, LITRE))
            .orElseGet(() -> Entered.of(0, LITRE));
    yeast.says(
        "AMOUNT",
        "The standard knows no packets; "
            + amount.asTyped()
            + " is taken as measured, not counted.");
    return new Yeast(
        yeast.words("NAME"),
        yeast.words("FORM").toLowerCase(Locale.ROOT),
        amount,
        yeast.amount("ATTENUATION", PERCENT, PERCENT),
        pitchC);
  }

  static Pack pack(XmlThing recipe) {
    Optional<Boolean> forced = recipe.flag("FORCED_CARBONATION");
    Pack.Kind kind = forced.orElse(true) ? Pack.Kind.KEG : Pack.Kind.BOTTLE;
    recipe.says(
        "FORCED_CARBONATION",
        "The file does not say what the beer goes into; "
            + kind.words()
            + " guessed from how it"
            + " is carbonated.");
    return new Pack(
        kind,
        Carbonation.of(
            recipe.number("CARBONATION", false),
            (key, sentence) -> recipe.says(key.toUpperCase(Locale.ROOT), sentence)));
  }
}
