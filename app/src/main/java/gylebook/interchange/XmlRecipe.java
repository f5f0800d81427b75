package gylebook.interchange;

import gylebook.recipe.Aim;
import gylebook.recipe.Boil;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/// A recipe out of the open XML standard, version 1. Its units never vary.
@AnyUnit("the standard fixes the unit of each tag")
final class XmlRecipe {
  private static final Unit LITRE = Unit.known(Quantity.VOLUME, "L");
  private static final Unit SG = Unit.known(Quantity.GRAVITY, "SG");
  private static final double SIZES_DIFFER_L = 0.05;

  private XmlRecipe() {}

  static Recipe read(XmlTag root, String name, Ledger ledger) {
    List<XmlTag> recipes =
        root.name().equals("RECIPE")
            ? List.of(root)
            : root.children().stream().filter(tag -> tag.name().equals("RECIPE")).toList();
    if (recipes.isEmpty()) {
      throw new Refusal(
          "The file holds no recipe; its first tag is " + Refusal.shortened(root.name()) + ".",
          Refusal.shortened(root.name()),
          "Maybe export the recipe itself.");
    }
    for (XmlTag other : recipes.subList(1, recipes.size())) {
      ledger.keep("another recipe of the file", other.written());
    }
    return recipe(new XmlThing(recipes.getFirst(), "", ledger), name, ledger);
  }

  private static Recipe recipe(XmlThing recipe, String name, Ledger ledger) {
    recipe.version();
    List<XmlThing> miscs = recipe.things("MISCS", "MISC");
    List<Rest> rests = XmlCourse.rests(recipe);
    FermentCourse ferment = XmlCourse.ferment(recipe);
    Entered boilSec = XmlCourse.boil(recipe);
    XmlAdditions additions = new XmlAdditions(boilSec, ferment);
    List<Hop> hops = recipe.things("HOPS", "HOP").stream().map(additions::hop).toList();
    List<Goods> grist =
        recipe.things("FERMENTABLES", "FERMENTABLE").stream().map(XmlGrist::goods).toList();
    List<Liquor.Addition> salts =
        miscs.stream().filter(XmlAdditions::forLiquor).map(XmlAdditions::salt).toList();
    List<Other> others =
        miscs.stream().filter(misc -> !XmlAdditions.forLiquor(misc)).map(additions::other).toList();
    Liquor liquor = liquor(recipe, salts);
    Aim aim = aim(recipe);
    Elsewhere elsewhere = elsewhere(recipe, aim, boilSec);
    recipe.thing("STYLE").ifPresent(XmlThing::version);
    String style = recipe.thing("STYLE").map(found -> found.words("NAME")).orElse("");
    String called = recipe.words("NAME");
    if (called.isEmpty()) {
      recipe.says("NAME", "Is empty; named after the file.");
    }
    String brewer = recipe.words("BREWER");
    if (!brewer.isEmpty()) {
      ledger.note("author", Kept.quoted(brewer));
    }
    for (String key : new String[] {"TASTE_RATING", "RATING"}) {
      String rating = recipe.words(key);
      if (!rating.isEmpty()) {
        ledger.keep("TASTE_RATING", rating);
      }
    }
    var yeast = XmlCourse.yeast(recipe, ferment);
    var pack = XmlCourse.pack(recipe);
    String notes = recipe.words("NOTES");
    recipe.keepRest();
    return new Recipe(
        called.isEmpty() ? name : called,
        style,
        false,
        aim,
        grist,
        liquor,
        rests,
        new Boil(boilSec, Optional.empty(), Optional.empty()),
        additions.stands(),
        hops,
        others,
        yeast,
        ferment.ferment(),
        pack,
        notes,
        elsewhere,
        ledger.kept());
  }

  private static Aim aim(XmlThing recipe) {
    Optional<Entered> length = recipe.amount("BATCH_SIZE", LITRE, LITRE);
    if (length.isEmpty() || length.get().inside() == 0) {
      recipe.says("BATCH_SIZE", "Says no volume; taken as 0 L, to be filled in before planning.");
    }
    Optional<Entered> strength = recipe.amount("OG", SG, SG);
    strength.ifPresent(gravity -> Sense.gravity("OG", gravity, recipe.ledger()));
    return new Aim(
        length.orElseGet(() -> Entered.of(0, LITRE)),
        Aim.Into.FERMENTER,
        strength,
        Optional.empty(),
        "");
  }

  private static Liquor liquor(XmlThing recipe, List<Liquor.Addition> salts) {
    List<Waters.Part> parts = new ArrayList<>();
    for (XmlThing water : recipe.things("WATERS", "WATER")) {
      Liquor.Ions ions =
          new Liquor.Ions(
              ion(water, "CALCIUM"),
              ion(water, "MAGNESIUM"),
              ion(water, "SODIUM"),
              ion(water, "CHLORIDE"),
              ion(water, "SULFATE"),
              ion(water, "BICARBONATE"));
      water.version();
      double amountL = water.number("AMOUNT", false).orElse(0);
      parts.add(new Waters.Part(water.words("NAME"), amountL, ions));
    }
    return Waters.mixed(parts, salts, sentence -> recipe.says("WATERS", sentence));
  }

  private static double ion(XmlThing water, String key) {
    double value = water.number(key, true).orElse(0);
    if (!(value >= 0 && value <= Quantity.CONCENTRATION.most())) {
      throw new Refusal(
          "'" + water.path() + " > " + key + "' is no concentration that a water has.",
          String.valueOf(value),
          "It has to be 0 mg/L or more.");
    }
    return value;
  }

  private static Elsewhere elsewhere(XmlThing recipe, Aim aim, Entered boilSec) {
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble boilSize = recipe.number("BOIL_SIZE", false);
    OptionalDouble efficiency = recipe.number("EFFICIENCY", false);
    if (efficiency.isPresent()
        && !(efficiency.getAsDouble() >= 0 && efficiency.getAsDouble() <= 100)) {
      recipe.says("EFFICIENCY", "Lies outside 0 to 100 %; not used.");
      efficiency = none;
    }
    Optional<Entered> last = recipe.amount("FG", SG, SG);
    last.ifPresent(gravity -> Sense.gravity("FG", gravity, recipe.ledger()));
    double lengthL = aim.lengthL().inside();
    Sense.volumes("BATCH_SIZE", lengthL, boilSize, recipe.ledger());
    return new Elsewhere(
        efficiency.isPresent() ? OptionalDouble.of(efficiency.getAsDouble() / 100) : none,
        OptionalDouble.of(lengthL),
        boilSize,
        OptionalDouble.of(boilSec.inside()),
        boilOff(recipe, lengthL, boilSize),
        aim.strengthPlato().map(s -> OptionalDouble.of(s.inside())).orElse(none),
        last.map(s -> OptionalDouble.of(s.inside())).orElse(none),
        none,
        "",
        none);
  }

  /// What their kettle drives off in an hour: the standard gives a share of the volume, and of
  /// which volume its text does not settle; the mean of before and after is an approximation.
  private static OptionalDouble boilOff(XmlThing recipe, double lengthL, OptionalDouble boilSize) {
    Optional<XmlThing> equipment = recipe.thing("EQUIPMENT");
    if (equipment.isEmpty()) {
      return OptionalDouble.empty();
    }
    XmlThing rig = equipment.get();
    rig.version();
    same(rig, "BATCH_SIZE", OptionalDouble.of(lengthL));
    same(rig, "BOIL_SIZE", boilSize);
    OptionalDouble rate = rig.number("EVAP_RATE", false);
    if (rate.isEmpty() || boilSize.isEmpty()) {
      return OptionalDouble.empty();
    }
    rig.says(
        "EVAP_RATE",
        "Is a share of the volume in an hour; turned into litres an hour approximately, with the"
            + " mean of the volumes before and after.");
    return OptionalDouble.of(rate.getAsDouble() / 100 * (lengthL + boilSize.getAsDouble()) / 2);
  }

  private static void same(XmlThing rig, String key, OptionalDouble recipeL) {
    OptionalDouble theirs = rig.number(key, false);
    if (theirs.isPresent()
        && recipeL.isPresent()
        && Math.abs(theirs.getAsDouble() - recipeL.getAsDouble()) > SIZES_DIFFER_L) {
      rig.says(
          key,
          "Is "
              + theirs.getAsDouble()
              + " L, but the recipe says "
              + recipeL.getAsDouble()
              + " L; the recipe is believed.");
    }
  }
}
